package runtrue.cli;

import java.util.List;

/**
 * What came out of one drop.
 *
 * @param planes number of roof planes
 * @param area true area of all planes, penetrations off, square metres
 * @param counts of outcomes, like ones of neighbouring subjects told once
 * @param unread elements and files that could not be read, engines that differ
 * @param notes what a person should hear at once: files that could not be read
 * @param files to be written to the drop's output folder
 */
record CheckedDrop(int planes, double area, Counts counts, int unread, List<String> notes, List<OutputFile> files) {
    CheckedDrop {
        notes = List.copyOf(notes);
        files = List.copyOf(files);
    }

    /** Numbers of outcomes by kind. */
    record Counts(int conforms, int doesNotConform, int notAssessed, int conceded) {
        static final Counts NONE = new Counts(0, 0, 0, 0);

        Counts plus(Counts other) {
            return new Counts(
                    conforms + other.conforms,
                    doesNotConform + other.doesNotConform,
                    notAssessed + other.notAssessed,
                    conceded + other.conceded);
        }
    }
}

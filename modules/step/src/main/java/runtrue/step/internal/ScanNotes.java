package runtrue.step.internal;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import runtrue.step.StepNote;

/** What a scan passed over, with byte positions; the first {@value #MOST} of each kind in full, then only their number. */
final class ScanNotes {
    static final int MOST = 100;

    enum Kind {
        COMPLEX("#%d is a complex instance (several entities in one record); it was passed over"),
        DUPLICATE("#%d occurs again; the first record with this number counts, this one was passed over"),
        SECTION("a section that is neither HEADER nor DATA was passed over"),
        AFTER_END("there is text after END-ISO-10303-21; it was passed over"),
        NO_NAME("FILE_NAME is missing in the header"),
        NO_SCHEMA("FILE_SCHEMA is missing in the header or names no schema");

        private final String message;

        Kind(String message) {
            this.message = message;
        }
    }

    private record Place(long position, int id) {}

    private final Map<Kind, List<Place>> places = new EnumMap<>(Kind.class);
    private final Map<Kind, Integer> counts = new EnumMap<>(Kind.class);

    void add(Kind kind, long position, int id) {
        List<Place> list = places.get(kind);
        if (list == null) {
            list = new ArrayList<>();
            places.put(kind, list);
        }
        counts.put(kind, counts.getOrDefault(kind, 0) + 1);
        if (list.size() < MOST) {
            list.add(new Place(position, id));
        }
    }

    /** Takes in what a later segment of the file noted. */
    void addAll(ScanNotes later) {
        for (Map.Entry<Kind, List<Place>> entry : later.places.entrySet()) {
            Kind kind = entry.getKey();
            int before = counts.getOrDefault(kind, 0);
            for (Place place : entry.getValue()) {
                add(kind, place.position(), place.id());
            }
            counts.put(kind, before + later.counts.getOrDefault(kind, 0));
        }
    }

    List<StepNote> list(LineNumbers lines) {
        List<StepNote> notes = new ArrayList<>();
        for (Map.Entry<Kind, List<Place>> entry : places.entrySet()) {
            Kind kind = entry.getKey();
            for (Place place : entry.getValue()) {
                String message = String.format(Locale.ROOT, kind.message, place.id());
                notes.add(new StepNote(message, lines.lineAt(place.position()), place.id()));
            }
            int more = counts.getOrDefault(kind, 0) - entry.getValue().size();
            if (more > 0) {
                notes.add(new StepNote(
                        more + " more of this kind: "
                                + notes.get(notes.size() - 1).message(),
                        0,
                        0));
            }
        }
        return List.copyOf(notes);
    }
}

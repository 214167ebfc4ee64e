package runtrue.geometryserver;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import runtrue.ifc.IfcEntity;
import runtrue.shape.Shape;

/** What a person should know of the second engine's part in one file: counts, and each element that is special. */
final class EngineNotes {
    /** More elements than this are counted only. */
    private static final int MOST_NAMED = 30;

    private final String file;
    private final String engine;
    private final Comparison.Tolerance tolerance;
    private final List<String> trouble = new ArrayList<>();
    private final List<String> filledIn = new ArrayList<>();
    private final List<String> onlyFirst = new ArrayList<>();
    private final List<Comparison> compared = new ArrayList<>();
    private int replaced;

    EngineNotes(String file, String engine, Comparison.Tolerance tolerance) {
        this.file = file;
        this.engine = engine;
        this.tolerance = tolerance;
    }

    /** A clause that follows the engine's name. */
    void trouble(String clause) {
        trouble.add(clause);
    }

    /** Only who asked for the program by name wants to hear that it does not know the schema. */
    void cannotRead(String schema, EngineUse use, int elements) {
        if (use != EngineUse.FILL_IN) {
            trouble.add(String.format(
                    Locale.ROOT,
                    "knows IFC2X3 alone and was not asked for %d elements of this %s file; --geometry-program names another",
                    elements,
                    schema));
        }
    }

    void filledIn(IfcEntity element) {
        filledIn.add(Comparison.named(element));
    }

    void onlyFirst(IfcEntity element, Shape.Unread why) {
        onlyFirst.add(Comparison.named(element) + " (" + why.reason() + ")");
    }

    void compared(Comparison comparison) {
        compared.add(comparison);
    }

    void replaced() {
        replaced++;
    }

    /** The first engine's reason with what the second one says. */
    Shape.Unread neither(Shape.Unread first, Shape.Unread second) {
        return new Shape.Unread(first.reason() + " " + engine + " " + second.reason() + ".", first.representation());
    }

    /** Name of the file, colon, blank, one sentence. */
    List<String> notes(EngineUse use) {
        List<String> notes = new ArrayList<>();
        trouble.stream().distinct().forEach(clause -> notes.add(engine + " " + clause + "."));
        if (replaced > 0) {
            notes.add(elements(replaced) + " read by " + engine + " in place of the built-in reader, as asked.");
        }
        if (!filledIn.isEmpty()) {
            notes.add(elements(filledIn.size()) + " read by " + engine + " because the built-in reader could not: "
                    + named(filledIn) + ".");
        }
        if (!onlyFirst.isEmpty()) {
            notes.add(elements(onlyFirst.size()) + " read by the built-in reader alone, because " + engine
                    + " did not give a shape: " + named(onlyFirst) + ".");
        }
        if (use == EngineUse.COMPARE) {
            addComparison(notes);
        }
        return notes.stream().map(note -> file + ": " + note).toList();
    }

    private void addComparison(List<String> notes) {
        List<Comparison> differing =
                compared.stream().filter(c -> !c.differences().isEmpty()).toList();
        notes.add(elements(compared.size()) + " read by both the built-in reader and " + engine + "; "
                + differing.size() + " differ by more than " + tolerance.text() + ".");
        differing.forEach(c -> notes.add("Engines differ at " + c.sentence() + "."));
    }

    private static String elements(int count) {
        return count + (count == 1 ? " element was" : " elements were");
    }

    private static String named(List<String> elements) {
        String names = String.join(", ", elements.subList(0, Math.min(MOST_NAMED, elements.size())));
        return elements.size() > MOST_NAMED ? names + " and " + (elements.size() - MOST_NAMED) + " more" : names;
    }
}

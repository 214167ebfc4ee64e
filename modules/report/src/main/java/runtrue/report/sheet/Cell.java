package runtrue.report.sheet;

import java.util.Optional;
import java.util.OptionalDouble;

/** One cell: a text, a number, a formula of ours, or nothing. */
public sealed interface Cell {
    Look look();

    /** Text as it came; {@link CellText} makes it safe when written. */
    record Text(String text, Look look) implements Cell {}

    /** The same cell as one that leads elsewhere; measures and outcomes look as ever. */
    default Cell linked() {
        if (this instanceof Text text) {
            return new Text(text.text(), text.look().linked());
        }
        return this instanceof Figure figure
                ? new Figure(figure.value(), figure.look().linked())
                : this;
    }

    record Figure(double value, Look look) implements Cell {}

    /**
     * A formula that a spreadsheet program works out anew.
     *
     * @param formula of cell references and functions only: never made of what came from outside
     * @param value that it comes to now
     */
    record Formula(String formula, double value, Look look) implements Cell {}

    record Blank(Look look) implements Cell {}

    static Cell of(String text, Look look) {
        return text.isEmpty() ? new Blank(look) : new Text(text, look);
    }

    static Cell of(double value, Look look) {
        return new Figure(value, look);
    }

    /** Blank when absent: an empty cell in a column of numbers does not spoil a sum, a word would. */
    static Cell of(OptionalDouble value, Look look) {
        return value.isPresent() ? new Figure(value.getAsDouble(), look) : new Blank(look);
    }

    static Cell of(Optional<Double> value, Look look) {
        return value.<Cell>map(v -> new Figure(v, look)).orElseGet(() -> new Blank(look));
    }
}

package runtrue.wind.data;

import java.util.Map;
import runtrue.wind.Certainty;
import runtrue.wind.WindException;

/**
 * One line of a table.
 *
 * @param where file and line, for messages
 * @param cells by column
 */
public record DataRow(String where, Map<String, String> cells) {
    public DataRow {
        cells = Map.copyOf(cells);
    }

    /** Empty when there is no such column: a user's table may leave columns of remarks out. */
    public String optional(String column) {
        return cells.getOrDefault(column, "");
    }

    public String text(String column) {
        String cell = optional(column);
        if (cell.isEmpty()) {
            throw new WindException(where + ": the column " + column + " is missing or empty.");
        }
        return cell;
    }

    public double number(String column) {
        return number(column, text(column));
    }

    /** A number that stands within a cell. */
    public double number(String what, String text) {
        try {
            double value = Double.parseDouble(text);
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            throw new WindException(where + ": " + what + " is '" + text + "', not a number.", e);
        }
        throw new WindException(where + ": " + what + " is '" + text + "', not a finite number.");
    }

    /** As given for the project when the table does not say. */
    public Certainty certainty(String column) {
        String cell = optional(column);
        return cell.isEmpty() ? Certainty.GIVEN : Certainty.of(cell, where);
    }
}

package runtrue.report.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * A place in the same workbook that a cell leads to. Made of a sheet's name and a row only, both the program's own, so that
 * nothing that a model says can become an address.
 *
 * @param sheet name of a sheet of this workbook
 * @param row from 1, as spreadsheet programs count
 */
public record Link(String sheet, int row) {
    /** Tables have their headings in the first row. */
    private static final int FIRST_ROW = 2;

    public Link {
        if (row < 1) {
            throw new IllegalArgumentException("row " + row + " of sheet " + sheet + "; rows count from 1");
        }
    }

    /** A row of a table, from 0; where it has none, 0 is what it says instead. */
    public static Link toTable(String sheet, int row) {
        return new Link(sheet, FIRST_ROW + row);
    }

    /** The first row of a table that has each key. */
    public static <T, K> Map<K, Link> toRows(String sheet, List<T> rows, Function<T, K> key) {
        Map<K, Link> links = new HashMap<>();
        for (int i = 0; i < rows.size(); i++) {
            links.putIfAbsent(key.apply(rows.get(i)), toTable(sheet, i));
        }
        return links;
    }

    /** As a reference to a cell is written (ISO/IEC 29500-1, 18.17.2.3): quotes around the sheet's name. */
    String location() {
        return "'" + sheet.replace("'", "''") + "'!A" + row;
    }
}

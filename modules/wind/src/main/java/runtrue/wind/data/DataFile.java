package runtrue.wind.data;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import runtrue.wind.WindException;

/**
 * A table as text: lines that begin with # say what it is, the first other line names the columns, cells are parted by
 * commas; the last column may hold further commas.
 */
public final class DataFile {
    private DataFile() {}

    /** One that comes with the program. */
    public static List<DataRow> bundled(String name) {
        try (InputStream stream = DataFile.class.getResourceAsStream(name)) {
            if (stream == null) {
                throw new WindException("The table " + name + " is not part of this program; it was built without it.");
            }
            return rows(new InputStreamReader(stream, StandardCharsets.UTF_8), name);
        } catch (IOException e) {
            throw new WindException(name + " cannot be read: " + e.getMessage(), e);
        }
    }

    /**
     * Rows of a text.
     *
     * @param name of the file, for messages
     * @throws WindException for a text that is no such table, with its line
     */
    public static List<DataRow> rows(Reader text, String name) {
        try (BufferedReader lines = new BufferedReader(text)) {
            List<DataRow> rows = new ArrayList<>();
            String[] columns = {};
            int number = 0;
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                number++;
                if (line.isBlank() || line.startsWith("#")) {
                    continue;
                }
                if (columns.length == 0) {
                    columns = line.strip().split(",");
                } else {
                    rows.add(row(line, columns, name + ":" + number));
                }
            }
            return List.copyOf(rows);
        } catch (IOException e) {
            throw new WindException(name + " cannot be read: " + e.getMessage(), e);
        }
    }

    private static DataRow row(String line, String[] columns, String where) {
        String[] cells = line.split(",", columns.length);
        if (cells.length != columns.length) {
            throw new WindException(
                    where + ": " + cells.length + " cells; the table has " + columns.length + " columns.");
        }
        Map<String, String> named = new LinkedHashMap<>();
        for (int i = 0; i < columns.length; i++) {
            named.put(columns[i].strip(), cells[i].strip());
        }
        return new DataRow(where, named);
    }
}

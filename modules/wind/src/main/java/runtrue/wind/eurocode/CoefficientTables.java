package runtrue.wind.eurocode;

import java.io.Reader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import runtrue.wind.Certainty;
import runtrue.wind.WindException;
import runtrue.wind.WindSource;
import runtrue.wind.data.DataFile;
import runtrue.wind.data.DataRow;

/** Tables 7.2 to 7.5 of EN 1991-1-4:2005+A1:2010 as data: external coefficients of roofs by table, zone and pitch. */
public final class CoefficientTables {
    private static final String FILE = "en1991-1-4-2005-roofs.csv";

    private static final String STANDARD = "EN 1991-1-4:2005+A1:2010";

    /** One table for one wind, for flat roofs of one kind of eaves. */
    private record Key(String form, String wind, String kind) {}

    private record Cell(Key key, double at, String zone, int set) {}

    private record Entry(String document, String table, double cpe10, double cpe1, Certainty certainty, String note) {}

    private final Map<Cell, Entry> entries;

    private CoefficientTables(Map<Cell, Entry> entries) {
        this.entries = entries;
    }

    /** The recommended values that come with the program. */
    public static CoefficientTables recommended() {
        return new CoefficientTables(read(DataFile.bundled(FILE), STANDARD));
    }

    /**
     * With values of a user's file: it replaces every table (form and wind) that it has rows for, as national annexes
     * do.
     *
     * @param name of the file, printed with each value that comes from it
     */
    public CoefficientTables overriddenBy(Reader text, String name) {
        Map<Cell, Entry> own = read(DataFile.rows(text, name), name);
        Map<Cell, Entry> all = new LinkedHashMap<>(entries);
        all.keySet()
                .removeIf(cell -> own.keySet().stream().anyMatch(o -> o.key().equals(cell.key())));
        all.putAll(own);
        return new CoefficientTables(all);
    }

    /**
     * Coefficients of a zone.
     *
     * @param form as the data file names it
     * @param wind 0, 90, 180 or any, as the data file has it
     * @param at pitch in degrees, or the ratio or angle of the eaves of a flat roof
     * @param kind of eaves of a flat roof; empty for others
     * @return empty where the table has no such zone or does not reach that far
     */
    Optional<Cpe> find(String form, String wind, String kind, double at, String zone) {
        NavigableMap<Double, Cpe> rows = new TreeMap<>();
        Key key = new Key(form, wind, kind);
        entries.forEach((cell, e) -> {
            if (cell.key().equals(key) && cell.zone().equals(zone)) {
                Cpe one = new Cpe(e.cpe10(), e.cpe1(), e.cpe10(), e.cpe1(), e.certainty(), e.note());
                rows.merge(cell.at(), one, Cpe::with);
            }
        });
        Map.Entry<Double, Cpe> below = rows.floorEntry(at + 1e-9);
        Map.Entry<Double, Cpe> above = rows.ceilingEntry(at - 1e-9);
        if (below == null || above == null) {
            return Optional.empty();
        }
        double span = above.getKey() - below.getKey();
        return Optional.of(
                span <= 0
                        ? below.getValue()
                        : below.getValue().towards(above.getValue(), (at - below.getKey()) / span));
    }

    /** Greatest and least pitch or ratio that a table has; empty when there is no such table. */
    Optional<double[]> reach(String form, String wind, String kind) {
        Key key = new Key(form, wind, kind);
        double[] all = entries.keySet().stream()
                .filter(c -> c.key().equals(key))
                .mapToDouble(Cell::at)
                .sorted()
                .toArray();
        return all.length == 0 ? Optional.empty() : Optional.of(new double[] {all[0], all[all.length - 1]});
    }

    WindSource source(String form, String wind, String kind, Cpe cpe) {
        Key key = new Key(form, wind, kind);
        Entry any = entries.entrySet().stream()
                .filter(e -> e.getKey().key().equals(key))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow(() -> new WindException("No table for a " + form + " roof, wind " + wind + "."));
        return new WindSource(any.document(), "table " + any.table(), cpe.certainty(), cpe.note());
    }

    private static Map<Cell, Entry> read(List<DataRow> rows, String document) {
        Map<Cell, Entry> read = new LinkedHashMap<>();
        for (DataRow row : rows) {
            List<String> at = new ArrayList<>(List.of(row.text("case").split(" ", -1)));
            String kind = at.size() > 1 ? at.get(0) : "";
            double value = row.number("case", at.get(at.size() - 1));
            Key key = new Key(row.text("form"), row.text("wind"), kind);
            int set = (int) row.number("set");
            Certainty certainty = row.certainty("status10").lessSure(row.certainty("status1"));
            for (String cell : row.text("coefficients").split(" ", -1)) {
                String[] parts = cell.split("[=/]", -1);
                if (parts.length != 3) {
                    throw new WindException(row.where() + ": '" + cell + "' is not of the form zone=cpe10/cpe1.");
                }
                double cpe10 = row.number(parts[0], parts[1]);
                double cpe1 = row.number(parts[0], parts[2]);
                String note = row.optional("note");
                Entry entry = new Entry(document, row.text("table"), cpe10, cpe1, certainty, noteFor(parts[0], note));
                read.put(new Cell(key, value, parts[0], set), entry);
            }
        }
        return read;
    }

    /** A remark that begins with the name of a zone is of that zone only. */
    private static String noteFor(String zone, String note) {
        return !note.startsWith("zone ") || note.startsWith("zone " + zone + ":") ? note : "";
    }
}

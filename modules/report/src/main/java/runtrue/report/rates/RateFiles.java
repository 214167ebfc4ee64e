package runtrue.report.rates;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import runtrue.report.sheet.SheetRows;
import runtrue.result.build.RateList;

/**
 * Reads rate files: a heading row {@code item, unit, rate, currency}, then one rate a row. CSV files are UTF-8 with comma or
 * semicolon between fields and a point in numbers; of a workbook the first sheet is read.
 */
public final class RateFiles {
    /** Names of the rate file beside the models of a drop, the first that is there. */
    public static final List<String> NAMES = List.of("rates.csv", "rates.xlsx");

    private static final List<String> HEADINGS = List.of("item", "unit", "rate", "currency");
    private static final int MOST_BYTES = 4 << 20;
    private static final int MOST_RATES = 10_000;

    private RateFiles() {}

    /**
     * Reads a rate file.
     *
     * @throws RateException when it cannot be read or says something that is no rate
     */
    public static RateList read(Path file) {
        String name = String.valueOf(file.getFileName());
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw new RateException(file + ": is larger than 4 MiB; a rate file never is");
            }
            List<List<String>> rows = name.toLowerCase(Locale.ROOT).endsWith(".xlsx")
                    ? SheetRows.of(file)
                    : CsvRows.of(Files.readString(file));
            return new RateList(name, entries(file, rows));
        } catch (IOException e) {
            throw new RateException(file + ": cannot be read (" + e + "); check the path and the encoding (UTF-8)", e);
        }
    }

    private static List<RateList.Entry> entries(Path file, List<List<String>> rows) {
        List<String> headings = rows.isEmpty()
                ? List.of()
                : rows.get(0).stream()
                        .map(h -> h.strip().toLowerCase(Locale.ROOT))
                        .toList();
        if (!headings.containsAll(HEADINGS)) {
            throw new RateException(file + ":1: the first row must have the headings " + String.join(", ", HEADINGS));
        }
        List<RateList.Entry> entries = new ArrayList<>();
        for (int i = 1; i < rows.size(); i++) {
            List<String> row = rows.get(i);
            if (row.stream().allMatch(String::isBlank)) {
                continue;
            }
            List<String> fields =
                    HEADINGS.stream().map(h -> field(row, headings.indexOf(h))).toList();
            entries.add(entry(file + ":" + (i + 1) + ": ", fields, i + 1));
        }
        if (entries.size() > MOST_RATES) {
            throw new RateException(file + ": more than " + MOST_RATES + " rates");
        }
        return entries;
    }

    private static String field(List<String> row, int index) {
        return index < row.size() ? row.get(index).strip() : "";
    }

    private static RateList.Entry entry(String place, List<String> fields, int line) {
        String item = fields.get(0);
        String unit = fields.get(1);
        String currency = fields.get(3);
        if (item.isEmpty() || unit.isEmpty()) {
            throw new RateException(place + "item and unit must be given");
        } else if (!currency.matches("[A-Z]{3}")) {
            throw new RateException(place + "\"" + currency
                    + "\" is no currency; write three capitals as ISO 4217 does, for example EUR");
        }
        return new RateList.Entry(item, unit, rate(place, fields.get(2)), currency, line);
    }

    private static double rate(String place, String text) {
        if (!text.matches("\\d{1,12}(\\.\\d{1,9})?")) {
            throw new RateException(
                    place + "\"" + text + "\" is no rate; write a number with a point, no thousands signs: 12.50");
        }
        return Double.parseDouble(text);
    }
}

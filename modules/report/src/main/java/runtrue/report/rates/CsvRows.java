package runtrue.report.rates;

import java.util.ArrayList;
import java.util.List;

/** Fields of a CSV text as RFC 4180 describes it; a semicolon separates where the first line has one and no comma. */
final class CsvRows {
    private CsvRows() {}

    static List<List<String>> of(String text) {
        String body = text.startsWith("\uFEFF") ? text.substring(1) : text;
        String first = body.lines().findFirst().orElse("");
        char separator = first.contains(";") && !first.contains(",") ? ';' : ',';
        List<List<String>> rows = new ArrayList<>();
        List<String> row = new ArrayList<>();
        StringBuilder field = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < body.length(); i++) {
            char c = body.charAt(i);
            if (quoted && c == '"' && i + 1 < body.length() && body.charAt(i + 1) == '"') {
                field.append('"');
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (!quoted && c == separator) {
                row.add(field.toString());
                field.setLength(0);
            } else if (!quoted && c == '\n') {
                row.add(field.toString());
                rows.add(List.copyOf(row));
                row.clear();
                field.setLength(0);
            } else if (quoted || c != '\r') {
                field.append(c);
            }
        }
        if (field.length() > 0 || !row.isEmpty()) {
            row.add(field.toString());
            rows.add(row);
        }
        return rows;
    }
}

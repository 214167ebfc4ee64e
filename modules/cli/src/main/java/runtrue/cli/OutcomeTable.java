package runtrue.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The table on standard output: a line for each drop and, for several, their sum. Plain ASCII besides the names. */
final class OutcomeTable {
    private static final List<String> HEADS =
            List.of("Drop", "Planes", "Area m2", "Conforms", "Does not conform", "Not assessed", "Conceded", "Unread");

    private OutcomeTable() {}

    static String of(List<DropReport> drops) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(HEADS);
        int planes = 0;
        double area = 0;
        int unread = 0;
        CheckedDrop.Counts counts = CheckedDrop.Counts.NONE;
        for (DropReport drop : drops) {
            if (drop.checked().isEmpty()) {
                rows.add(List.of(drop.drop(), drop.ourFault() ? "failed, see above" : "not read, see above"));
                continue;
            }
            CheckedDrop checked = drop.checked().get();
            rows.add(row(drop.drop(), checked.planes(), checked.area(), checked.counts(), checked.unread()));
            planes += checked.planes();
            area += checked.area();
            counts = counts.plus(checked.counts());
            unread += checked.unread();
        }
        if (drops.size() > 1) {
            rows.add(row("Total", planes, area, counts, unread));
        }
        return print(rows);
    }

    private static List<String> row(String name, int planes, double area, CheckedDrop.Counts counts, int unread) {
        return List.of(
                name,
                Integer.toString(planes),
                String.format(Locale.ROOT, "%.1f", area),
                Integer.toString(counts.conforms()),
                Integer.toString(counts.doesNotConform()),
                Integer.toString(counts.notAssessed()),
                Integer.toString(counts.conceded()),
                Integer.toString(unread));
    }

    private static String print(List<List<String>> rows) {
        int nameWidth = rows.stream().mapToInt(r -> r.get(0).length()).max().orElse(0);
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder(row.get(0))
                    .append(" ".repeat(nameWidth - row.get(0).length()));
            if (row.size() == 2) {
                line.append("  ").append(row.get(1));
            } else {
                for (int i = 1; i < row.size(); i++) {
                    int width = Math.max(HEADS.get(i).length(), 6);
                    line.append("  ")
                            .append(" ".repeat(Math.max(0, width - row.get(i).length())))
                            .append(row.get(i));
                }
            }
            text.append(line).append(System.lineSeparator());
        }
        return text.toString();
    }
}

package runtrue.report.findings;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import runtrue.report.cover.Columns;
import runtrue.report.cover.Gaps;
import runtrue.report.cover.Outcomes;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Link;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.CheckResult;
import runtrue.result.ElementRef;
import runtrue.result.Finding;

/**
 * One row for each rule and reason why it could not be judged, with whatever it concerns: a setting that is missing is
 * missing once, however many planes wait for it.
 */
final class NotAssessedSheet {
    /** Of what a row concerns, so many are named; result.json has all. */
    private static final int NAMED = 8;

    static final String NAME = "Not assessed";

    private NotAssessedSheet() {}

    static Page page(CheckResult result, Map<String, Link> planes, Map<String, Link> rules) {
        return new Table<>(
                        NAME,
                        1,
                        columns(planes, rules),
                        printed().size(),
                        Gaps.of(result).stream().map(Gap::new).toList(),
                        "Every rule that applies could be assessed.")
                .page();
    }

    /** Findings of one rule with one reason; at least one. */
    private record Gap(List<Finding> findings) {
        Finding first() {
            return findings.get(0);
        }

        String some(Function<Finding, String> text) {
            return lines(findings.stream()
                    .map(text)
                    .filter(t -> !t.isEmpty())
                    .distinct()
                    .toList());
        }

        String where() {
            return findings.size() == 1 ? Columns.where(first()) : some(Finding::gridPlace);
        }

        String elements() {
            List<ElementRef> all = findings.stream()
                    .map(Finding::elements)
                    .flatMap(Collection::stream)
                    .distinct()
                    .toList();
            List<ElementRef> named = all.subList(0, Math.min(all.size(), NAMED));
            String names = Columns.namesAndIds(named);
            return all.size() > NAMED ? names + "\nand " + (all.size() - NAMED) + " more" : names;
        }

        private static String lines(List<String> texts) {
            List<String> lines = new ArrayList<>(texts.subList(0, Math.min(texts.size(), NAMED)));
            if (texts.size() > NAMED) {
                lines.add("and " + (texts.size() - NAMED) + " more");
            }
            return String.join("\n", lines);
        }
    }

    private static List<Column<Gap>> printed() {
        return List.of(
                Column.count("Count", g -> g.findings().size()),
                Outcomes.<Gap>column(g -> g.first().outcome()),
                Column.text("Severity", 10, g -> g.first().severity().label()),
                Column.wrapped("Rule", 24, g -> g.first().title()),
                Column.wrapped("Why it was not assessed", 50, g -> g.first().reason()),
                Column.wrapped("What it concerns", 40, g -> g.some(Finding::subject)),
                Column.wrapped("Where", 28, Gap::where),
                Column.wrapped("Elements and their GlobalIds", 39, Gap::elements));
    }

    private static List<Column<Gap>> columns(Map<String, Link> planes, Map<String, Link> rules) {
        List<Column<Gap>> columns = new ArrayList<>(printed());
        columns.addAll(List.of(
                Column.<Gap>wrapped("Plane", 44, g -> g.some(Finding::planeName))
                        .linked(g -> Optional.ofNullable(planes.get(g.first().plane()))),
                Column.wrapped("File", 26, g -> g.some(f -> String.join("\n", f.files()))),
                Column.wrapped("Storey", 16, g -> g.some(Finding::storey)),
                Column.wrapped("Ids", 22, g -> g.some(Finding::id)),
                Column.<Gap>text("Rule id", 22, g -> g.first().rule())
                        .linked(g -> Optional.ofNullable(rules.get(g.first().rule())))));
        return columns;
    }
}

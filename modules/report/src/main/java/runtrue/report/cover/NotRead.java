package runtrue.report.cover;

import java.util.List;
import java.util.stream.Stream;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Look;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.CheckResult;
import runtrue.result.FileInfo;
import runtrue.result.Finding;
import runtrue.result.Outcome;
import runtrue.result.UnreadElement;

/** What was left out and why: unread elements, unjudged rules, missing quantities, oddities of files. */
public final class NotRead {
    /** Up to the file. */
    private static final int PRINTED = 5;

    private NotRead() {}

    /** Everything that is missing from the quantities. */
    public static Page notReadOrAssessed(CheckResult result) {
        List<Gap> gaps = Stream.of(
                        unread(result),
                        result.findings(Outcome.NOT_ASSESSED).stream().map(NotRead::gap),
                        result.bill().missing().stream().map(m -> Gap.of("quantity missing", "", "", m)),
                        notes(result))
                .flatMap(s -> s)
                .toList();
        return page("Not read or assessed", gaps, "Everything was read and assessed.");
    }

    /** What was not read from the files. */
    public static Page notRead(CheckResult result) {
        return page("Not read", Stream.concat(unread(result), notes(result)).toList(), "Everything was read.");
    }

    private static Stream<Gap> unread(CheckResult result) {
        return Stream.concat(
                result.unread().stream().map(e -> gap("not read", e)),
                result.unplaced().stream().map(e -> gap("no plane of its own", e)));
    }

    private static Stream<Gap> notes(CheckResult result) {
        return result.files().stream().flatMap(NotRead::notes);
    }

    private static Stream<Gap> notes(FileInfo file) {
        return file.notes().stream().map(n -> Gap.of("note on the file", "", file.name(), n));
    }

    private static Gap gap(String kind, UnreadElement e) {
        return new Gap(
                kind,
                e.role() + ": " + e.name(),
                e.globalId(),
                e.ifcClass(),
                e.file(),
                e.stepId(),
                e.storey(),
                e.representation(),
                e.reason());
    }

    private static Gap gap(Finding finding) {
        return new Gap(
                Outcomes.words(finding.outcome()),
                finding.title() + ": " + finding.subject(),
                Columns.lines(finding.elements(), e -> e.globalId()),
                "",
                String.join("\n", finding.files()),
                0,
                finding.storey(),
                "",
                finding.reason());
    }

    private static Page page(String name, List<Gap> gaps, String none) {
        return new Table<>(
                        name,
                        1,
                        List.of(
                                Column.<Gap>text("What", 20, Gap::kind),
                                Column.wrapped("Element or subject", 36, Gap::subject),
                                Column.wrapped("Why, and what to do", 60, Gap::reason),
                                Column.wrapped("GlobalId", 28, Gap::globalIds),
                                Column.wrapped("File", 28, Gap::file),
                                Column.text("Class", 16, Gap::ifcClass),
                                new Column<>("Number in the file", "", 11, false, g -> number(g.stepId())),
                                Column.wrapped("Storey", 16, Gap::storey),
                                Column.wrapped("Representation", 26, Gap::representation)),
                        PRINTED,
                        gaps,
                        none)
                .page();
    }

    private static Cell number(int stepId) {
        return stepId > 0 ? Cell.of("#" + stepId, Look.TEXT) : Cell.of("", Look.TEXT);
    }

    private record Gap(
            String kind,
            String subject,
            String globalIds,
            String ifcClass,
            String file,
            int stepId,
            String storey,
            String representation,
            String reason) {
        static Gap of(String kind, String subject, String file, String reason) {
            return new Gap(kind, subject, "", "", file, 0, "", "", reason);
        }
    }
}

package runtrue.report.bcf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runtrue.report.cover.Columns;
import runtrue.report.cover.Gaps;
import runtrue.report.scene.Views;
import runtrue.report.xml.LegalText;
import runtrue.result.CheckResult;
import runtrue.result.FileInfo;
import runtrue.result.Finding;
import runtrue.result.Outcome;
import runtrue.result.change.ChangeKind;
import runtrue.result.change.Changes.OfFinding;

/**
 * One topic for each non-conformance and each concession, or for those of one rule or plane, and one for each rule and reason that something was not
 * assessed: what is missing once is asked for once, however many planes wait for it. What was found in an earlier result
 * and is no finding any more has its topic too, so that a program that knows it hears what became of it.
 */
final class Topics {
    private static final int LONGEST_TITLE = 120;

    private final CheckResult result;
    private final Optional<Views> views;

    private Topics(CheckResult result) {
        this.result = result;
        this.views = Views.of(result);
    }

    static List<Topic> of(CheckResult result, IssueGrouping grouping) {
        Topics topics = new Topics(result);
        Map<String, List<Finding>> groups = Stream.of(Outcome.DOES_NOT_CONFORM, Outcome.CONCEDED)
                .flatMap(outcome -> result.findings(outcome).stream())
                .collect(Collectors.groupingBy(grouping::key, LinkedHashMap::new, Collectors.toList()));
        Map<String, List<OfFinding>> gone = result.changes().stream()
                .flatMap(c -> c.findings().stream())
                .filter(f -> f.kind() == ChangeKind.GONE
                        && f.before().filter(o -> o != Outcome.NOT_ASSESSED).isPresent())
                .collect(Collectors.groupingBy(grouping::key, LinkedHashMap::new, Collectors.toList()));
        List<Topic> all = new ArrayList<>();
        groups.forEach((key, findings) -> all.add(
                grouping == IssueGrouping.FINDING
                        ? topics.judged(findings.get(0))
                        : topics.grouped(grouping, key, findings, gone.getOrDefault(key, List.of()))));
        Gaps.of(result).forEach(alike -> all.add(topics.notAssessed(alike)));
        gone.forEach((key, findings) -> {
            if (!groups.containsKey(key)) {
                all.add(topics.gone(grouping.topicId(key), findings));
            }
        });
        return all;
    }

    /** Open as long as one of them is; the view shows the worst. */
    private Topic grouped(IssueGrouping grouping, String key, List<Finding> findings, List<OfFinding> gone) {
        Finding first = findings.get(0);
        List<String> text = new ArrayList<>();
        for (Finding finding : findings) {
            text.add(finding.message() + source(finding.limitSource()));
            add(text, "What would cure it: ", finding.cure());
            text.add("Finding " + finding.id() + ", " + Columns.where(finding).replace("\n", ", "));
        }
        text.add("Rule set " + ruleSet() + ", drop " + result.drop());
        boolean open = findings.stream().anyMatch(f -> f.outcome() != Outcome.CONCEDED);
        Stream<String> conceded = findings.stream()
                .filter(f -> f.outcome() == Outcome.CONCEDED)
                .map(f -> "Conceded, " + f.id() + ": " + f.reason());
        Stream<String> changed = Stream.concat(
                        findings.stream().map(Finding::id), gone.stream().map(OfFinding::id))
                .flatMap(id -> changes(id).map(words -> id + ": " + words));
        return topic(
                grouping.topicId(key),
                grouping.title(first) + " (" + findings.size() + ")",
                Topic.NON_CONFORMANCE,
                open ? Topic.OPEN : Topic.CLOSED,
                first,
                text,
                findings,
                Stream.concat(conceded, changed).toList());
    }

    private Topic judged(Finding finding) {
        boolean conceded = finding.outcome() == Outcome.CONCEDED;
        List<String> text = new ArrayList<>();
        text.add(finding.message());
        finding.measured().ifPresent(m -> text.add("Measured: " + m.words(finding.limit())));
        finding.limit()
                .ifPresent(
                        l -> text.add("Must be: " + (finding.comparison() + " " + l.words(finding.measured())).strip()
                                + source(finding.limitSource())));
        add(text, "What would cure it: ", finding.cure());
        String where = Columns.where(finding).replace("\n", ", ");
        add(text, "Where: ", where);
        text.add("Finding " + finding.id() + ", rule " + finding.rule() + " of " + ruleSet() + ", drop "
                + result.drop());
        return topic(
                IssueGrouping.FINDING.topicId(finding.id()),
                IssueGrouping.FINDING.title(finding),
                Topic.NON_CONFORMANCE,
                conceded ? Topic.CLOSED : Topic.OPEN,
                finding,
                text,
                List.of(finding),
                Stream.concat(
                                conceded ? Stream.of("Conceded: " + finding.reason()) : Stream.empty(),
                                changes(finding.id()))
                        .toList());
    }

    /** What a finding that is new or changed says of before; nothing when there is no earlier result. */
    private Stream<String> changes(String finding) {
        return result.changes().stream()
                .flatMap(c -> c.findings().stream()
                        .filter(f -> f.id().equals(finding))
                        .map(f -> "Since the run of " + c.earlierRunStamp() + ": " + f.words()));
    }

    /** Closed only when all of them conform: what is not judged any more may have been renamed. */
    private Topic gone(String id, List<OfFinding> findings) {
        List<FileInfo> files = result.files().stream().filter(FileInfo::opened).toList();
        OfFinding first = findings.get(0);
        boolean cured = findings.stream()
                .allMatch(f -> f.now().filter(o -> o == Outcome.CONFORMS).isPresent());
        String more = findings.size() > 1 ? " and " + (findings.size() - 1) + " more" : "";
        return new Topic(
                id,
                shortened(first.title() + (first.subject().isEmpty() ? "" : ": " + first.subject()) + more),
                Topic.NON_CONFORMANCE,
                cured ? Topic.CLOSED : Topic.OPEN,
                first.severity().label(),
                findings.stream().map(OfFinding::rule).distinct().toList(),
                findings.stream()
                        .map(f -> f.words() + "\nFinding " + f.id() + ", rule " + f.rule())
                        .collect(Collectors.joining("\n", "", "\nDrop " + result.drop())),
                files,
                Optional.empty(),
                findings.stream().flatMap(f -> changes(f.id())).distinct().toList());
    }

    private Topic notAssessed(List<Finding> alike) {
        Finding first = alike.get(0);
        List<String> text = new ArrayList<>();
        text.add(first.reason());
        add(
                text,
                "Concerns: ",
                alike.stream()
                        .map(Finding::subject)
                        .filter(s -> !s.isEmpty())
                        .distinct()
                        .collect(Collectors.joining("; ")));
        text.add("Rule " + first.rule() + " of " + ruleSet() + ", drop " + result.drop());
        return topic(
                NameId.of("gap", first.rule() + " " + first.reason()),
                first.title() + ": not assessed",
                Topic.NOT_ASSESSED,
                Topic.OPEN,
                first,
                text,
                alike,
                List.of());
    }

    private Topic topic(
            String id,
            String title,
            String type,
            String status,
            Finding first,
            List<String> text,
            List<Finding> findings,
            List<String> comments) {
        List<String> files =
                findings.stream().flatMap(f -> f.files().stream()).distinct().toList();
        List<FileInfo> about = result.files().stream()
                .filter(f -> files.isEmpty() ? f.opened() : files.contains(f.name()))
                .toList();
        List<String> labels = findings.stream()
                .flatMap(f -> Stream.of(f.rule(), f.planeName()))
                .filter(l -> !l.isEmpty())
                .distinct()
                .toList();
        return new Topic(
                id,
                shortened(title),
                type,
                status,
                first.severity().label(),
                labels,
                String.join("\n", text),
                about,
                views.map(v -> v.of(first)),
                comments);
    }

    private static String shortened(String title) {
        return LegalText.shortened(title, LONGEST_TITLE);
    }

    private String ruleSet() {
        return result.ruleSet().name() + " " + result.ruleSet().version();
    }

    private static String source(String source) {
        return source.isEmpty() ? "" : " (source: " + source + ")";
    }

    private static void add(List<String> text, String label, String value) {
        if (!value.isEmpty()) {
            text.add(label + value);
        }
    }
}

package runtrue.report.bcf;

import runtrue.result.Finding;
import runtrue.result.change.Changes.OfFinding;

/** What makes one topic: whoever answers for a whole roof does not want forty. */
public enum IssueGrouping {
    FINDING("finding"),
    RULE("rule"),
    PLANE("plane");

    private final String word;

    IssueGrouping(String word) {
        this.word = word;
    }

    /** As options say it. */
    @Override
    public String toString() {
        return word;
    }

    /** The same for findings of one topic, now and in any other drop. */
    String key(Finding finding) {
        return key(finding.id(), finding.rule(), finding.plane());
    }

    String key(OfFinding finding) {
        return key(finding.id(), finding.rule(), finding.plane());
    }

    private String key(String id, String rule, String plane) {
        return switch (this) {
            case FINDING -> id;
            case RULE -> rule;
            case PLANE -> plane;
        };
    }

    /** For people. */
    String title(Finding first) {
        return switch (this) {
            case FINDING -> first.title() + (first.subject().isEmpty() ? "" : ": " + first.subject());
            case RULE -> first.title();
            case PLANE -> first.planeName().isEmpty() ? "Of no one plane" : first.planeName();
        };
    }

    /** The id of a topic; findings have theirs without a word before it. */
    String topicId(String key) {
        return NameId.of("topic", this == FINDING ? key : word + " " + key);
    }
}

package runtrue.report.page.data;

import java.util.ArrayList;
import java.util.List;
import runtrue.result.CheckResult;
import runtrue.result.Counts;
import runtrue.result.Outcome;

/**
 * What came of the check.
 *
 * @param outcome the one that a person has to act on first
 * @param sentence for people
 */
record Verdict(Outcome outcome, String sentence) {
    static Verdict of(CheckResult result) {
        Counts.Outcomes total = result.counts().total();
        List<String> open = new ArrayList<>();
        add(open, total.notAssessed(), "judgement was not assessed", "judgements were not assessed");
        add(open, result.unread().size(), "element was not read", "elements were not read");
        int unopened = (int) result.files().stream().filter(f -> !f.opened()).count();
        add(open, unopened, "file was not read", "files were not read");
        if (total.doesNotConform() > 0) {
            String rest = open.isEmpty() ? "" : "; " + joined(open);
            return new Verdict(
                    Outcome.DOES_NOT_CONFORM,
                    "This roof does not conform: " + say(total.doesNotConform(), "finding", "findings") + rest + ".");
        }
        if (!open.isEmpty()) {
            return new Verdict(
                    Outcome.NOT_ASSESSED, "Nothing was found that does not conform, but " + joined(open) + ".");
        }
        if (total.all() == 0) {
            return new Verdict(Outcome.NOT_ASSESSED, "Nothing was assessed: no rule met a roof plane.");
        }
        return total.conceded() > 0
                ? new Verdict(
                        Outcome.CONCEDED,
                        "Everything was assessed and conforms, " + total.conceded() + " of it by concession.")
                : new Verdict(Outcome.CONFORMS, "Everything was assessed and conforms.");
    }

    private static void add(List<String> parts, int count, String one, String many) {
        if (count > 0) {
            parts.add(say(count, one, many));
        }
    }

    private static String joined(List<String> parts) {
        int last = parts.size() - 1;
        return last == 0 ? parts.get(0) : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
    }

    private static String say(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }
}

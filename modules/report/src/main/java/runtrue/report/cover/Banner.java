package runtrue.report.cover;

import java.util.ArrayList;
import java.util.List;
import runtrue.report.sheet.Look;
import runtrue.result.CheckResult;
import runtrue.result.Counts;

/** What came out, in one sentence. */
record Banner(String text, Look look) {
    static Banner of(CheckResult result) {
        Counts.Outcomes total = result.counts().total();
        List<String> parts = new ArrayList<>();
        if (total.doesNotConform() > 0) {
            parts.add(say(total.doesNotConform(), "finding does not conform", "findings do not conform"));
        }
        if (total.notAssessed() > 0) {
            parts.add(say(total.notAssessed(), "was not assessed", "were not assessed"));
        }
        if (!result.unread().isEmpty()) {
            parts.add(say(result.unread().size(), "element was not read", "elements were not read"));
        }
        int unopened = (int) result.files().stream().filter(f -> !f.opened()).count();
        if (unopened > 0) {
            parts.add(say(unopened, "file was not read", "files were not read"));
        }
        if (total.doesNotConform() > 0) {
            return new Banner("✗ " + String.join(", ", parts), Look.SOME_DO_NOT_CONFORM);
        } else if (parts.isEmpty() && total.all() > 0) {
            String conceded = total.conceded() > 0 ? ", " + total.conceded() + " of them by concession" : "";
            return new Banner("✓ Everything was assessed and conforms" + conceded, Look.ALL_CONFORM);
        }
        String rest = parts.isEmpty() ? "nothing was assessed" : String.join(", ", parts);
        return new Banner("? Nothing was found that does not conform, but " + rest, Look.SOME_NOT_ASSESSED);
    }

    private static String say(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }
}

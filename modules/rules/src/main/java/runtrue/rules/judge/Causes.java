package runtrue.rules.judge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import runtrue.rules.Judgement;
import runtrue.rules.Outcome;
import runtrue.rules.Rule;

/**
 * Says one cause once: where a rule that others rest on does not conform, or is not assessed itself, what these could not
 * assess for want of it is told there and not again for each of them. Nothing conforms by that.
 */
final class Causes {
    /** A rule on a plane; on the drop where the plane is empty. */
    private record Cause(String rule, String plane) {}

    /** What is told of, and where: a cause may itself be told of by another. */
    private final Map<Cause, Cause> tellers = new HashMap<>();

    private final Map<Cause, Set<String>> titles = new HashMap<>();

    /** Those of a rule's verdicts that are not told of by the rules before it. */
    List<Judged> keep(Rule rule, List<Judged> judged) {
        List<Judged> kept = new ArrayList<>();
        for (Judged j : judged) {
            Cause own = new Cause(rule.id(), j.subject().plane());
            Cause teller = teller(j);
            if (teller != null) {
                titles.computeIfAbsent(teller, t -> new LinkedHashSet<>()).add(rule.title());
                tellers.put(own, teller);
            } else {
                kept.add(j);
                if (j.verdict().outcome() != Outcome.CONFORMS) {
                    tellers.put(own, own);
                }
            }
        }
        return kept;
    }

    private @Nullable Cause teller(Judged j) {
        String rule = j.verdict().toldBy();
        Cause ofPlane = tellers.get(new Cause(rule, j.subject().plane()));
        return ofPlane != null ? ofPlane : tellers.get(new Cause(rule, ""));
    }

    /** The judgement, with what was not assessed because of it. */
    Judgement complete(Judgement judgement) {
        Set<String> untold = titles.get(new Cause(judgement.rule(), judgement.plane()));
        return untold == null || judgement.outcome() == Outcome.CONFORMS
                ? judgement
                : judgement.adding("Not assessed for want of it: " + String.join(", ", untold) + ".");
    }
}

package runtrue.rules.judge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import runtrue.roof.SpanKind;
import runtrue.rules.Outcome;
import runtrue.rules.Quantity;
import runtrue.rules.judge.subject.Stretch;

/**
 * Puts spans of a plane together. What conforms is told once for each kind and value. What does not is told once for each
 * place where something must be done: spans that touch, of one value; overhangs that touch, whatever their value, because
 * along a hip or valley each line ends where it will. Two bays that lack a purlin are two places and stay two.
 */
final class SpanGroups {
    private SpanGroups() {}

    static List<Group> of(List<Judged> judged) {
        Map<Key, List<Judged>> alike = new LinkedHashMap<>();
        for (Judged one : judged) {
            alike.computeIfAbsent(key(one), k -> new ArrayList<>()).add(one);
        }
        List<Group> groups = new ArrayList<>();
        alike.forEach((key, members) -> {
            if (key.outcome() == Outcome.DOES_NOT_CONFORM) {
                touching(members).forEach(part -> groups.add(new Group(part)));
            } else {
                groups.add(new Group(members));
            }
        });
        return groups;
    }

    private record Key(
            String plane,
            SpanKind kind,
            Outcome outcome,
            String reason,
            String limitSource,
            Optional<Long> millimetres) {}

    private static Key key(Judged judged) {
        Stretch stretch = judged.subject().stretch().orElseThrow();
        Verdict verdict = judged.verdict();
        boolean anyValue = stretch.isOverhang() && verdict.outcome() == Outcome.DOES_NOT_CONFORM;
        return new Key(
                judged.subject().plane(),
                stretch.kind(),
                verdict.outcome(),
                verdict.reason(),
                verdict.limitSource(),
                anyValue ? Optional.empty() : verdict.measured().map(SpanGroups::millimetres));
    }

    private static long millimetres(Quantity quantity) {
        return Math.round(quantity.si() * 1000);
    }

    /** Parts of the list whose members hang together. */
    private static List<List<Judged>> touching(List<Judged> members) {
        List<List<Judged>> parts = new ArrayList<>();
        for (Judged next : members) {
            List<Judged> joined = new ArrayList<>();
            for (List<Judged> part : List.copyOf(parts)) {
                if (part.stream().anyMatch(one -> touch(one, next))) {
                    joined.addAll(part);
                    parts.remove(part);
                }
            }
            joined.add(next);
            parts.add(joined);
        }
        return parts;
    }

    private static boolean touch(Judged a, Judged b) {
        return a.subject().stretch().orElseThrow().touches(b.subject().stretch().orElseThrow());
    }
}

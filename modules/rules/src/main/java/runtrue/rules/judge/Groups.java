package runtrue.rules.judge;

import java.util.ArrayList;
import java.util.List;
import runtrue.rules.Quantity;

/**
 * Puts neighbours of one series (sheets of a plane) together where they fare alike, and spans as {@link SpanGroups} says; one
 * line each would be noise. Different outcomes are never put together.
 */
final class Groups {
    private Groups() {}

    static List<Group> of(List<Judged> judged) {
        List<Group> groups = new ArrayList<>(SpanGroups.of(
                judged.stream().filter(j -> j.subject().stretch().isPresent()).toList()));
        groups.addAll(inSeries(
                judged.stream().filter(j -> j.subject().stretch().isEmpty()).toList()));
        return groups;
    }

    private static List<Group> inSeries(List<Judged> judged) {
        List<Group> groups = new ArrayList<>();
        List<Judged> open = new ArrayList<>();
        for (Judged next : judged) {
            if (!open.isEmpty() && !alike(open.get(open.size() - 1), next)) {
                groups.add(new Group(open));
                open.clear();
            }
            open.add(next);
        }
        if (!open.isEmpty()) {
            groups.add(new Group(open));
        }
        return groups;
    }

    private static boolean alike(Judged a, Judged b) {
        return !a.subject().series().isEmpty()
                && a.subject().series().equals(b.subject().series())
                && a.subject().plane().equals(b.subject().plane())
                && b.subject().number() - a.subject().number() == 1
                && a.verdict().outcome() == b.verdict().outcome()
                && a.verdict().reason().equals(b.verdict().reason())
                && a.verdict().limitSource().equals(b.verdict().limitSource())
                && millimetres(a) == millimetres(b);
    }

    private static long millimetres(Judged judged) {
        return Math.round(judged.verdict().measured().map(Quantity::si).orElse(0.0) * 1000);
    }
}

package runtrue.rules.judge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import runtrue.rules.Outcome;
import runtrue.rules.cel.SubjectKind;

/**
 * Puts neighbours of one series (sheets of a plane) together where they fare alike, spans as {@link SpanGroups} says, and
 * stated values by source and kind of mistake; one line each would be noise. Different outcomes are never put together.
 */
final class Groups {
    private Groups() {}

    static List<Group> of(List<Judged> judged) {
        List<Group> groups = new ArrayList<>(SpanGroups.of(
                judged.stream().filter(j -> j.subject().stretch().isPresent()).toList()));
        groups.addAll(ofStated(judged.stream()
                .filter(j -> j.subject().kind() == SubjectKind.STATED)
                .toList()));
        groups.addAll(inSeries(judged.stream()
                .filter(j -> j.subject().stretch().isEmpty() && j.subject().kind() != SubjectKind.STATED)
                .toList()));
        return groups;
    }

    /** One mistake, made in one file by whoever filled in or exported one property, is one thing to put right. */
    private static List<Group> ofStated(List<Judged> judged) {
        Map<List<String>, List<Judged>> alike = new LinkedHashMap<>();
        for (Judged j : judged) {
            List<String> key = List.of(
                    j.subject().key(), j.verdict().outcome().name(), j.verdict().reason());
            alike.computeIfAbsent(key, k -> new ArrayList<>()).add(j);
        }
        return alike.values().stream().map(Group::new).toList();
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
                && follows(a, b)
                && a.verdict().outcome() == b.verdict().outcome()
                && a.verdict().reason().equals(b.verdict().reason())
                && a.verdict().limitSource().equals(b.verdict().limitSource())
                && (isNotAssessed(a) || thousandths(a) == thousandths(b));
    }

    /** What was not assessed for one reason is one gap, whatever the parts measure: a strip may be cut in two. */
    private static boolean follows(Judged a, Judged b) {
        int step = b.subject().number() - a.subject().number();
        return step == 1 || (step == 0 && isNotAssessed(a));
    }

    private static boolean isNotAssessed(Judged judged) {
        return judged.verdict().outcome() == Outcome.NOT_ASSESSED;
    }

    private static long thousandths(Judged judged) {
        return judged.verdict().measured().map(Group::thousandths).orElse(0L);
    }
}

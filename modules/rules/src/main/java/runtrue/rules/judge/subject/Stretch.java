package runtrue.rules.judge.subject;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runtrue.roof.Interval;
import runtrue.roof.RoofTolerance;
import runtrue.roof.SpanKind;

/**
 * Where a span or overhang lies.
 *
 * @param lower number of the support line below, 0 for an eave overhang
 * @param upper number of the support line above, 0 for a ridge overhang
 * @param u extent across the fall, metres
 * @param v extent along the fall, metres
 * @param plane extent of the whole plane across the fall, metres
 */
public record Stretch(SpanKind kind, int lower, int upper, Interval u, Interval v, Interval plane) {
    /** Neighbours share an edge or a corner; rounded coordinates leave less than this between them. */
    private static final double GAP = RoofTolerance.SPAN_GAP.si();

    public boolean isOverhang() {
        return lower == 0 || upper == 0;
    }

    public boolean touches(Stretch other) {
        return near(u, other.u) && near(v, other.v);
    }

    private static boolean near(Interval a, Interval b) {
        return a.from() <= b.to() + GAP && b.from() <= a.to() + GAP;
    }

    /** {@code , from 12.1 to 18.2 m across the fall} where that is not the plane's whole width, else empty. */
    public static String across(List<Stretch> all) {
        double from = all.stream().mapToDouble(s -> s.u.from()).min().orElse(0);
        double to = all.stream().mapToDouble(s -> s.u.to()).max().orElse(0);
        Interval plane = all.get(0).plane;
        boolean whole = from <= plane.from() + GAP && to >= plane.to() - GAP;
        return whole ? "" : String.format(Locale.ROOT, ", from %.1f to %.1f m across the fall", from, to);
    }

    /** {@code the ridge overhangs above support lines 1 to 4}, for stretches of one kind. */
    public static String name(List<Stretch> all) {
        Stretch first = all.get(0);
        String kind = "the " + first.kind.label() + (all.size() > 1 ? "s" : "");
        if (first.lower == 0 && first.upper == 0) {
            return kind;
        } else if (first.isOverhang()) {
            return kind
                    + Stream.of(
                                    past(" below", all.stream().filter(s -> s.lower == 0), Stretch::upper),
                                    past(" above", all.stream().filter(s -> s.lower != 0), Stretch::lower))
                            .filter(part -> !part.isEmpty())
                            .collect(Collectors.joining(" and"));
        }
        return kind + " between support lines "
                + String.join(", ", runs(all, Stretch::lower, Stretch::upper, 0, " and "));
    }

    /** A curved plane has eaves at both ends of its arc: below its first line and above its last. */
    private static String past(String side, Stream<Stretch> overhangs, ToIntFunction<Stretch> line) {
        List<Stretch> all = overhangs.toList();
        return all.isEmpty() ? "" : side + lines(runs(all, line, s -> line.applyAsInt(s) + 1, 1, " to "));
    }

    private static String lines(List<String> runs) {
        boolean one = runs.size() == 1 && !runs.get(0).contains(" ");
        return (one ? " support line " : " support lines ") + String.join(", ", runs);
    }

    /** Runs without a break; {@code back} is taken off a run's end to get its last line. */
    private static List<String> runs(
            List<Stretch> all, ToIntFunction<Stretch> from, ToIntFunction<Stretch> next, int back, String pair) {
        List<Stretch> sorted = all.stream()
                .sorted(Comparator.comparingInt(from).thenComparingInt(next))
                .toList();
        List<String> runs = new ArrayList<>();
        int start = from.applyAsInt(sorted.get(0));
        int end = next.applyAsInt(sorted.get(0));
        int links = 1;
        for (Stretch stretch : sorted) {
            if (from.applyAsInt(stretch) > end) {
                runs.add(run(start, end - back, links, pair));
                start = from.applyAsInt(stretch);
                end = next.applyAsInt(stretch);
                links = 1;
            } else if (next.applyAsInt(stretch) > end) {
                end = next.applyAsInt(stretch);
                links++;
            }
        }
        runs.add(run(start, end - back, links, pair));
        return runs;
    }

    private static String run(int start, int end, int links, String pair) {
        return start == end ? Integer.toString(start) : start + (links == 1 ? pair : " to ") + end;
    }
}

package runtrue.roof.support;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import runtrue.roof.Interval;
import runtrue.roof.Span;
import runtrue.roof.SpanKind;
import runtrue.roof.Stretch;
import runtrue.roof.Stretch.Crossing;
import runtrue.roof.Stretch.Ends;

/** Lengths of sheet between and past supports, each joined over the width on which it lies between the same two lines. */
public final class SpanReader {
    /** Shorter differences in u are rounding. */
    private static final double SAME = 1e-6;

    private SpanReader() {}

    /**
     * Spans by place: across the fall, then up it.
     *
     * @param widest neighbouring stretches without any support that together are narrower than this are verge overhangs
     *     of the supports and carry no span; wider ones are a span from edge to edge (metres)
     * @param joint gaps in u up to this are bridged, metres; what lies over less in all is the slot between the ends of
     *     supports that follow each other, where the sheet is carried beside it, and no span
     */
    public static List<Span> of(List<Stretch> stretches, double widest, double joint) {
        Map<String, Span> open = new LinkedHashMap<>();
        List<Span> spans = new ArrayList<>();
        for (Stretch stretch : stretches) {
            for (Span span : between(stretch)) {
                String key = span.kind() + " " + span.lower() + " " + span.upper();
                Span before = open.get(key);
                if (before != null && span.u().from() - before.u().to() <= joint) {
                    open.put(key, joined(before, span));
                } else {
                    if (before != null) {
                        spans.add(before);
                    }
                    open.put(key, span);
                }
            }
        }
        spans.addAll(open.values());
        spans.removeIf(span -> span.u().length() < joint - SAME);
        spans.addAll(bare(stretches, widest, joint));
        spans.sort(Comparator.comparingDouble((Span s) -> s.u().from())
                .thenComparingDouble(s -> s.v().from())
                .thenComparing(Span::kind));
        return spans;
    }

    /** Spans from edge to edge: neighbouring stretches without any support, where they are wide enough together. */
    private static List<Span> bare(List<Stretch> stretches, double widest, double joint) {
        List<List<Stretch>> areas = new ArrayList<>();
        for (Stretch stretch : stretches) {
            if (stretch.crossings().isEmpty()) {
                List<Stretch> merged = new ArrayList<>();
                areas.removeIf(area -> {
                    boolean beside = area.stream().anyMatch(s -> isBeside(s, stretch, joint));
                    if (beside) {
                        merged.addAll(area);
                    }
                    return beside;
                });
                merged.add(stretch);
                areas.add(merged);
            }
        }
        return areas.stream()
                .map(area -> area.stream()
                        .map(s -> span(SpanKind.END_SPAN, s, s.low(), s.high(), "", ""))
                        .reduce(SpanReader::joined)
                        .orElseThrow())
                .filter(span -> span.u().length() > widest)
                .toList();
    }

    /** Whether one stretch goes on where the other ends, over some of its length along the fall. */
    private static boolean isBeside(Stretch before, Stretch after, double joint) {
        double gap = after.u().from() - before.u().to();
        return gap >= -SAME
                && gap <= joint
                && before.low().atTo() < after.high().atFrom()
                && after.low().atFrom() < before.high().atTo();
    }

    private static List<Span> between(Stretch s) {
        List<Crossing> c = s.crossings();
        List<Span> spans = new ArrayList<>();
        if (c.isEmpty()) {
            return spans;
        }
        int last = c.size() - 1;
        spans.add(span(
                SpanKind.EAVE_OVERHANG, s, s.low(), c.get(0).v(), "", c.get(0).line()));
        for (int i = 0; i < last; i++) {
            SpanKind kind = i == 0 || i == last - 1 ? SpanKind.END_SPAN : SpanKind.INTERNAL_SPAN;
            spans.add(span(
                    kind,
                    s,
                    c.get(i).v(),
                    c.get(i + 1).v(),
                    c.get(i).line(),
                    c.get(i + 1).line()));
        }
        spans.add(span(
                SpanKind.RIDGE_OVERHANG,
                s,
                c.get(last).v(),
                s.high(),
                c.get(last).line(),
                ""));
        return spans;
    }

    private static Span span(SpanKind kind, Stretch s, Ends low, Ends high, String lower, String upper) {
        double atFrom = high.atFrom() - low.atFrom();
        double atTo = high.atTo() - low.atTo();
        Interval v = atFrom >= atTo ? new Interval(low.atFrom(), high.atFrom()) : new Interval(low.atTo(), high.atTo());
        return new Span(kind, Math.max(atFrom, atTo), Math.min(atFrom, atTo), s.u(), v, lower, upper);
    }

    private static Span joined(Span a, Span b) {
        Span longer = b.length() > a.length() ? b : a;
        return new Span(
                a.kind(),
                longer.length(),
                Math.min(a.least(), b.least()),
                new Interval(Math.min(a.u().from(), b.u().from()), Math.max(a.u().to(), b.u().to())),
                longer.v(),
                a.lower(),
                a.upper());
    }
}

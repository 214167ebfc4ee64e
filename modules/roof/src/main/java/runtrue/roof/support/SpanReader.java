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
    private SpanReader() {}

    /**
     * Spans by place: across the fall, then up it.
     *
     * @param widest stretches without any support narrower than this are verge overhangs of the supports and carry no
     *     span; wider ones are a span from edge to edge (metres)
     * @param joint gaps in u up to this are bridged, metres
     */
    public static List<Span> of(List<Stretch> stretches, double widest, double joint) {
        Map<String, Span> open = new LinkedHashMap<>();
        List<Span> spans = new ArrayList<>();
        for (Stretch stretch : stretches) {
            for (Span span : within(stretch, widest)) {
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
        spans.sort(Comparator.comparingDouble((Span s) -> s.u().from())
                .thenComparingDouble(s -> s.v().from())
                .thenComparing(Span::kind));
        return spans;
    }

    private static List<Span> within(Stretch s, double widest) {
        List<Crossing> c = s.crossings();
        List<Span> spans = new ArrayList<>();
        if (c.isEmpty()) {
            if (s.u().length() > widest) {
                spans.add(span(SpanKind.END_SPAN, s, s.low(), s.high(), "", ""));
            }
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
                new Interval(a.u().from(), b.u().to()),
                longer.v(),
                a.lower(),
                a.upper());
    }
}

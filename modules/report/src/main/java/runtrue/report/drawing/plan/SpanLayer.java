package runtrue.report.drawing.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import runtrue.report.drawing.place.Patch;
import runtrue.report.drawing.place.Tilted;
import runtrue.report.drawing.place.Vec;
import runtrue.report.drawing.svg.Figures;
import runtrue.report.drawing.svg.Ink;
import runtrue.report.drawing.svg.Pen;
import runtrue.report.drawing.svg.Type;
import runtrue.result.PlaneResult.Range;
import runtrue.result.PlaneResult.Span;

/** A chain of spans up the fall, where most of the plane's support lines are crossed. */
final class SpanLayer {
    private static final double SAME = 0.005;
    private static final Pen PEN = Pen.of(Ink.GREY, 0.18);
    /** The chain begins and ends at edges, whose own room it may touch. */
    private static final double CLEAR_OF_EDGES = 2.5;

    private static final int MOST_TRIED = 80;

    private final Canvas canvas;

    SpanLayer(Canvas canvas) {
        this.canvas = canvas;
    }

    void draw(List<Patch> patches) {
        canvas.svg().group("spans");
        patches.forEach(this::chain);
        canvas.svg().end();
    }

    private void chain(Patch patch) {
        List<Span> spans = patch.plane().spans().stream()
                .filter(s -> s.lengthMetres() > SAME)
                .toList();
        Optional<List<Span>> fullest = spans.stream()
                .limit(MOST_TRIED)
                .map(s -> at(spans, middle(s.u())))
                .max(Comparator.comparingInt((List<Span> c) -> c.size()).thenComparingDouble(SpanLayer::width));
        if (fullest.isEmpty()) {
            return;
        }
        List<Span> chain = fullest.get();
        Range common = common(chain);
        double low = chain.stream().mapToDouble(s -> s.v().fromMetres()).min().orElse(0);
        double high = chain.stream().mapToDouble(s -> s.v().toMetres()).max().orElse(0);
        for (double share : new double[] {0.1, 0.9, 0.2, 0.8, 0.35, 0.65, 0.5}) {
            double u = common.fromMetres() + share * common.lengthMetres();
            Tilted line = Tilted.around(patch.at(u, low), patch.at(u, high), 1).shortened(CLEAR_OF_EDGES);
            if (canvas.board().freeForLine(line)) {
                canvas.board().takeForLine(line);
                chain.forEach(s -> BarLine.draw(
                        canvas.svg(), patch.at(u, s.v().fromMetres()), patch.at(u, s.v().toMetres()), PEN));
                figures(patch, chain, u);
                canvas.used(Sign.SPAN);
                return;
            }
        }
        canvas.leftOut("Spans of some planes find no room: see Spans in quantities.xlsx.");
    }

    private static List<Span> at(List<Span> spans, double u) {
        return spans.stream()
                .filter(s -> s.u().fromMetres() <= u && u <= s.u().toMetres())
                .sorted(Comparator.comparingDouble(s -> s.v().fromMetres()))
                .toList();
    }

    private static Range common(List<Span> chain) {
        return new Range(
                chain.stream().mapToDouble(s -> s.u().fromMetres()).max().orElse(0),
                chain.stream().mapToDouble(s -> s.u().toMetres()).min().orElse(0));
    }

    private static double width(List<Span> chain) {
        return common(chain).lengthMetres();
    }

    private static double middle(Range range) {
        return (range.fromMetres() + range.toMetres()) / 2;
    }

    /** One for each span where there is room, else one for each run of equal spans. */
    private void figures(Patch patch, List<Span> chain, double u) {
        double room = chain.stream().mapToDouble(Span::lengthMetres).min().orElse(0)
                * patch.up().length();
        boolean each = room > Type.SMALL.width("0.00") + 0.5;
        int start = 0;
        while (start < chain.size()) {
            int end = start + 1;
            while (!each && end < chain.size() && alike(chain.get(start), chain.get(end))) {
                end++;
            }
            figure(patch, chain.subList(start, end), u);
            start = end;
        }
    }

    private static boolean alike(Span a, Span b) {
        return Math.abs(a.lengthMetres() - b.lengthMetres()) < SAME;
    }

    private void figure(Patch patch, List<Span> run, double u) {
        double v = (run.get(0).v().fromMetres() + run.get(run.size() - 1).v().toMetres()) / 2;
        String length = Figures.metres(run.get(0).lengthMetres());
        Vec side = patch.across().unit().times(2);
        List<Tilted> places = new ArrayList<>();
        for (int way : new int[] {1, -1}) {
            places.add(
                    new Tilted(patch.at(u, v).plus(side.times(way)), patch.up().unit(), 0, 0));
        }
        canvas.label(places, Type.SMALL, run.size() == 1 ? length : run.size() + " × " + length);
    }
}

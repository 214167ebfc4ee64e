package runtrue.report.drawing.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import runtrue.report.drawing.place.Patch;
import runtrue.report.drawing.place.Tilted;
import runtrue.report.drawing.place.Vec;
import runtrue.report.drawing.svg.Figures;
import runtrue.report.drawing.svg.Ink;
import runtrue.report.drawing.svg.Path;
import runtrue.report.drawing.svg.Pen;
import runtrue.report.drawing.svg.Type;
import runtrue.result.Finding;
import runtrue.result.Measure;
import runtrue.result.Outcome;
import runtrue.result.PlaneResult.Span;

/** Hatches the spans that a finding holds to be too long, and says by how much. */
final class LongSpans {
    private final Canvas canvas;
    private final Map<Patch, List<Case>> cases = new LinkedHashMap<>();

    /** A span with the limit that it passes, metres. */
    private record Case(Span span, double limit) {}

    LongSpans(Canvas canvas, List<Patch> patches, List<Mark> marks) {
        this.canvas = canvas;
        for (Patch patch : patches) {
            List<Finding> findings = marks.stream()
                    .filter(m -> m.outcome() == Outcome.DOES_NOT_CONFORM)
                    .map(Mark::finding)
                    .filter(f -> f.plane().equals(patch.plane().id()))
                    .toList();
            patch.plane().spans().forEach(s -> limit(s, findings, patch));
        }
    }

    /** The subject of a finding names the kind of span; its limit then holds for all spans of that kind in the plane. */
    private void limit(Span span, List<Finding> findings, Patch patch) {
        findings.stream()
                .filter(f -> f.subject().contains(span.kind()) && f.comparison().equals("at most"))
                .flatMap(f -> f.limit().stream())
                .filter(l -> l.unit().equals("mm") || l.unit().equals("m"))
                .mapToDouble(LongSpans::metres)
                .filter(limit -> span.lengthMetres() > limit + 1e-6)
                .max()
                .ifPresent(limit ->
                        cases.computeIfAbsent(patch, p -> new ArrayList<>()).add(new Case(span, limit)));
    }

    private static double metres(Measure measure) {
        return measure.unit().equals("mm") ? measure.value() / 1000 : measure.value();
    }

    void draw() {
        if (cases.isEmpty()) {
            return;
        }
        canvas.svg().group("long-spans");
        String hatch = canvas.svg().hatch(canvas.name() + "-hatch", Ink.ACCENT);
        cases.forEach((patch, found) -> found.forEach(c -> canvas.svg()
                .shape(
                        "long-span",
                        "",
                        Path.ring(patch.clipped(c.span.u(), c.span.v())),
                        hatch,
                        Pen.of(Ink.ACCENT, 0.3))));
        canvas.svg().end();
        canvas.used(Sign.LONG_SPAN);
    }

    void label() {
        cases.forEach((patch, found) -> found.forEach(c -> label(patch, c)));
    }

    private void label(Patch patch, Case found) {
        Span span = found.span;
        String length = Figures.fixed(span.lengthMetres() * 1000, 0);
        String limit = Figures.fixed(found.limit * 1000, 0);
        double width = span.u().lengthMetres() * patch.across().length();
        Type type = Type.SMALL_BOLD.in(Ink.ACCENT);
        for (String text : List.of(
                String.format(Locale.ROOT, "%s %s mm, at most %s", span.kind(), length, limit),
                length + " > " + limit + " mm")) {
            if (type.width(text) < width + 4 && canvas.label(places(patch, span), type, text)) {
                return;
            }
        }
    }

    private static List<Tilted> places(Patch patch, Span span) {
        List<Tilted> places = new ArrayList<>();
        double v = (span.v().fromMetres() + span.v().toMetres()) / 2;
        for (double share : new double[] {0.5, 0.35, 0.65}) {
            Vec centre = patch.at(span.u().fromMetres() + share * span.u().lengthMetres(), v);
            for (double step : new double[] {0, 3, -3, 6, -6}) {
                places.add(new Tilted(
                        centre.plus(patch.up().unit().times(step)),
                        patch.across().unit(),
                        0,
                        0));
            }
        }
        return places;
    }
}

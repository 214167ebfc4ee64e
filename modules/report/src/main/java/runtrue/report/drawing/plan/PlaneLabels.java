package runtrue.report.drawing.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import runtrue.report.drawing.place.Box;
import runtrue.report.drawing.place.Patch;
import runtrue.report.drawing.place.Tilted;
import runtrue.report.drawing.place.Vec;
import runtrue.report.drawing.svg.Figures;
import runtrue.report.drawing.svg.Ink;
import runtrue.report.drawing.svg.Path;
import runtrue.report.drawing.svg.Pen;
import runtrue.report.drawing.svg.Svg;
import runtrue.report.drawing.svg.Type;
import runtrue.result.PlaneResult;

/** Name, pitch and extent of each plane, and which way it falls. */
final class PlaneLabels {
    /** A plane narrower than this on paper, millimetres, has no room for text or arrow. */
    private static final double LEAST = 2.6;

    private static final double LEVEL_DEGREES = 0.05;

    private final Canvas canvas;

    PlaneLabels(Canvas canvas) {
        this.canvas = canvas;
    }

    void label(List<Patch> patches) {
        boolean[] all = {true};
        patches.forEach(p -> all[0] &= label(p));
        if (!all[0]) {
            canvas.leftOut(
                    "Names of some small planes find no room: see the list of planes or Planes in quantities.xlsx.");
        }
    }

    private boolean label(Patch patch) {
        Box bounds = Box.around(patch.outline());
        if (Math.min(bounds.width(), bounds.height()) < LEAST) {
            return false;
        }
        List<Vec> clearings = Clearings.of(patch);
        if (clearings.isEmpty()) {
            return false;
        }
        for (List<String> lines : variants(patch.plane())) {
            double width = 1.2
                    + Math.max(
                            Type.NAME.width(lines.get(0)),
                            lines.stream().mapToDouble(Type.SMALL::width).max().orElse(0));
            double height =
                    lines.size() == 1 ? 3 : Type.NAME.size() * 1.35 + (lines.size() - 1) * Type.SMALL.lineHeight();
            Optional<Vec> place = clearings.stream()
                    .filter(c -> fits(patch, Tilted.level(c, width, height)))
                    .findFirst();
            if (place.isPresent()) {
                canvas.board().take(Tilted.level(place.get(), width, height));
                write(place.get(), height, lines);
                arrow(patch, place.get(), clearings);
                return true;
            }
        }
        arrow(patch, clearings.get(0), clearings);
        return false;
    }

    private boolean fits(Patch patch, Tilted box) {
        return patch.contains(box) && canvas.board().free(box);
    }

    private static List<List<String>> variants(PlaneResult plane) {
        String name = Roof.shortName(plane.name());
        String pitch = Roof.pitch(plane);
        String shape = plane.curve()
                .map(curve -> curve.radiusMetres().isPresent()
                        ? ArcPitch.of(plane) + ", radius "
                                + Figures.metres(curve.radiusMetres().getAsDouble()) + " m"
                        : ArcPitch.of(plane))
                .orElse("pitch " + pitch);
        String area = Figures.fixed(plane.areaSquareMetres(), 1) + " m²";
        int sheets = plane.sheets().size();
        String run = sheets + (sheets == 1 ? " sheet" : " sheets") + ", run " + Figures.metres(plane.longestRunMetres())
                + " m";
        List<List<String>> variants = new ArrayList<>();
        if (sheets > 0) {
            variants.add(List.of(name, shape + " · " + area, run));
        }
        variants.add(List.of(name, shape + " · " + area));
        plane.curve().ifPresent(c -> variants.add(List.of(name, pitch + " · " + area)));
        variants.add(List.of(name, pitch));
        variants.add(List.of(pitch));
        return variants;
    }

    private void write(Vec middle, double height, List<String> lines) {
        if (lines.size() == 1) {
            canvas.write(Tilted.level(middle, Type.SMALL_BOLD.width(lines.get(0)), 2.6), Type.SMALL_BOLD, lines.get(0));
            return;
        }
        double y = middle.y() - height / 2 + Type.NAME.size() * 0.7;
        canvas.write(
                Tilted.level(new Vec(middle.x(), y), Type.NAME.width(lines.get(0)) + 1, Type.NAME.size() * 1.3),
                Type.NAME,
                lines.get(0));
        y += Type.NAME.size() * 0.65 + Type.SMALL.lineHeight() / 2;
        for (String line : lines.subList(1, lines.size())) {
            canvas.write(
                    Tilted.level(new Vec(middle.x(), y), Type.SMALL.width(line) + 1, Type.SMALL.lineHeight()),
                    Type.SMALL,
                    line);
            y += Type.SMALL.lineHeight();
        }
    }

    /** Near the name, as long as the plane allows; a shorter one where a long one finds no room. */
    private void arrow(Patch patch, Vec name, List<Vec> clearings) {
        if (patch.plane().pitchDegrees() < LEVEL_DEGREES) {
            return;
        }
        Vec down = patch.up().times(-1).unit();
        Box bounds = Box.around(patch.outline());
        double most = Math.min(
                20, 0.45 * Math.min(bounds.width() * Math.abs(down.x()) + bounds.height() * Math.abs(down.y()), 60));
        List<Vec> nearest = clearings.stream()
                .sorted(Comparator.comparingDouble(c -> c.minus(name).length()))
                .toList();
        for (double length : new double[] {most, 0.6 * most, 0.35 * most}) {
            for (Vec centre : nearest) {
                Tilted room = new Tilted(centre, down, length + 2.5, 2.6);
                if (length >= 2.5 && fits(patch, room)) {
                    canvas.board().take(room);
                    Vec half = down.times(length / 2);
                    if (fallsBothWays(patch.plane())) {
                        draw(canvas.svg(), centre, centre.plus(half));
                        draw(canvas.svg(), centre, centre.minus(half));
                    } else {
                        draw(canvas.svg(), centre.minus(half), centre.plus(half));
                    }
                    canvas.used(Sign.FALL);
                    return;
                }
            }
        }
    }

    private static boolean fallsBothWays(PlaneResult plane) {
        return plane.curve().map(PlaneResult.Curve::fallsBothWays).orElse(false);
    }

    /** A line that begins in a ring, where the water comes from, and ends in a slender head. */
    static void draw(Svg svg, Vec from, Vec to) {
        Vec down = to.minus(from).unit();
        double head = Math.min(3, to.minus(from).length() / 2);
        Vec neck = to.minus(down.times(head));
        Vec side = down.turned().times(head * 0.28);
        svg.group("fall");
        svg.line(Path.line(from, neck), Pen.of(Ink.BLACK, 0.35));
        svg.shape(Path.ring(List.of(to, neck.plus(side), neck.minus(side))), Ink.BLACK, Pen.of(Ink.BLACK, 0));
        svg.circle(from, 0.6, Ink.WHITE, Pen.of(Ink.BLACK, 0.35));
        svg.end();
    }
}

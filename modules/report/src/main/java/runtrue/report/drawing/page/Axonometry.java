package runtrue.report.drawing.page;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import runtrue.report.drawing.place.Box;
import runtrue.report.drawing.place.Vec;
import runtrue.report.drawing.svg.Ink;
import runtrue.report.drawing.svg.Path;
import runtrue.report.drawing.svg.Pen;
import runtrue.report.drawing.svg.Svg;
import runtrue.result.Direction;
import runtrue.result.PlaneResult;
import runtrue.result.Point;

/**
 * The planes seen from the south-east and above, in parallel projection, so that the shape can be told at a glance. Far
 * planes are drawn first; where planes reach through each other that order is not exact.
 *
 * @param north bearing of north from the models' +Y, clockwise, radians
 */
record Axonometry(double north) {
    private static final double RISE = Math.toRadians(42);

    /**
     * Towards the light in plan: from between west and south-west, so that the slopes of a gable or a hip differ whichever
     * way it lies. Only the direction of fall counts; by the true angle a low roof would be all of one grey.
     */
    private static final double[] LIGHT = {-0.87, -0.5};

    void draw(Svg svg, List<PlaneResult> planes, Box box) {
        Point corner = planes.get(0).outline().get(0);
        List<Vec> all = planes.stream()
                .flatMap(p -> p.outline().stream())
                .map(p -> flat(p, corner))
                .toList();
        Box extent = Box.around(all);
        double scale =
                Math.min(box.width() / Math.max(0.1, extent.width()), box.height() / Math.max(0.1, extent.height()));
        Vec shift = box.centre().minus(extent.centre().times(scale));
        svg.group("axonometry");
        planes.stream()
                .sorted(Comparator.comparingDouble((PlaneResult p) -> -depth(p, corner))
                        .thenComparing(PlaneResult::id))
                .forEach(p -> plane(svg, p, corner, scale, shift));
        svg.end();
    }

    private void plane(Svg svg, PlaneResult plane, Point corner, double scale, Vec shift) {
        Path path = Path.ring(onPaper(plane.outline(), corner, scale, shift));
        plane.penetrations().forEach(h -> path.closed(onPaper(h.outline(), corner, scale, shift)));
        svg.shape(path, shade(plane.frame().normal()), Pen.of(Ink.BLACK, 0.18));
    }

    private List<Vec> onPaper(List<Point> ring, Point corner, double scale, Vec shift) {
        return ring.stream().map(p -> flat(p, corner).times(scale).plus(shift)).toList();
    }

    /** In metres on the picture's own plane. */
    private Vec flat(Point point, Point corner) {
        double[] p = turned(point.xMetres() - corner.xMetres(), point.yMetres() - corner.yMetres());
        double z = point.zMetres() - corner.zMetres();
        double across = (p[0] + p[1]) / Math.sqrt(2);
        double away = (p[1] - p[0]) / Math.sqrt(2);
        return new Vec(across, -(z * Math.cos(RISE) + away * Math.sin(RISE)));
    }

    private double depth(PlaneResult plane, Point corner) {
        return plane.outline().stream()
                .mapToDouble(point -> {
                    double[] p = turned(point.xMetres() - corner.xMetres(), point.yMetres() - corner.yMetres());
                    double away = (p[1] - p[0]) / Math.sqrt(2);
                    return away * Math.cos(RISE) - (point.zMetres() - corner.zMetres()) * Math.sin(RISE);
                })
                .average()
                .orElse(0);
    }

    /** East and north of a plan vector. */
    private double[] turned(double x, double y) {
        return new double[] {x * Math.cos(north) - y * Math.sin(north), x * Math.sin(north) + y * Math.cos(north)};
    }

    private String shade(Direction normal) {
        double[] n = turned(normal.x(), normal.y());
        double plan = Math.hypot(n[0], n[1]);
        double light = plan < 1e-3 ? 0.6 : (n[0] * LIGHT[0] + n[1] * LIGHT[1]) / plan;
        int grey = (int) Math.round(215 + 36 * light);
        return String.format(Locale.ROOT, "#%02x%02x%02x", grey, Math.min(255, grey + 2), Math.min(255, grey + 5));
    }
}

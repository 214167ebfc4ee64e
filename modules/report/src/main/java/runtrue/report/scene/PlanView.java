package runtrue.report.scene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import runtrue.report.scene.Canvas.Spot;
import runtrue.result.Direction;
import runtrue.result.PlaneResult;
import runtrue.result.Point;

/**
 * Some planes from straight above, model +Y up, each with its number: the first is 1. What lies higher hides what lies lower.
 */
public final class PlanView {
    private static final int INK = 0x263238;
    private static final int FAULT = 0xC24E00;
    private static final int HALO = 0xFFFFFF;
    private static final double RING = 14;
    private static final double AIR = 1.1;

    /** Lines across a plane that are tried for the place of its number. */
    private static final int TRIED = 12;

    /** For a unit of the canvas: fit to be printed. */
    private static final double PIXELS = 1;

    private static final double LEAST_METRES = 1;

    private final List<PlaneResult> planes;
    private final List<Point> marked;
    private final Camera camera;

    private PlanView(List<PlaneResult> planes, List<Point> marked, Camera camera) {
        this.planes = planes;
        this.marked = marked;
        this.camera = camera;
    }

    /**
     * PNG bytes.
     *
     * @param planes at least one with an outline
     * @param marked places to be ringed
     */
    public static byte[] png(List<PlaneResult> planes, List<Point> marked) {
        PlanView view = new PlanView(planes, marked, above(planes));
        return Picture.of(view::draw, PIXELS);
    }

    private static Camera above(List<PlaneResult> planes) {
        List<Point> points = planes.stream().flatMap(p -> p.outline().stream()).toList();
        var x = points.stream().mapToDouble(Point::xMetres).summaryStatistics();
        var y = points.stream().mapToDouble(Point::yMetres).summaryStatistics();
        double top = points.stream().mapToDouble(Point::zMetres).max().orElse(0) + 1;
        double height =
                Math.max(LEAST_METRES, Math.max(y.getMax() - y.getMin(), (x.getMax() - x.getMin()) / Camera.ASPECT));
        return new Camera(
                new Point((x.getMin() + x.getMax()) / 2, (y.getMin() + y.getMax()) / 2, top),
                new Direction(0, 0, -1),
                new Direction(0, 1, 0),
                height * AIR);
    }

    private void draw(Canvas canvas) {
        List<PlaneResult> upwards = planes.stream()
                .filter(p -> !p.outline().isEmpty())
                .sorted(Comparator.comparingDouble(PlanView::level).thenComparing(PlaneResult::id))
                .toList();
        upwards.forEach(p -> canvas.area(rings(p), Scene.shade(p.frame().normal(), camera.right()), INK, 1.6));
        marked.forEach(p -> ring(spot(p), canvas));
        for (int i = 0; i < planes.size(); i++) {
            if (!planes.get(i).outline().isEmpty()) {
                Numerals.draw(i + 1, inside(rings(planes.get(i))), canvas);
            }
        }
    }

    private static void ring(Spot at, Canvas canvas) {
        canvas.circle(at, RING, HALO, 8);
        canvas.circle(at, RING, FAULT, 4);
    }

    private List<List<Spot>> rings(PlaneResult plane) {
        return Stream.concat(
                        Stream.of(plane.outline()),
                        plane.penetrations().stream().map(PlaneResult.Penetration::outline))
                .map(ring -> ring.stream().map(this::spot).toList())
                .toList();
    }

    private static double level(PlaneResult plane) {
        return plane.outline().stream().mapToDouble(Point::zMetres).average().orElse(0);
    }

    private Spot spot(Point point) {
        Point seen = camera.seen(point);
        double scale = Canvas.HEIGHT / camera.height();
        return new Spot(Canvas.WIDTH / 2 + seen.xMetres() * scale, Canvas.HEIGHT / 2 - seen.yMetres() * scale);
    }

    /** The middle of the longest of some level lines across an area: never in a hole, nor in the bay of an L. */
    private static Spot inside(List<List<Spot>> rings) {
        var y = rings.get(0).stream().mapToDouble(Spot::y).summaryStatistics();
        Spot best = rings.get(0).get(0);
        double longest = 0;
        for (int i : order()) {
            double at = y.getMin() + (y.getMax() - y.getMin()) * i / TRIED;
            double[] crossings = crossings(rings, at);
            for (int c = 1; c < crossings.length; c += 2) {
                double length = crossings[c] - crossings[c - 1];
                if (length > longest * 1.05) {
                    longest = length;
                    best = new Spot((crossings[c] + crossings[c - 1]) / 2, at);
                }
            }
        }
        return best;
    }

    /** From the middle outwards, of lines alike the one in the middle; near the ends a number would lie over the edge. */
    private static List<Integer> order() {
        List<Integer> order = new ArrayList<>(List.of(TRIED / 2));
        for (int i = 1; i <= TRIED / 4; i++) {
            order.add(TRIED / 2 - i);
            order.add(TRIED / 2 + i);
        }
        return order;
    }

    private static double[] crossings(List<List<Spot>> rings, double y) {
        List<Double> at = new ArrayList<>();
        for (List<Spot> ring : rings) {
            for (int i = 0; i < ring.size(); i++) {
                Spot a = ring.get(i);
                Spot b = ring.get((i + 1) % ring.size());
                if (a.y() > y != b.y() > y) {
                    at.add(a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()));
                }
            }
        }
        return at.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    }
}

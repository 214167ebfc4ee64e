package runtrue.report.drawing.page;

import java.util.ArrayList;
import java.util.List;
import runtrue.report.drawing.place.Box;
import runtrue.report.drawing.place.Vec;
import runtrue.report.drawing.place.View;
import runtrue.report.drawing.plan.GridLayer;
import runtrue.report.drawing.plan.Roof;
import runtrue.result.PlaneResult;
import runtrue.result.Point;

/**
 * Paper, scale and turn for a roof: the building's own axes lie level and upright on the page, north as far up as that
 * allows, at the largest scale that a scale rule has.
 */
record Fit(Paper paper, View view) {
    private static final int[] SCALES = {
        10, 20, 25, 50, 75, 100, 125, 150, 200, 250, 300, 400, 500, 750, 1000, 1250, 1500, 2000, 2500, 5000, 10_000,
        20_000, 50_000, 100_000
    };

    /** A small page will do when sheets and spans can be read on it. */
    private static final int SMALL_PAGE = 100;

    /** Room around the roof for lengths of edges, and for grid bubbles outside of them. */
    private static final double AROUND = GridLayer.BEYOND + 6.5;

    /** Turning a roof on its side must gain something, for north then points sideways. */
    private static final double WORTH = 0.75;

    static Fit of(Roof roof) {
        double turn = turn(roof.planes().get(0));
        List<Point> points =
                roof.planes().stream().flatMap(p -> p.outline().stream()).toList();
        Fit small = of(Paper.A4, points, turn);
        return small.view.denominator() <= SMALL_PAGE ? small : of(Paper.A3, points, turn);
    }

    private static Fit of(Paper paper, List<Point> points, double turn) {
        Fit upright = turned(paper, points, turn);
        Fit onItsSide = turned(paper, points, turn + Math.PI / 2);
        return onItsSide.view.denominator() <= WORTH * upright.view.denominator() ? onItsSide : upright;
    }

    private static Fit turned(Paper paper, List<Point> points, double turn) {
        Box room = paper.plan().grown(-AROUND);
        Point corner = points.get(0);
        View whole = new View(corner, turn, 1000, new Vec(0, 0));
        Box metres = Box.around(points.stream().map(whole::at).toList());
        int scale = SCALES[SCALES.length - 1];
        for (int i = SCALES.length - 1; i >= 0; i--) {
            if (metres.width() * 1000 / SCALES[i] > room.width()
                    || metres.height() * 1000 / SCALES[i] > room.height()) {
                break;
            }
            scale = SCALES[i];
        }
        Vec shift = metres.centre().times(1000.0 / scale);
        return new Fit(paper, new View(corner, turn, scale, room.centre().minus(shift)));
    }

    /** What brings the main plane's direction across the fall onto the nearer axis of the page. */
    private static double turn(PlaneResult main) {
        double across =
                Math.atan2(main.frame().across().y(), main.frame().across().x());
        double off = across - Math.round(across / (Math.PI / 2)) * (Math.PI / 2);
        return Math.abs(off) < 1e-4 ? 0 : -off;
    }

    /** True north on paper where the result tells it, else the models' +Y. */
    static North north(List<PlaneResult> planes, View view) {
        List<Double> offsets = new ArrayList<>();
        for (PlaneResult plane : planes) {
            if (plane.azimuthDegrees().isPresent()
                    && plane.azimuthTrueNorthDegrees().isPresent()) {
                offsets.add(plane.azimuthDegrees().getAsDouble()
                        - plane.azimuthTrueNorthDegrees().getAsDouble());
            }
        }
        double bearing = offsets.isEmpty() ? 0 : Math.toRadians(offsets.get(0));
        return new North(
                !offsets.isEmpty(),
                bearing,
                view.way(Math.sin(bearing), Math.cos(bearing)).unit());
    }

    /**
     * Where north is.
     *
     * @param stated whether it is true north
     * @param bearing of it from the models' +Y, clockwise, radians
     * @param onPaper unit vector
     */
    record North(boolean stated, double bearing, Vec onPaper) {}
}

package runtrue.report.scene;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import runtrue.result.CheckResult;
import runtrue.result.ElementRef;
import runtrue.result.Finding;
import runtrue.result.PlaneResult;
import runtrue.result.Point;

/** Chooses where to stand to see what a finding is about. */
public final class Views {
    /** High enough to see a flat roof as a surface, low enough to see its slope. */
    private static final double ELEVATION = Math.toRadians(50);

    /** From straight below the fall a slope looks like a wall; from a corner it looks like a roof. */
    private static final double ASIDE = Math.toRadians(25);

    /** So much of the plane's size is shown around a place that has one: enough to tell where on the roof it is. */
    private static final double SHARE = 0.7;

    private static final double LEAST_HEIGHT = 8;

    /** Of the whole roof's size, so that nothing touches the frame. */
    private static final double AIR = 1.15;

    private final List<PlaneResult> planes;
    private final Size roof;

    private Views(List<PlaneResult> planes) {
        this.planes = planes;
        this.roof = Size.of(planes.stream().flatMap(p -> p.outline().stream()).toList());
    }

    /** Empty when no plane has an outline: then there is nothing to look at. */
    public static Optional<Views> of(CheckResult result) {
        List<PlaneResult> planes =
                result.planes().stream().filter(p -> !p.outline().isEmpty()).toList();
        return planes.isEmpty() ? Optional.empty() : Optional.of(new Views(planes));
    }

    /** The view of one finding. */
    public View of(Finding finding) {
        Optional<PlaneResult> plane =
                planes.stream().filter(p -> p.id().equals(finding.plane())).findFirst();
        Optional<Point> place = finding.place();
        Point target =
                place.or(() -> plane.map(p -> Size.of(p.outline()).middle())).orElseGet(roof::middle);
        double height = place.isEmpty() && plane.isEmpty()
                ? roof.diagonal() * AIR
                : Math.max(
                        LEAST_HEIGHT,
                        SHARE
                                * plane.map(p -> Size.of(p.outline()))
                                        .orElse(roof)
                                        .diagonal());
        double[] from = plane.map(Views::downTheFall).orElse(new double[] {1, -1});
        Camera camera = Camera.at(target, from, ELEVATION, 2 * roof.diagonal() + LEAST_HEIGHT, height);
        return new View(camera, place, finding.plane(), finding.elements(), before(finding, plane));
    }

    /** From the eave's side one looks up the slope as a person on site would; a level plane has no such side. */
    private static double[] downTheFall(PlaneResult plane) {
        var up = plane.frame().up();
        if (Math.hypot(up.x(), up.y()) < 0.01) {
            return new double[] {1, -1};
        }
        double cos = Math.cos(ASIDE);
        double sin = Math.sin(ASIDE);
        return new double[] {-up.x() * cos + up.y() * sin, -up.x() * sin - up.y() * cos};
    }

    /** The plane's own elements hide what is under them, unless it is they that are at fault. */
    private List<ElementRef> before(Finding finding, Optional<PlaneResult> plane) {
        if (plane.isEmpty() || finding.elements().isEmpty()) {
            return List.of();
        }
        Set<String> roof =
                plane.get().elements().stream().map(ElementRef::globalId).collect(Collectors.toSet());
        boolean beneath = finding.elements().stream().noneMatch(e -> roof.contains(e.globalId()));
        return beneath ? plane.get().elements() : List.of();
    }

    /** The box around some points. */
    private record Size(Point least, Point greatest) {
        static Size of(List<Point> points) {
            var x = points.stream().mapToDouble(Point::xMetres).summaryStatistics();
            var y = points.stream().mapToDouble(Point::yMetres).summaryStatistics();
            var z = points.stream().mapToDouble(Point::zMetres).summaryStatistics();
            return new Size(
                    new Point(x.getMin(), y.getMin(), z.getMin()), new Point(x.getMax(), y.getMax(), z.getMax()));
        }

        Point middle() {
            return new Point(
                    (least.xMetres() + greatest.xMetres()) / 2,
                    (least.yMetres() + greatest.yMetres()) / 2,
                    (least.zMetres() + greatest.zMetres()) / 2);
        }

        double diagonal() {
            return Math.hypot(
                    Math.hypot(greatest.xMetres() - least.xMetres(), greatest.yMetres() - least.yMetres()),
                    greatest.zMetres() - least.zMetres());
        }
    }
}

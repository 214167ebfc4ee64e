package runtrue.report.setout;

import java.util.List;
import runtrue.report.drawing.place.Patch;
import runtrue.report.drawing.place.Vec;
import runtrue.report.drawing.place.View;
import runtrue.result.Direction;
import runtrue.result.PlaneResult;
import runtrue.result.PlaneResult.Station;
import runtrue.result.Point;

/** Where a plane's own u and v lie in the world, also on a curved one. */
final class SheetPlaces {
    /** Any plan view: what a plane has of u and v does not hang on the paper. */
    private static final double DENOMINATOR = 100;

    private final PlaneResult plane;
    private final Patch patch;

    SheetPlaces(PlaneResult plane) {
        this.plane = plane;
        patch = Patch.of(plane, new View(plane.frame().origin(), 0, DENOMINATOR, new Vec(0, 0)));
    }

    /** A point of the plane. */
    Point at(double u, double v) {
        Direction across = plane.frame().across();
        return plane.curve()
                .map(curve -> along(onSection(curve.stations(), v), across, u))
                .orElseGet(
                        () -> along(along(plane.frame().origin(), plane.frame().up(), v), across, u));
    }

    /** The part of the plane that a sheet covers, corner by corner. */
    List<Point> covered(PlaneResult.Sheet sheet) {
        return patch.clippedRing(sheet.u(), sheet.v()).stream()
                .map(p -> at(p.x(), p.y()))
                .toList();
    }

    private static Point along(Point from, Direction way, double metres) {
        return new Point(
                from.xMetres() + way.x() * metres,
                from.yMetres() + way.y() * metres,
                from.zMetres() + way.z() * metres);
    }

    private static Point onSection(List<Station> stations, double v) {
        int i = 1;
        while (i < stations.size() - 1 && stations.get(i).vMetres() < v) {
            i++;
        }
        Station a = stations.get(i - 1);
        Station b = stations.get(i);
        double share = (v - a.vMetres()) / (b.vMetres() - a.vMetres());
        return new Point(
                a.point().xMetres() + share * (b.point().xMetres() - a.point().xMetres()),
                a.point().yMetres() + share * (b.point().yMetres() - a.point().yMetres()),
                a.point().zMetres() + share * (b.point().zMetres() - a.point().zMetres()));
    }
}

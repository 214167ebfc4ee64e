package runtrue.report.page.data;

import java.io.Writer;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import runtrue.report.drawing.RoofPlan;
import runtrue.result.CheckResult;
import runtrue.result.PlaneResult;
import runtrue.result.Point;

/** All that a page shows, as one JSON object. */
public final class PageData {
    private PageData() {}

    /** Writes it; the stream stays open. */
    public static void write(CheckResult result, List<RoofPlan> plans, Writer out) {
        ScriptJson json = new ScriptJson(out);
        Point origin = origin(result.planes());
        Map<String, Integer> planes = positions(result.planes());
        json.object(() -> {
            HeadData.write(json, result);
            json.metres("origin", origin.xMetres(), origin.yMetres(), origin.zMetres());
            FindingsData.write(json, result, planes, origin);
            PlanesData.write(json, result, planes, origin);
            PlansData.write(json, result, plans);
            TablesData.write(json, result, planes);
            ChangesData.write(json, result);
        });
    }

    private static Map<String, Integer> positions(List<PlaneResult> planes) {
        Map<String, Integer> positions = new HashMap<>();
        for (PlaneResult plane : planes) {
            positions.put(plane.id(), positions.size());
        }
        return positions;
    }

    /** Whole metres at the low corner of the roof: graphics hardware counts in seven digits, site coordinates need more. */
    private static Point origin(List<PlaneResult> planes) {
        List<Point> all = planes.stream().flatMap(p -> p.outline().stream()).toList();
        return new Point(least(all, Point::xMetres), least(all, Point::yMetres), least(all, Point::zMetres));
    }

    private static double least(List<Point> points, ToDoubleFunction<Point> axis) {
        return Math.floor(points.stream().mapToDouble(axis).min().orElse(0));
    }
}

package runtrue.report.page.data;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import runtrue.result.CheckResult;
import runtrue.result.Conforming;
import runtrue.result.Direction;
import runtrue.result.EdgeResult;
import runtrue.result.PlaneResult;
import runtrue.result.Point;

/** Planes as figures and as shapes in space, and the edges between them. */
final class PlanesData {
    private PlanesData() {}

    static void write(ScriptJson json, CheckResult result, Map<String, Integer> planes, Point origin) {
        Map<String, Integer> conforming = new HashMap<>();
        for (Conforming one : result.conforming()) {
            conforming.merge(one.plane(), 1, Integer::sum);
        }
        json.objects("planes", result.planes(), (j, plane) -> {
            j.field("conforms", conforming.getOrDefault(plane.id(), 0));
            figures(j, plane);
            shape(j, plane, origin);
            layout(j, plane, origin);
        });
        json.objects("edges", result.edges(), (j, edge) -> edge(j, edge, planes, origin));
    }

    private static void figures(ScriptJson json, PlaneResult plane) {
        json.field("id", plane.id());
        json.field("name", plane.name());
        json.field("building", plane.building());
        json.field("storey", plane.storey());
        json.field("grid", plane.gridPlace());
        json.field("pitch", plane.pitchDegrees());
        plane.curve().ifPresent(c -> json.field("leastPitch", c.leastPitchDegrees()));
        json.field("area", plane.areaSquareMetres());
        json.field("planArea", plane.planAreaSquareMetres());
        json.field("eave", plane.eaveLevelMetres());
        json.field("ridge", plane.ridgeLevelMetres());
        json.field("run", plane.longestRunMetres());
        json.field("carriedBy", plane.bearing().carriedBy());
        json.field("azimuth", plane.azimuthTrueNorthDegrees());
        json.texts("remarks", plane.remarks());
    }

    private static void shape(ScriptJson json, PlaneResult plane, Point origin) {
        json.points("outline", plane.outline(), origin);
        json.list("holes", plane.penetrations(), hole -> json.points(hole.outline(), origin));
        json.points("at", List.of(plane.frame().origin()), origin);
        direction(json, "across", plane.frame().across());
        direction(json, "up", plane.frame().up());
        direction(json, "normal", plane.frame().normal());
        plane.curve().ifPresent(curve -> {
            json.metres(
                    "arc",
                    curve.stations().stream().mapToDouble(s -> s.vMetres()).toArray());
            json.points("section", curve.stations().stream().map(s -> s.point()).toList(), origin);
        });
    }

    /** Seven decimals: a millimetre in ten kilometres. */
    private static void direction(ScriptJson json, String name, Direction way) {
        json.list(name, List.of(way.x(), way.y(), way.z()), part -> json.number(Math.round(part * 1e7) / 1e7));
    }

    private static void layout(ScriptJson json, PlaneResult plane, Point origin) {
        json.metres(
                "sheets",
                plane.sheets().stream()
                        .flatMapToDouble(s -> DoubleStream.of(
                                s.u().fromMetres(), s.u().toMetres(), s.v().fromMetres(), s.v().toMetres()))
                        .toArray());
        json.objects("supports", plane.supports(), (j, line) -> {
            j.field("line", line.number());
            j.objects("pieces", line.pieces(), (k, piece) -> {
                k.field("globalId", piece.element().globalId());
                k.points("ends", List.of(piece.from(), piece.to()), origin);
                k.metres("size", piece.contactMetres(), piece.flangeMetres(), piece.depthMetres());
            });
        });
    }

    private static void edge(ScriptJson json, EdgeResult edge, Map<String, Integer> planes, Point origin) {
        json.field("kind", edge.kind());
        json.field("length", edge.lengthMetres());
        json.points("ends", List.of(edge.from(), edge.to()), origin);
        json.list("planes", edge.planes(), id -> json.number(planes.getOrDefault(id, -1)));
    }
}

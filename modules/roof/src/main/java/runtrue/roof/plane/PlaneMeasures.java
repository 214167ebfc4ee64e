package runtrue.roof.plane;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import runtrue.roof.PlaneFrame;
import runtrue.roof.ReadElement;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofSettings;
import runtrue.roof.skin.SkinFace;

/** Pitch, direction, areas and levels of a plane whose faces are joined; it has no name yet. */
final class PlaneMeasures {
    private final RoofSettings settings;

    PlaneMeasures(RoofSettings settings) {
        this.settings = settings;
    }

    RoofPlane of(JoinedPlane joined) {
        Envelope extent = joined.outline().getEnvelopeInternal();
        PlaneFrame frame = PlaneFrames.startingAt(joined.frame(), extent);
        Polygon outline = (Polygon) AffineTransformation.translationInstance(-extent.getMinX(), -extent.getMinY())
                .transform(joined.outline());
        double pitch = Math.acos(Math.min(1, frame.normal().getZ()));
        double area = outline.getArea();
        double gross = Outlines.shell(outline).getArea();
        Levels levels = levels(outline, frame);
        ReadElement main = joined.faces().get(0).source();
        return new RoofPlane(
                "",
                "",
                frame,
                outline,
                pitch,
                downslope(frame, pitch),
                fromTrueNorth(frame, pitch),
                area,
                gross,
                area * Math.cos(pitch),
                gross * Math.cos(pitch),
                levels.low(),
                levels.high(),
                joined.faces().stream()
                        .flatMapToDouble(f -> f.thickness().stream())
                        .max(),
                main.element().building(),
                main.element().storey(),
                Penetrations.of(outline),
                elements(joined),
                remarks(joined),
                Optional.empty());
    }

    /** A level plane falls nowhere. */
    private OptionalDouble downslope(PlaneFrame frame, double pitch) {
        return pitch < settings.tolerances().angle()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Bearings.downslope(frame));
    }

    private OptionalDouble fromTrueNorth(PlaneFrame frame, double pitch) {
        OptionalDouble own = downslope(frame, pitch);
        OptionalDouble north = settings.trueNorth();
        return own.isEmpty() || north.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Bearings.turn(own.getAsDouble() - north.getAsDouble()));
    }

    private static List<ReadElement> elements(JoinedPlane joined) {
        Set<ReadElement> sources = Collections.newSetFromMap(new IdentityHashMap<>());
        joined.faces().forEach(f -> sources.add(f.source()));
        return Bearings.ordered(sources);
    }

    private static List<String> remarks(JoinedPlane joined) {
        return joined.faces().stream()
                .map(SkinFace::remark)
                .filter(r -> !r.isEmpty())
                .distinct()
                .toList();
    }

    /** World metres: the drop's origin is put back. */
    private record Levels(double low, double high) {}

    private Levels levels(Polygon outline, PlaneFrame frame) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Coordinate c : outline.getExteriorRing().getCoordinates()) {
            Vector3D p = frame.at(c.x, c.y);
            low = Math.min(low, p.getZ());
            high = Math.max(high, p.getZ());
        }
        return new Levels(
                low + settings.origin().getZ(), high + settings.origin().getZ());
    }
}

package runtrue.result.build;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import runtrue.ifc.Element;
import runtrue.ifc.GridAxis;
import runtrue.result.ElementRef;
import runtrue.result.PlaneResult;
import runtrue.result.PlaneResult.Range;
import runtrue.roof.GridPlace;
import runtrue.roof.Interval;
import runtrue.roof.Penetration;
import runtrue.roof.PlaneFrame;
import runtrue.roof.PlaneLayout;
import runtrue.roof.Roof;
import runtrue.roof.RoofPlane;
import runtrue.roof.SetOutChoice;
import runtrue.roof.Sheet;
import runtrue.roof.Span;
import runtrue.roof.SupportEvidence;
import runtrue.roof.SupportLine;
import runtrue.roof.SupportPiece;
import runtrue.roof.bearing.TruePlane.Deviation;
import runtrue.roof.curved.Curve;
import runtrue.roof.sheet.SetOutChoices;
import runtrue.rules.OrderLengths;
import runtrue.rules.RoofSystem;

/** One plane with its layout, from the local frame to the world. */
record PlaneMapping(World world, List<GridAxis> axes, Roof roof, RoofSystem system) {
    PlaneResult map(PlaneLayout layout) {
        RoofPlane plane = layout.plane();
        PlaneFrame frame = plane.frame();
        BearingMapping bearing = new BearingMapping(world, axes);
        return new PlaneResult(
                plane.id(),
                plane.name(),
                plane.building(),
                plane.storey(),
                Rounded.degrees(plane.pitch()),
                Rounded.bearing(plane.azimuth()),
                Rounded.bearing(plane.azimuthTrueNorth()),
                Rounded.of(plane.area()),
                Rounded.of(plane.grossArea()),
                Rounded.of(plane.planArea()),
                Rounded.of(plane.grossPlanArea()),
                Rounded.of(plane.eaveLevel()),
                Rounded.of(plane.ridgeLevel()),
                Rounded.of(layout.longestRun()),
                Rounded.of(plane.thickness()),
                gridPlace(plane),
                frame(frame),
                world.ring(plane, plane.outline().getExteriorRing(), true),
                plane.penetrations().stream().map(p -> penetration(plane, p)).toList(),
                plane.elements().stream()
                        .map(e -> element(e.element(), e.evidence()))
                        .toList(),
                sheets(layout),
                SetOutChoices.of(
                                plane.outline(),
                                roof.settings().coverWidth(),
                                roof.settings().setOut(),
                                system.otherCovers())
                        .stream()
                        .map(PlaneMapping::setOut)
                        .toList(),
                layout.supports().stream().map(s -> line(layout, s, bearing)).toList(),
                layout.spans().stream().map(PlaneMapping::span).toList(),
                bearing.map(layout),
                Stream.of(plane.remarks(), layout.remarks(), bearing.remarks(layout))
                        .flatMap(List::stream)
                        .distinct()
                        .toList(),
                plane.curve().map(this::curve));
    }

    private PlaneResult.Curve curve(Curve curve) {
        return new PlaneResult.Curve(
                Rounded.degrees(curve.leastPitch()),
                Rounded.degrees(curve.greatestPitch()),
                Rounded.of(curve.radius()),
                Rounded.of(curve.section().length()),
                curve.fallsBothWays(),
                curve.facets(),
                curve.section().stations().stream()
                        .map(v -> new PlaneResult.Station(Rounded.of(v), world.point(curve.at(0, v))))
                        .toList());
    }

    static ElementRef element(Element element, String evidence) {
        return new ElementRef(
                element.globalId(),
                element.name(),
                element.ifcClass(),
                element.file(),
                element.stepId(),
                element.storey(),
                evidence);
    }

    /** The centroid may lie in a hole or beside a bent plane; it still says best where the plane is. */
    private String gridPlace(RoofPlane plane) {
        Coordinate centre = plane.outline().getCentroid().getCoordinate();
        return centre == null
                ? ""
                : GridPlace.of(axes, plane.at(centre.x, centre.y).add(world.origin()));
    }

    private PlaneResult.Frame frame(PlaneFrame frame) {
        return new PlaneResult.Frame(
                world.point(frame.origin()),
                World.direction(frame.across()),
                World.direction(frame.up()),
                World.direction(frame.normal()));
    }

    private PlaneResult.Penetration penetration(RoofPlane plane, Penetration hole) {
        return new PlaneResult.Penetration(
                hole.id(),
                Rounded.of(hole.width()),
                Rounded.of(hole.length()),
                Rounded.of(hole.area()),
                world.ring(plane, hole.outline().getExteriorRing(), true));
    }

    private List<PlaneResult.Sheet> sheets(PlaneLayout layout) {
        OrderLengths lengths = new OrderLengths(layout, roof.edges(), system);
        return layout.sheets().stream().map(s -> sheet(s, lengths.of(s))).toList();
    }

    private static PlaneResult.SetOut setOut(SetOutChoice choice) {
        return new PlaneResult.SetOut(
                choice.setOut().name().toLowerCase(Locale.ROOT),
                Rounded.of(choice.coverWidth()),
                choice.strips(),
                Rounded.of(choice.firstStrip()),
                Rounded.of(choice.lastStrip()),
                choice.sheets(),
                Rounded.of(choice.length()),
                Rounded.of(choice.waste()),
                choice.chosen());
    }

    private static PlaneResult.Sheet sheet(Sheet sheet, double order) {
        return new PlaneResult.Sheet(
                sheet.number(),
                range(sheet.u()),
                range(sheet.v()),
                Rounded.of(sheet.length()),
                Rounded.of(order),
                Rounded.of(sheet.area()),
                sheet.trimmed(),
                sheet.tapered(),
                sheet.cut());
    }

    private PlaneResult.SupportLine line(PlaneLayout layout, SupportLine line, BearingMapping bearing) {
        return new PlaneResult.SupportLine(
                line.id(),
                line.number(),
                Rounded.of(line.v()),
                line.pieces().stream().map(p -> piece(layout, p, bearing)).toList(),
                line.extents().stream().map(PlaneMapping::range).toList());
    }

    private PlaneResult.Piece piece(PlaneLayout layout, SupportPiece piece, BearingMapping bearing) {
        RoofPlane plane = layout.plane();
        Optional<Deviation> deviation = layout.bearing()
                .truePlane()
                .flatMap(t -> t.deviations().stream()
                        .filter(d -> d.piece().equals(piece))
                        .findFirst());
        Vector3D from = plane.at(piece.uFrom(), piece.vFrom());
        Vector3D to = plane.at(piece.uTo(), piece.vTo());
        return new PlaneResult.Piece(
                element(piece.element(), evidence(piece.evidence())),
                world.point(from),
                world.point(to),
                Rounded.of(piece.contact()),
                deviation.isPresent()
                        ? OptionalDouble.of(Rounded.of(deviation.get().atFrom()))
                        : OptionalDouble.empty(),
                deviation.isPresent()
                        ? OptionalDouble.of(Rounded.of(deviation.get().atTo()))
                        : OptionalDouble.empty(),
                bearing.grid(from.add(to).multiply(0.5)),
                Rounded.of(piece.flange()),
                Rounded.of(piece.depth()),
                Rounded.of(piece.thickness()));
    }

    private static String evidence(SupportEvidence evidence) {
        return switch (evidence) {
            case TYPED -> "typed as a support in the model";
            case STATED -> "stated by a property or classification";
            case NAMED -> "recognised by its name";
            case POSITION -> "recognised by its position alone";
        };
    }

    private static PlaneResult.Span span(Span span) {
        return new PlaneResult.Span(
                span.kind().label(),
                Rounded.of(span.length()),
                Rounded.of(span.least()),
                range(span.u()),
                range(span.v()),
                span.lower(),
                span.upper());
    }

    private static Range range(Interval interval) {
        return new Range(Rounded.of(interval.from()), Rounded.of(interval.to()));
    }
}

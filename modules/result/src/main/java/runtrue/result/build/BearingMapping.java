package runtrue.result.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.GridAxis;
import runtrue.result.BearingResult;
import runtrue.result.PlaneResult.Range;
import runtrue.roof.GridPlace;
import runtrue.roof.Interval;
import runtrue.roof.PlaneFrame;
import runtrue.roof.PlaneLayout;
import runtrue.roof.bearing.Bearing;
import runtrue.roof.bearing.LineFault;
import runtrue.roof.bearing.NearThing;
import runtrue.roof.bearing.Standing;
import runtrue.roof.bearing.TruePlane;

/** What carries a plane, from its own frame to the world, and the sentences that people read of it. */
record BearingMapping(World world, List<GridAxis> axes) {
    BearingResult map(PlaneLayout layout) {
        Bearing bearing = layout.bearing();
        Optional<TruePlane> truth = bearing.truePlane();
        PlaneFrame frame = layout.plane().frame();
        return new BearingResult(
                bearing.kind().name().toLowerCase(Locale.ROOT),
                truth.isPresent() ? OptionalDouble.of(Rounded.of(-truth.get().level())) : OptionalDouble.empty(),
                Rounded.of(truth.map(TruePlane::gap).orElse(OptionalDouble.empty())),
                truth.isPresent() ? OptionalDouble.of(Rounded.of(truth.get().deviation())) : OptionalDouble.empty(),
                Rounded.of(truth.map(TruePlane::step).orElse(OptionalDouble.empty())),
                Rounded.of(truth.map(TruePlane::twist).orElse(OptionalDouble.empty())),
                Rounded.degrees(truth.map(TruePlane::tilt).orElse(OptionalDouble.empty())),
                bearing.near().stream().map(n -> near(frame, n)).toList(),
                bearing.faults().stream().map(f -> fault(frame, f)).toList());
    }

    private BearingResult.NearThing near(PlaneFrame frame, NearThing thing) {
        Vector3D at = frame.at(middle(thing.u()), middle(thing.v()));
        return new BearingResult.NearThing(
                PlaneMapping.element(thing.element(), ""),
                thing.standing().label(),
                Rounded.of(thing.above()),
                world.point(at),
                grid(at));
    }

    private BearingResult.LineFault fault(PlaneFrame frame, LineFault fault) {
        Vector3D at = frame.at(middle(fault.u()), fault.v());
        return new BearingResult.LineFault(
                fault.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                fault.line(),
                new Range(Rounded.of(fault.u().from()), Rounded.of(fault.u().to())),
                Rounded.degrees(fault.angle()),
                world.point(at),
                grid(at));
    }

    /** What carries the plane and what is odd about it, a sentence each. */
    List<String> remarks(PlaneLayout layout) {
        Bearing bearing = layout.bearing();
        List<String> remarks = new ArrayList<>(List.of(bearing.kind().sentence()));
        PlaneFrame frame = layout.plane().frame();
        bearing.faults().forEach(f -> remarks.add(remark(f, place(frame.at(middle(f.u()), f.v())))));
        for (NearThing n : bearing.near()) {
            if (n.standing() == Standing.OFF_LEVEL || n.standing() == Standing.THROUGH) {
                remarks.add(remark(n, place(frame.at(middle(n.u()), middle(n.v())))));
            }
        }
        return remarks;
    }

    private static String remark(LineFault f, String place) {
        double length = f.u().length();
        return switch (f.kind()) {
            case STOPS_SHORT ->
                String.format(
                        Locale.ROOT,
                        "support line %d leaves %.2f m at the plane's end bare%s",
                        f.line(),
                        length,
                        place);
            case MISSING ->
                String.format(Locale.ROOT, "support line %d has no member over %.2f m%s", f.line(), length, place);
            case ASKEW ->
                String.format(
                        Locale.ROOT,
                        "a member of support line %d runs %.1f degrees out of square to the fall%s",
                        f.line(),
                        Math.toDegrees(Math.abs(f.angle())),
                        place);
        };
    }

    private static String remark(NearThing n, String place) {
        String name = n.element().ifcClass() + " \"" + n.element().name() + "\"";
        return n.standing() == Standing.THROUGH
                ? name + " passes through the roof where it has no opening" + place
                : String.format(
                        Locale.ROOT,
                        "%s lies %.0f mm %s than the supports and is not taken as one%s",
                        name,
                        Math.abs(n.above()) * 1000,
                        n.above() < 0 ? "lower" : "higher",
                        place);
    }

    private String place(Vector3D at) {
        String grid = grid(at);
        return grid.isEmpty() ? "" : ", " + grid;
    }

    String grid(Vector3D at) {
        return GridPlace.of(axes, at.add(world.origin()));
    }

    private static double middle(Interval i) {
        return (i.from() + i.to()) / 2;
    }
}

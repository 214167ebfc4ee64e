package runtrue.shape.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.rotation.QuaternionRotation;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.Fineness;
import runtrue.shape.mesh.Mesh;
import runtrue.shape.profile.ProfileReader;

/** IfcRevolvedAreaSolid and its tapered kind: a profile turned about an axis in its plane. */
final class Revolution {
    private static final double TURN = 2 * Math.PI;

    private final Workshop workshop;
    private final ProfileReader profiles;
    private final Fineness fineness;

    Revolution(Workshop workshop, ProfileReader profiles, Fineness fineness) {
        this.workshop = workshop;
        this.profiles = profiles;
        this.fineness = fineness;
    }

    List<Swept> read(IfcEntity item, AffineTransformMatrix3D frame) {
        double angle = item.real("Angle") * item.model().units().planeAngle();
        if (angle == 0 || !(Math.abs(angle) <= TURN * (1 + 1e-4))) {
            throw new ShapeException("The angle of " + item.label()
                    + " is not above 0 and up to a whole turn; check the unit of angles.");
        }
        Axis axis = Axis.of(item.ref("Axis"));
        List<Swept> bodies = new ArrayList<>(1);
        for (List<Section> ends : Tapered.ends(item, profiles)) {
            bodies.add(new Swept(turned(ends, axis, angle, frame, item.label()), Optional.empty()));
        }
        return bodies;
    }

    private Mesh turned(List<Section> ends, Axis axis, double angle, AffineTransformMatrix3D frame, String label) {
        double radius = Math.max(axis.radius(ends.get(0), fineness, label), axis.radius(ends.get(1), fineness, label));
        boolean whole = Math.abs(angle) >= TURN * (1 - 1e-9);
        int n = whole ? 4 * fineness.chords(radius, TURN / 4) : fineness.chords(radius, angle);
        Loft loft = new Loft(workshop, ends.get(0).rings());
        for (int i = 0; i <= n; i++) {
            if (whole && i == n && ends.get(0).sameAs(ends.get(1))) {
                return loft.mesh(true);
            }
            double share = (double) i / n;
            QuaternionRotation rotation = QuaternionRotation.fromAxisAngle(axis.direction(), share * angle);
            Section section = ends.get(0).towards(ends.get(1), share);
            loft.add(section.placed((x, y) -> axis.turned(x, y, rotation)), frame);
        }
        return loft.mesh(false);
    }

    /** A line in the plane z = 0. */
    private record Axis(Vector3D location, Vector3D direction) {
        static Axis of(IfcEntity axis) {
            double[] p = axis.ref("Location").reals("Coordinates");
            double[] d = axis.has("Axis") ? axis.ref("Axis").reals("DirectionRatios") : new double[] {0, 0, 1};
            boolean given = p.length >= 2 && d.length >= 2;
            double off = given && d.length > 2 ? Math.abs(d[2]) : 0;
            Vector3D direction = given ? Vector3D.of(d[0], d[1], 0) : Vector3D.ZERO;
            boolean inPlane = off <= 1e-6 * direction.norm() && (p.length < 3 || Math.abs(p[2]) <= 1e-6);
            if (!(direction.norm() > 0 && inPlane)) {
                throw new ShapeException("The axis " + axis.label()
                        + " does not lie in the plane of the profile that is turned about it.");
            }
            return new Axis(Vector3D.of(p[0], p[1], 0), direction.normalize());
        }

        Vector3D turned(double x, double y, QuaternionRotation rotation) {
            Vector3D off = Vector3D.of(x, y, 0).subtract(location);
            return rotation.apply(off).add(location);
        }

        /** Greatest distance of a corner; throws when the profile lies on both sides. */
        double radius(Section section, Fineness fineness, String label) {
            double[] xy = section.xy();
            double left = 0;
            double right = 0;
            for (int i = 0; i < xy.length; i += 2) {
                double off =
                        direction.getX() * (xy[i + 1] - location.getY()) - direction.getY() * (xy[i] - location.getX());
                left = Math.max(left, off);
                right = Math.max(right, -off);
            }
            if (Math.min(left, right) > 100 * fineness.point()) {
                throw new ShapeException(
                        "The axis of " + label + " runs through its profile; check it, or export a faceted body.");
            }
            return Math.max(left, right);
        }
    }
}

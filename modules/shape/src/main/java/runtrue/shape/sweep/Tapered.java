package runtrue.shape.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.profile.Profile;
import runtrue.shape.profile.ProfileReader;

/** IfcExtrudedAreaSolidTapered: straight lines from each corner of the profile to that of the end profile. */
final class Tapered {
    private final Workshop workshop;
    private final ProfileReader profiles;

    Tapered(Workshop workshop, ProfileReader profiles) {
        this.workshop = workshop;
        this.profiles = profiles;
    }

    List<Swept> read(IfcEntity item, AffineTransformMatrix3D frame) {
        double[] r = item.ref("ExtrudedDirection").reals("DirectionRatios");
        Vector3D direction = r.length == 3 ? Vector3D.of(r[0], r[1], r[2]) : Vector3D.ZERO;
        double depth = item.real("Depth");
        if (!(depth > 0) || !(Math.abs(direction.getZ()) > 1e-6 * direction.norm())) {
            throw new ShapeException(
                    "The extrusion " + item.label() + " runs within the plane of its profile, or has no depth.");
        }
        Vector3D path = direction.normalize().multiply(depth);
        List<Swept> bodies = new ArrayList<>(1);
        for (List<Section> ends : ends(item, profiles)) {
            Loft loft = new Loft(workshop, ends.get(0).rings());
            loft.add(ends.get(0).placed((x, y) -> Vector3D.of(x, y, 0)), frame);
            loft.add(ends.get(1).placed((x, y) -> Vector3D.of(x, y, 0).add(path)), frame);
            bodies.add(new Swept(loft.mesh(false), Optional.empty()));
        }
        return bodies;
    }

    /** First and last section of each part of a tapered sweep, with like corners. */
    static List<List<Section>> ends(IfcEntity item, ProfileReader profiles) {
        List<Profile> first = profiles.read(item.ref("SweptArea"));
        List<Profile> last = item.has("EndSweptArea") ? profiles.read(item.ref("EndSweptArea")) : first;
        return ends(first, last, item);
    }

    static List<List<Section>> ends(List<Profile> first, List<Profile> last, IfcEntity item) {
        if (first.size() != last.size()) {
            throw new ShapeException("The two profiles of " + item.label()
                    + " have different numbers of parts; export it as a faceted body.");
        }
        List<List<Section>> ends = new ArrayList<>(first.size());
        for (int i = 0; i < first.size(); i++) {
            List<Section> both = List.of(Section.of(first.get(i)), Section.of(last.get(i)));
            ends.add(Section.matched(both, item.label()));
        }
        return ends;
    }
}

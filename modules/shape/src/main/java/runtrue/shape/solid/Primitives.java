package runtrue.shape.solid;

import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.curve.Fineness;
import runtrue.shape.profile.Profile;

/** Solids of constructive geometry that are extrusions in disguise. */
final class Primitives {
    private Primitives() {}

    /** A block from its corner, or an upright cylinder about its axis; both carry a sweep. */
    static Solid read(IfcEntity item, AffineTransformMatrix3D frame, Fineness fineness) {
        AffineTransformMatrix3D placement = ItemReader.placed(item, frame);
        if (item.type().equals("IfcBlock")) {
            Profile base = Profile.rectangle(item.type(), item.real("XLength"), item.real("YLength"));
            return Extrusion.of(base, placement, Vector3D.of(0, 0, item.real("ZLength")));
        }
        Profile base = Profile.circle(item.type(), item.real("Radius"), fineness);
        return Extrusion.of(base, placement, Vector3D.of(0, 0, item.real("Height")));
    }
}

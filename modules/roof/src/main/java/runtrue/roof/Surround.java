package runtrue.roof;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.Element;

/** What stands around a roof and is neither roof nor possible support: asked for by place, so that little must be read. */
public interface Surround {
    /** Nothing else is known. */
    Surround NONE = new Surround() {
        @Override
        public List<ReadElement> within(Role role, Vector3D low, Vector3D high) {
            return List.of();
        }

        @Override
        public List<Element> unread(Role role, Vector3D low, Vector3D high) {
            return List.of();
        }
    };

    /** As what a thing may matter. */
    enum Role {
        /** Walls and parapets: roofs end against them. */
        WALL,
        /** Slabs: sheets may lie on them. */
        LAYER,
        /** Plates, fasteners, columns, braces and so on: what may stand above the supports. */
        THING
    }

    /** Things whose extent may reach into a box, metres, moved by the drop origin; in the same order every time. */
    List<ReadElement> within(Role role, Vector3D low, Vector3D high);

    /** Things that may reach into a box, but have a body that could not be read. */
    List<Element> unread(Role role, Vector3D low, Vector3D high);
}

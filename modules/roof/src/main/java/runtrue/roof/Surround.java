package runtrue.roof;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.Element;

/** What stands around a roof and is neither roof nor possible support: asked for by place, so that little must be read. */
public interface Surround {
    /** Nothing else is known. */
    Surround NONE = new Surround() {
        @Override
        public List<ReadElement> within(Role role, Where where) {
            return List.of();
        }

        @Override
        public List<Element> unread(Role role, Where where) {
            return List.of();
        }

        @Override
        public List<Element> unlocated(Role role) {
            return List.of();
        }
    };

    /** As what a thing may matter. */
    enum Role {
        /** Walls and parapets: roofs end against them. */
        WALL,
        /** Slabs: sheets may lie on them. */
        LAYER,
        /** Whatever has a body, from bolts to ducts, walls and slabs included: it may stand above the supports. */
        THING,
        /** Devices, equipment and proxies: they may be fixed on sheets. */
        FIXTURE,
        /** Possible supports that could not be read. */
        SUPPORT
    }

    /** A box along the world's axes, metres, moved by the drop origin. */
    record Box(Vector3D low, Vector3D high) {
        public boolean overlaps(Box other) {
            return low.getX() <= other.high.getX()
                    && high.getX() >= other.low.getX()
                    && low.getY() <= other.high.getY()
                    && high.getY() >= other.low.getY()
                    && low.getZ() <= other.high.getZ()
                    && high.getZ() >= other.low.getZ();
        }

        /** From its least to its greatest corner along a direction of unit length, seen from a point. */
        public Interval along(Vector3D direction, Vector3D from) {
            Vector3D half = high.subtract(low).multiply(0.5);
            double reach = half.getX() * Math.abs(direction.getX())
                    + half.getY() * Math.abs(direction.getY())
                    + half.getZ() * Math.abs(direction.getZ());
            double middle = low.add(half).subtract(from).dot(direction);
            return new Interval(middle - reach, middle + reach);
        }
    }

    /** A part of the world. */
    @FunctionalInterface
    interface Where {
        /** Whether a body that lies within the box may lie there too; in doubt it may. */
        boolean mayMeet(Box box);
    }

    /** Things that may reach into a part of the world; in the same order every time. */
    List<ReadElement> within(Role role, Where where);

    /** The same by a box, metres, moved by the drop origin. */
    default List<ReadElement> within(Role role, Vector3D low, Vector3D high) {
        return within(role, new Box(low, high)::overlaps);
    }

    /** Things that may reach there, but have a body that could not be read. */
    List<Element> unread(Role role, Where where);

    /** Things whose body could not be read, and of which nothing tells how far they extend: they may be anywhere. */
    List<Element> unlocated(Role role);
}

package runtrue.shape;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;

/** Reads the shape of elements: start with {@link #of}. Safe for use by many threads. */
public interface ShapeReader {
    /**
     * A reader for models in world axes.
     *
     * @param origin in metres, world axes; subtracted from every point before any arithmetic that could lose digits
     */
    static ShapeReader of(Tolerances tolerances, Vector3D origin) {
        return new ProductReader(tolerances, origin);
    }

    /** The body of a product with its openings subtracted. Never throws for bad model data: that is {@link Shape.Unread}. */
    Shape read(IfcEntity product);
}

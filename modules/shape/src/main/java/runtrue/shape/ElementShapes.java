package runtrue.shape;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;

/**
 * Gives the shapes of all chosen elements of a drop at once, so that an engine which is slow to start does so once. Who
 * reads for a check is the caller's choice; {@link #builtIn} is the reader of this module.
 */
@FunctionalInterface
public interface ElementShapes {
    /**
     * Reads elements of any number of models.
     *
     * @param origin in metres, world axes; subtracted from every point
     */
    Reading read(List<IfcEntity> elements, Tolerances tolerances, Vector3D origin);

    /** {@link ShapeReader}, on all processors of the pool that calls. */
    static ElementShapes builtIn() {
        return (elements, tolerances, origin) -> {
            ShapeReader reader = ShapeReader.of(tolerances, origin);
            return new Reading(elements.parallelStream().map(reader::read).toList(), List.of());
        };
    }

    /**
     * What reading gave.
     *
     * @param shapes one for each element, in their order
     * @param notes what a person should know of the reading itself: name of the file, colon, blank, one sentence
     */
    record Reading(List<Shape> shapes, List<String> notes) {
        public Reading {
            shapes = List.copyOf(shapes);
            notes = List.copyOf(notes);
        }
    }
}

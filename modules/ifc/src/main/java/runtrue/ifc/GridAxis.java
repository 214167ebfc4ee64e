package runtrue.ifc;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** A grid axis as a polyline in metres, world axes (no origin shift). */
public record GridAxis(String grid, String name, List<Vector3D> points) {
    public GridAxis {
        points = List.copyOf(points);
    }
}

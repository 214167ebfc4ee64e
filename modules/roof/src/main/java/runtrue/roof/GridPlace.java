package runtrue.roof;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.GridAxis;

/** Says where a point is by the nearest grid lines. */
public final class GridPlace {
    private GridPlace() {}

    /**
     * For example {@code between B and C, 3 and 4}; empty when there is no grid.
     *
     * @param axes in world metres
     * @param point in world metres
     */
    public static String of(List<GridAxis> axes, Vector3D point) {
        return "";
    }
}

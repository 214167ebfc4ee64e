package runtrue.shape;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A straight extrusion that a body was made by: the surest axis of a member or direction of a sheet. Metres, same axes
 * as the faces.
 *
 * @param profileName the profile's name or class, empty when none
 * @param section corners of the profile at the start of the sweep, in space, not closed
 * @param path from the start of the sweep to its end (direction times depth)
 */
public record Sweep(String profileName, List<Vector3D> section, Vector3D path) {
    public Sweep {
        section = List.copyOf(section);
    }
}

package runtrue.roof;

import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.shape.Tolerances;

/**
 * What the layout needs to know besides the model.
 *
 * @param coverWidth of one sheet, metres
 * @param buildUpDepth from the sheet's skin down to the supports' contact face, square to the plane, metres; empty when
 *     unknown. It does not steer the search: sheets rest on whatever lies uppermost, and where that is not at this depth
 *     there is a gap or a clash to report
 * @param reach greatest distance below the skin at which a member can still be a support, metres
 * @param origin drop origin in world metres that all shapes were moved by
 * @param trueNorth radians clockwise from the model's +Y; empty when not stated
 */
public record RoofSettings(
        double coverWidth,
        SetOut setOut,
        OptionalDouble buildUpDepth,
        double reach,
        Vector3D origin,
        OptionalDouble trueNorth,
        Tolerances tolerances) {}

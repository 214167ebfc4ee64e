package runtrue.cli;

import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.roof.RoofSettings;
import runtrue.roof.RoofTolerance;
import runtrue.rules.DropSettings;
import runtrue.rules.RoofSystem;
import runtrue.shape.Tolerances;

/** What the layout takes from settings and roof system. */
public final class RoofChoices {
    private RoofChoices() {}

    /**
     * Choices for one drop.
     *
     * @param origin in world metres, of the axes that shapes are in
     * @param trueNorth radians clockwise from the model's +Y; empty when not stated
     * @throws CheckException when the roof system states no cover width
     */
    public static RoofSettings of(
            DropSettings settings,
            RoofSystem system,
            Vector3D origin,
            OptionalDouble trueNorth,
            Tolerances tolerances) {
        double coverWidth = system.si("cover_width")
                .orElseThrow(() -> CheckException.ofDrop(
                        system.file() + ": states no cover_width; sheets cannot be laid out without it.",
                        new IllegalStateException()));
        // The drop's own only: how thick the insulation is differs from roof to roof of one system, and to hold a model
        // against the system's usual depth would find fault with nearly every one.
        OptionalDouble depth =
                settings.si("build_up_depth").map(OptionalDouble::of).orElse(OptionalDouble.empty());
        return new RoofSettings(
                coverWidth, settings.setOut(), depth, RoofTolerance.SUPPORT_REACH.si(), origin, trueNorth, tolerances);
    }
}

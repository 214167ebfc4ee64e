package runtrue.cli;

import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.roof.RoofSettings;
import runtrue.rules.DropSettings;
import runtrue.rules.RoofSystem;
import runtrue.shape.Tolerances;

/** What the layout takes from settings and roof system. */
final class RoofChoices {
    /** Supports are sought this far below the skin, metres: deeper than any build-up of this trade. */
    private static final double REACH = 0.6;

    private RoofChoices() {}

    static RoofSettings of(
            DropSettings settings,
            RoofSystem system,
            Vector3D origin,
            OptionalDouble trueNorth,
            Tolerances tolerances) {
        double coverWidth = system.si("cover_width")
                .orElseThrow(() -> CheckException.ofOptions(
                        system.file() + ": states no cover_width; sheets cannot be laid out without it.",
                        new IllegalStateException()));
        OptionalDouble depth =
                settings.buildUpDepth(system).map(OptionalDouble::of).orElse(OptionalDouble.empty());
        return new RoofSettings(coverWidth, settings.setOut(), depth, REACH, origin, trueNorth, tolerances);
    }
}

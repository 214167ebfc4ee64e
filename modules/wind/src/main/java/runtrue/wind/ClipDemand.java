package runtrue.wind;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * What the suction at a place asks of one clip, by its tributary area. Research on standing seam roofs finds that plain
 * tributary areas overestimate clips at ridge and eaves, so this is on the safe side there.
 *
 * @param force on the clip, newtons
 * @param utilisation force over resistance
 * @param tributary greatest length of sheet a support may carry so that no clip is overloaded, metres, no more than 20
 * @param density least number of clips on a square metre of slope that goes with it
 */
public record ClipDemand(double force, double utilisation, double tributary, double density) {
    /** No sheet spans further, metres. */
    private static final double GREATEST = 20;

    /** How closely lengths are looked at before one is halved in upon, metres. */
    private static final double STEP = 0.05;

    /**
     * Of clips at a place.
     *
     * @return nothing when the suction there is not available
     */
    public static Optional<ClipDemand> at(WindPlace place, ClipLayout clips) {
        OptionalDouble suction = place.suction(clips.area());
        if (suction.isEmpty()) {
            return Optional.empty();
        }
        double force = suction.getAsDouble() * clips.area();
        double longest = longest(
                length ->
                        place.suction(length * clips.width()).orElse(Double.POSITIVE_INFINITY) * length * clips.width(),
                clips.resistance());
        return Optional.of(new ClipDemand(force, force / clips.resistance(), longest, 1 / (longest * clips.width())));
    }

    /**
     * Longest length that is carried and all shorter ones too: a local factor that holds for small areas only lets the
     * force fall again.
     */
    private static double longest(DoubleUnaryOperator force, double resistance) {
        double good = 0;
        while (good < GREATEST && force.applyAsDouble(good + STEP) <= resistance) {
            good += STEP;
        }
        if (good >= GREATEST) {
            return GREATEST;
        }
        double bad = good + STEP;
        for (int i = 0; i < 30; i++) {
            double middle = (good + bad) / 2;
            if (force.applyAsDouble(middle) <= resistance) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return good;
    }
}

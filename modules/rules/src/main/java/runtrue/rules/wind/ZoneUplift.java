package runtrue.rules.wind;

import java.util.Optional;
import java.util.OptionalDouble;
import runtrue.wind.ClipDemand;

/**
 * What lifts on a zone, on the area that the clip with the longest tributary length holds down (1 square metre where no
 * clip area is known).
 *
 * @param suction pascals, without the load factor; absent when not available
 * @param pressing pascals, without the load factor; absent when not available
 * @param loadFactor what the suction is multiplied by; absent when the settings have to state it and do not
 * @param clip what that asks of one clip, load factor included; absent when any part of it is not known
 * @param given whether the project's engineer gives it
 * @param standard with its edition, or who gives the pressures; empty when nobody does
 * @param source where the value stands, and how it is known; empty when nobody gives it
 * @param how the figures the suction came from, or why it is not known: one or more sentences
 */
public record ZoneUplift(
        OptionalDouble suction,
        OptionalDouble pressing,
        OptionalDouble loadFactor,
        Optional<ClipDemand> clip,
        boolean given,
        String standard,
        String source,
        String how) {
    /** Of a zone that nobody states pressures for. */
    static ZoneUplift unknown(String why) {
        return new ZoneUplift(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(1),
                Optional.empty(),
                false,
                "",
                "",
                why);
    }
}

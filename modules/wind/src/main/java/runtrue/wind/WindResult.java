package runtrue.wind;

import java.util.List;

/**
 * What is known of the wind on one roof.
 *
 * @param standard with its edition, or whose pressures they are
 * @param zones of every plane and every wind; for one plane and one wind they cover it without overlap
 * @param places where the zones of all winds are laid over each other; they cover each plane without overlap
 * @param steps the figures that hold for the whole roof, a sentence each
 * @param assumptions what was taken for granted, a sentence each
 * @param notAvailable what could not be worked out and why, a sentence each
 * @param sources of the values used, a sentence each
 * @param caution what the figures do not replace
 */
public record WindResult(
        String standard,
        List<ZonePressure> zones,
        List<WindPlace> places,
        List<String> steps,
        List<String> assumptions,
        List<String> notAvailable,
        List<String> sources,
        String caution) {
    public WindResult {
        zones = List.copyOf(zones);
        places = List.copyOf(places);
        steps = List.copyOf(steps);
        assumptions = List.copyOf(assumptions);
        notAvailable = List.copyOf(notAvailable);
        sources = List.copyOf(sources);
    }

    /** The sentence that goes with every figure from {@code standard}. */
    public static String cautionFor(String standard) {
        return "Wind by " + standard
                + ", for checking only: it does not replace the engineer's design; local codes, national"
                + " annexes and licensed practice come first.";
    }
}

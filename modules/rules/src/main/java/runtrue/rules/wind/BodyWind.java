package runtrue.rules.wind;

import java.util.List;

/**
 * What holds for a whole roof whose wind is worked out by a standard; sentences.
 *
 * @param standard with its edition, or whose pressures they are
 * @param form of the roof, in words
 * @param steps the figures that hold for all of it
 * @param assumptions what was taken for granted
 * @param notAvailable what could not be worked out and why
 * @param sources of the values used
 * @param caution what the figures do not replace
 */
public record BodyWind(
        String standard,
        String form,
        List<String> steps,
        List<String> assumptions,
        List<String> notAvailable,
        List<String> sources,
        String caution) {
    public BodyWind {
        steps = List.copyOf(steps);
        assumptions = List.copyOf(assumptions);
        notAvailable = List.copyOf(notAvailable);
        sources = List.copyOf(sources);
    }
}

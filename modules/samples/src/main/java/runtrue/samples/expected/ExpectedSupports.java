package runtrue.samples.expected;

import java.util.List;

/**
 * Support lines of a plane and the spans between them. Metres along the fall, to the centre of the section.
 *
 * @param lines positions from the low edge of the plane
 * @param firstEndSpan where a strip reaches from eave to ridge
 * @param lastEndSpan the same at the upper end
 * @param longestEndSpan anywhere in the plane, also where a strip ends at a hip or valley
 * @param usualInternalSpan the widest where no purlin is missing
 * @param longestInternalSpan anywhere in the plane
 * @param eaveOverhang where a strip starts at the eave
 * @param ridgeOverhang where a strip ends at the ridge, head or abutment
 */
public record ExpectedSupports(
        List<Double> lines,
        double firstEndSpan,
        double lastEndSpan,
        double longestEndSpan,
        double usualInternalSpan,
        double longestInternalSpan,
        double eaveOverhang,
        double ridgeOverhang) {
    public ExpectedSupports {
        lines = List.copyOf(lines);
    }
}

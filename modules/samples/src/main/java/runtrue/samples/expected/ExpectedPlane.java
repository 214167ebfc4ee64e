package runtrue.samples.expected;

import java.util.List;

/**
 * What a roof plane should give. Lengths in metres and areas in square metres, rounded to four decimals.
 *
 * @param elements names of the roof elements it is made of
 * @param azimuthDegrees downslope direction, clockwise from the model's +Y
 * @param runMetres eave to ridge along the fall of the upper skin, the longest
 * @param areaTrueSquareMetres penetrations off
 * @param areaPlanSquareMetres penetrations off
 * @param strips sheets side by side at a cover width of 0.5 m, set out from the left looking up the fall
 * @param lastStripMetres width of the last of them
 * @param supports empty where there are none
 */
public record ExpectedPlane(
        List<String> elements,
        double pitchDegrees,
        double azimuthDegrees,
        double runMetres,
        double areaTrueSquareMetres,
        double areaPlanSquareMetres,
        int strips,
        double lastStripMetres,
        List<ExpectedSupports> supports) {
    public ExpectedPlane {
        elements = List.copyOf(elements);
        supports = List.copyOf(supports);
    }
}

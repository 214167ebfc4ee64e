package runtrue.roof.stated;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.ifc.stated.AreaMeaning;
import runtrue.ifc.stated.StatedKind;
import runtrue.ifc.stated.StatedQuantity;
import runtrue.roof.stated.ElementMeasures.Slope;

/** Figures by hand: a square foot is 0.09290304 m2 exactly; 100 m2 at 30 degrees are 86.60 m2 in plan. */
class MistakesTest {
    private static final StatedTolerances TOLERANCES = StatedTolerances.standard();

    /** Of a slab of 100 m2 at 30 degrees with openings of 4 m2, 0.2 m thick, one of four in a roof of 400 m2. */
    private static final RoofAreas SLAB = new RoofAreas(96, 100, 83.138, 86.603, 93, 198, 90);

    private static final RoofAreas ROOF = RoofAreas.ofSurface(384, 400, 332.55, 346.41);

    @ParameterizedTest
    @CsvSource({
        "GROSS, 100, NONE",
        "GROSS, 100.9, NONE",
        "GROSS, 104, NONE",
        "NET, 96, NONE",
        "TOTAL, 96, NONE",
        "TOTAL, 100, NONE",
        "PLAN, 83.2, NONE",
        "UNSAID, 86.6, NONE",
        "GROSS, 0, ZERO",
        "GROSS, 86.6, PLAN_FOR_TRUE",
        "PLAN, 100, TRUE_FOR_PLAN",
        "GROSS, 96, OPENINGS_OFF",
        "NET, 100, OPENINGS_KEPT",
        "NET, 384, WHOLE_ROOF",
        "NET, 8.918692, TWICE_TO_SQUARE_METRES",
        "GROSS, 1076.391, SQUARE_FEET",
        "GROSS, 1.0E8, AREA_PREFIX",
        "GROSS, 198, ALL_FACES",
        "NET, 189, BOTH_SIDES",
        "GROSS, 93, UNDERSIDE",
        "GROSS, 90, SHADOW",
        "GROSS, 140, NONE",
    })
    void an_area_is_told_by_its_ratio(AreaMeaning meaning, double stated, Mistake mistake) {
        Comparison made = new AreaCheck(TOLERANCES, SLAB, Optional.of(ROOF)).compare(area(meaning, stated));

        assertThat(made.mistake()).isEqualTo(mistake);
    }

    @Test
    void an_area_off_by_an_unknown_kind_still_contradicts() {
        Comparison made = new AreaCheck(TOLERANCES, SLAB, Optional.empty()).compare(area(AreaMeaning.GROSS, 140));

        assertThat(made.mistake()).isEqualTo(Mistake.NONE);
        assertThat(made.derived().orElseThrow()).isEqualTo(100);
        assertThat(made.tolerance()).isEqualTo(1);
    }

    @Test
    void an_area_of_what_has_no_upper_side_is_not_compared() {
        Comparison made = new AreaCheck(TOLERANCES, RoofAreas.NONE, Optional.empty()).compare(area(AreaMeaning.NET, 1));

        assertThat(made.derived()).isEmpty();
        assertThat(made.reason()).contains("no upward face");
    }

    @ParameterizedTest
    @CsvSource({
        // value in SI, raw, pitch in degrees
        "0.5235988, 30, 30, NONE",
        "0.5323254, 30.5, 30, NONE",
        "0, 0, 50, ZERO",
        "30, 30, 30, DEGREES_AS_RADIANS",
        "0.0091385, 0.5235988, 30, RADIANS_AS_DEGREES",
        "-0.5235988, -30, 30, SIGN",
        "1.0471976, 60, 30, FROM_THE_VERTICAL",
        "0.0872, 0.0875, 20, NONE",
        "0.0063, 0.363970, 20, SLOPE",
        "0.635247, 36.3970, 20, SLOPE",
    })
    void a_pitch_is_told_by_what_it_would_be_read_otherwise(double si, double raw, double degrees, Mistake mistake) {
        StatedQuantity stated = new StatedQuantity(
                StatedKind.PITCH, AreaMeaning.NONE, "Pset_SlabCommon.PitchAngle", si, raw, true, false);

        Comparison made = new PitchCheck(TOLERANCES).compare(stated, List.of(new Slope(Math.toRadians(degrees), 10)));

        assertThat(made.mistake()).isEqualTo(mistake);
    }

    @Test
    void a_roof_of_two_pitches_may_state_either() {
        StatedQuantity stated =
                new StatedQuantity(StatedKind.PITCH, AreaMeaning.NONE, "P", Math.toRadians(20), 20, true, false);
        List<Slope> slopes = List.of(new Slope(Math.toRadians(45), 60), new Slope(Math.toRadians(20), 40));

        assertThat(new PitchCheck(TOLERANCES).compare(stated, slopes).mistake()).isEqualTo(Mistake.NONE);
    }

    @Test
    void a_curved_roof_has_no_pitch_to_compare_with() {
        StatedQuantity stated =
                new StatedQuantity(StatedKind.PITCH, AreaMeaning.NONE, "P", Math.toRadians(20), 20, true, false);
        List<Slope> slopes = List.of(
                new Slope(0.1, 10), new Slope(0.2, 10), new Slope(0.3, 10), new Slope(0.4, 10), new Slope(0.5, 10));

        assertThat(new PitchCheck(TOLERANCES).compare(stated, slopes).reason()).contains("curved");
    }

    @ParameterizedTest
    @CsvSource({
        "0.2, NONE",
        "0.202, NONE",
        "0.230940, PLUMB",
        "200, LENGTH_PREFIX",
        "0.0002, LENGTH_PREFIX",
        "0.656168, FEET",
        "7.874016, INCHES",
        "0, ZERO",
        "0.3, NONE",
    })
    void a_thickness_is_told_by_its_ratio(double stated, Mistake mistake) {
        StatedQuantity quantity =
                new StatedQuantity(StatedKind.THICKNESS, AreaMeaning.NONE, "Width", stated, stated, true, false);

        Comparison made = new LengthCheck(TOLERANCES).thickness(quantity, List.of(0.2), Math.toRadians(30));

        assertThat(made.mistake()).isEqualTo(mistake);
    }

    @ParameterizedTest
    @CsvSource({"6, NONE", "6.2, NONE", "5.196, IN_PLAN", "6000, LENGTH_PREFIX", "9, NONE"})
    void a_members_length_is_told_by_its_ratio(double stated, Mistake mistake) {
        StatedQuantity quantity =
                new StatedQuantity(StatedKind.LENGTH, AreaMeaning.NONE, "Length", stated, stated, true, false);

        Comparison made = new LengthCheck(TOLERANCES).length(quantity, 6, 0.2, Math.toRadians(30));

        assertThat(made.mistake()).isEqualTo(mistake);
    }

    private static StatedQuantity area(AreaMeaning meaning, double value) {
        return new StatedQuantity(StatedKind.AREA, meaning, "BaseQuantities.Area", value, value, true, false);
    }
}

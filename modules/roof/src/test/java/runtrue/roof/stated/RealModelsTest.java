package runtrue.roof.stated;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import runtrue.roof.halls.SharedFiles;

/**
 * What real models state beside what their bodies give. Derived figures here are those that an independent library
 * measured (reference.json of the shared models); stated ones are as the files write them, in SI.
 */
class RealModelsTest {
    @ParameterizedTest(name = "{0} {1} {2} is {5}")
    @CsvSource({
        "eleven-slab-roof-ifc2x3.ifc, 2S8PiWcbHBVvIkcpdDcBw3, BaseQuantities.NetArea, 530.9935, 92.956, WHOLE_ROOF",
        "eleven-slab-roof-ifc2x3.ifc, 2S8PiWcbHBVvIkcpdDcBw3, BaseQuantities.GrossArea, 8.6359, 92.956, TWICE_TO_SQUARE_METRES",
        "eleven-slab-roof-ifc2x3.ifc, 2S8PiWcbHBVvIkcpdDcBw3, material layers, 0.27, 0.25856, PLUMB",
        "flat-roof-container.ifc, 2cXV28XOjE6f6irga0COSw, BaseQuantities.GrossArea, 14.3479, 154.44, TWICE_TO_SQUARE_METRES",
        "flat-roof-container.ifc, 2cXV28XOjE6f6irga0COSw, BaseQuantities.NetArea, 330.96, 154.44, ALL_FACES",
        "roof-as-floor-slab-ifc4.ifc, 2g9i$BY31BP9nNu16mFySP, Qto_SlabBaseQuantities.NetArea, 173.5247, 80.471, ALL_FACES",
        "gable-rafters-ifc2x3.ifc, 07Enbsqm9C7AQC9iyBwfSD, BaseQuantities.GrossArea, 71.5, 82.561, PLAN_FOR_TRUE",
        "gable-rafters-ifc2x3.ifc, 07Enbsqm9C7AQC9iyBwfSD, BaseQuantities.Width, 0.23094, 0.2, PLUMB",
        "barrel-strips-breps.ifc, 0hEXM06OrA5gv_ZOu0dPhm, BaseQuantities.GrossArea, 37.9905, 39.726, PLAN_FOR_TRUE",
        "barrel-strips-breps.ifc, 3x663a8XD65viEHNLVdTxd, BaseQuantities.GrossArea, 38.4807, 39.726, SHADOW",
        "roof-shapes-brep-and-clipped.ifc, 2GhkJAOcb34ObYmvDyUxT7, Pset_SlabCommon.PitchAngle, 0, 0.87266, ZERO",
        "roof-shapes-brep-and-clipped.ifc, 2GhkJAOcb34ObYmvDyUxT7, material layers, 0.0004, 0.4, LENGTH_PREFIX",
        "roof-shapes-brep-and-clipped.ifc, 3ZxH8Q4WD4vvKIC462LndM, Pset_RoofCommon.TotalArea, 0, 15.84, ZERO",
    })
    void a_wrong_statement_is_told_with_its_kind(
            String file, String globalId, String source, double stated, double derived, Mistake mistake) {
        StatedValue value = value(file, globalId, source);

        assertThat(value.value()).isCloseTo(stated, within(1e-4));
        assertThat(value.derived().orElseThrow()).isCloseTo(derived, within(1e-3 * Math.max(derived, 0.3)));
        assertThat(value.contradicts()).isTrue();
        assertThat(value.mistake()).isEqualTo(mistake);
    }

    @ParameterizedTest(name = "{0} {1} {2} agrees")
    @CsvSource({
        "eleven-slab-roof-ifc2x3.ifc, 2S8PiWcbHBVvIkcpdDcBw3, Pset_SlabCommon.PitchAngle",
        "eleven-slab-roof-ifc2x3.ifc, 2S8PiWcbHBVvIkcplDcBw3, Pset_RoofCommon.TotalArea",
        "eleven-slab-roof-ifc2x3.ifc, 2S8PiWcbHBVvIkcplDcBw3, Pset_RoofCommon.ProjectedArea",
        "shed-in-feet.ifc, 25nvj2qFP2XOG8W_73TjD$, Pset_SlabCommon.PitchAngle",
        "shed-in-feet.ifc, 25nvj2qFP2XOG8W_F3TjD$, Pset_RoofCommon.TotalArea",
        "shed-in-feet.ifc, 25nvj2qFP2XOG8W_F3TjD$, Pset_RoofCommon.ProjectedArea",
        "gable-rafters-purlins-ifc4.ifc, 07Enbsqm9C7AQC9iyBwfSD, BaseQuantities.GrossArea",
        "gable-rafters-purlins-ifc4.ifc, 07Enbsqm9C7AQC9iyBwfSD, BaseQuantities.Width",
        "metal-roof-advanced-brep-ifc4.ifc, 2cgXCjpDT0ZxBvxMSr3pfm, Qto_RoofBaseQuantities.ProjectedArea",
        "vault-roof-ifc4.ifc, 3cUkl32yn9qRSPvBJVyWh4, Pset_RoofCommon.TotalArea",
        "mansard-terrace-breps.ifc, 0bxMIwnGLCbgjsQk43tTK$, BaseQuantities.GrossArea",
        "mansard-terrace-breps.ifc, 0bxMIwnGLCbgjsQk43tTK$, BaseQuantities.Width",
    })
    void a_right_statement_agrees(String file, String globalId, String source) {
        StatedValue value = value(file, globalId, source);

        assertThat(value.derived()).isPresent();
        assertThat(value.contradicts()).isFalse();
        assertThat(value.mistake()).isEqualTo(Mistake.NONE);
    }

    @Test
    void an_angle_without_any_unit_agrees_when_read_as_degrees_and_says_so() {
        StatedValue value = value("gable-tessellated-ifc4.ifc", "0ZTBBPo6f6bxqV2K7Oelrq", "Pset_SlabCommon.PitchAngle");

        assertThat(value.stated().raw()).isEqualTo(45);
        assertThat(value.contradicts()).isFalse();
        assertThat(value.mistake()).isEqualTo(Mistake.READ_AS_DEGREES);
    }

    @Test
    void every_slab_of_a_roof_is_judged_by_itself() {
        assertThat(values("eleven-slab-roof-ifc2x3.ifc"))
                .filteredOn(v -> v.stated().source().equals("BaseQuantities.NetArea"))
                .hasSize(11)
                .allMatch(v -> v.mistake() == Mistake.WHOLE_ROOF && v.contradicts());
    }

    @ParameterizedTest
    @ValueSource(strings = {"hip-roof-brep-mm.ifc", "gable-early-schema.ifc", "flat-roof-surface-model.ifc"})
    void a_model_that_states_nothing_is_not_taken_to_task(String file) {
        assertThat(values(file)).isEmpty();
    }

    private static List<StatedValue> values(String file) {
        try (OpenModel model = OpenModel.read(SharedFiles.folder("models").resolve(file))) {
            return model.stated();
        }
    }

    private static StatedValue value(String file, String globalId, String source) {
        return values(file).stream()
                .filter(v -> v.element().globalId().equals(globalId))
                .filter(v -> v.stated().source().equals(source))
                .findFirst()
                .orElseThrow();
    }
}

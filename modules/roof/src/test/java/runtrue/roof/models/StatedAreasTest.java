package runtrue.roof.models;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.roof.RoofPlane;
import runtrue.roof.halls.SharedFiles;

/**
 * Roof areas of real models against the areas that their authoring programs state in the files: Pset_RoofCommon TotalArea
 * and ProjectedArea, Qto_RoofBaseQuantities, or the sum of the slabs' base quantities. Only files whose stated areas mean
 * the upper side of the roof (the models' README says where they do not).
 */
class StatedAreasTest {
    private static final double SQUARE_FOOT = 0.3048 * 0.3048;

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "eleven-slab-roof-ifc2x3.ifc, false, 530.99347, 510.44",
        "flat-roof-container.ifc, false, 154.44, 154.44",
        "metal-roof-advanced-brep-ifc4.ifc, false, 175.36709, 124.02",
        "gable-rafters-purlins-ifc4.ifc, false, 165.12218, 143.0",
        "shed-in-feet.ifc, true, 53.886025, 46.666667",
    })
    void areas_are_those_that_the_file_states(String name, boolean feet, double total, double projected) {
        ReadModel model = ReadModel.read(SharedFiles.folder("models").resolve(name));
        double unit = feet ? SQUARE_FOOT : 1;

        assertThat(model.roof().planes().stream()
                        .map(l -> l.plane())
                        .mapToDouble(RoofPlane::area)
                        .sum())
                .isCloseTo(total * unit, within(1e-4 * total * unit));
        assertThat(model.roof().planes().stream()
                        .map(l -> l.plane())
                        .mapToDouble(RoofPlane::planArea)
                        .sum())
                .isCloseTo(projected * unit, within(1e-4 * projected * unit));
    }
}

package runtrue.roof.models;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.roof.EdgeKind;
import runtrue.roof.PlaneLayout;
import runtrue.roof.RoofEdge;
import runtrue.roof.RoofPlane;
import runtrue.roof.halls.SharedFiles;

/**
 * Edges of real models that two elements share. Lengths follow from the corners' coordinates in the files; the kinds are
 * those a roofer would order flashings for, read from plan drawings.
 */
class RealEdgesTest {
    @ParameterizedTest
    @CsvSource({
        "eleven-slab-roof-ifc2x3.ifc, 2S8PiWcbHBVvIkcp3DcBw3, 2S8PiWcbHBVvIkcpFDcBw3, PITCH_CHANGE, 1, 15.167",
        "eleven-slab-roof-ifc2x3.ifc, 2S8PiWcbHBVvIkcpxDcBw3, 2S8PiWcbHBVvIkcpZDcBw3, PITCH_CHANGE, 1, 8.718",
        "eleven-slab-roof-ifc2x3.ifc, 2S8PiWcbHBVvIkcptDcBw3, 2S8PiWcbHBVvIkcpVDcBw3, PITCH_CHANGE, 1, 9.329",
        "roof-shapes-brep-and-clipped.ifc, 0vdDOh$5DFCOWNemZRSzt2, 3j5N7RPpvA1PwiM18Uv4fc, VALLEY, 2, 8.790",
        "roof-shapes-brep-and-clipped.ifc, 2JSl$Fps5F7R2zSLZRW7RY, 3j5N7RPpvA1PwiM18Uv4fc, VALLEY, 2, 8.776",
        "roof-shapes-brep-and-clipped.ifc, 3ZxH8Q4WD4vvKIC462LndM, 2GhkJAOcb34ObYmvDyUxT7, VALLEY, 2, 5.789",
        "roof-shapes-brep-and-clipped.ifc, 2tuIlLO3v9AQeRSmvAEVBX, 1KVOkPB7XCk9OnDCVl5zRW, VALLEY, 2, 3.711"
    })
    void two_elements_share_each_edge_once(
            String file, String one, String other, EdgeKind kind, int count, double length) {
        ReadModel model = ReadModel.read(SharedFiles.folder("models").resolve(file));
        Set<String> first = ids(model, one);
        Set<String> second = ids(model, other);

        List<RoofEdge> shared = model.roof().edges().stream()
                .filter(e -> e.planes().stream().anyMatch(first::contains)
                        && e.planes().stream().anyMatch(second::contains))
                .toList();
        assertThat(shared).hasSize(count).allSatisfy(e -> {
            assertThat(e.kind()).isEqualTo(kind);
            assertThat(e.length()).isCloseTo(length, within(1e-3));
        });
    }

    /** Parallel faces 0.2 m apart, cut at 45 degrees in plan: water from the one behind runs at the step. */
    @Test
    void the_sloping_step_of_a_mansard_is_one_edge_with_its_height() {
        ReadModel model = ReadModel.read(SharedFiles.folder("models").resolve("mansard-terrace-breps.ifc"));
        Set<String> upper = ids(model, "3X88NCenT88BCur6dUWHN1");
        Set<String> lower = ids(model, "1WSrSNLRn7EvqVoTs$M0PF");

        assertThat(model.roof().edges())
                .filteredOn(e -> e.planes().stream().anyMatch(upper::contains)
                        && e.planes().stream().anyMatch(lower::contains))
                .filteredOn(e -> Math.abs(e.to().getZ() - e.from().getZ()) > 1)
                .singleElement()
                .satisfies(e -> {
                    assertThat(e.kind()).isEqualTo(EdgeKind.STEP);
                    assertThat(e.length()).isCloseTo(4.635, within(2e-3));
                    assertThat(e.step()).hasValueCloseTo(0.2, within(2e-3));
                });
    }

    /**
     * Barrels that run level into a slope of 50 degrees: a valley up to the crown on either side, however many facets the
     * barrel has. It is the quarter of an ellipse, whose half axes are the radius and the radius over the sine of the
     * pitch; the second barrel is drawn from 11 mm above its springing.
     */
    @ParameterizedTest
    @CsvSource({"2.80, 0", "1.60, 0.011"})
    void a_barrel_dormer_has_two_valleys_as_long_as_the_ellipse(double radius, double above) {
        double greater = radius / Math.sin(Math.toRadians(50));
        double length = 0;
        double step = Math.PI / 2 / 10_000;
        for (double t = step / 2; t < Math.PI / 2; t += step) {
            length += step * Math.hypot(radius * Math.sin(t), greater * Math.cos(t));
        }
        double expected = length - above * greater / radius;
        ReadModel model = ReadModel.read(SharedFiles.folder("models").resolve("roof-shapes-brep-and-clipped.ifc"));
        RoofPlane barrel = model.roof().planes().stream()
                .map(PlaneLayout::plane)
                .filter(p -> p.curve().isPresent())
                .filter(p -> Math.abs(p.curve().get().radius().orElse(0) - radius) < 0.01)
                .findFirst()
                .orElseThrow();

        assertThat(model.roof().edges())
                .filteredOn(e -> e.planes().size() == 2 && e.planes().contains(barrel.id()))
                .hasSize(2)
                .allSatisfy(e -> {
                    assertThat(e.kind()).isEqualTo(EdgeKind.VALLEY);
                    assertThat(e.length()).isCloseTo(expected, within(0.015));
                });
    }

    private static Set<String> ids(ReadModel model, String globalId) {
        return model.planesOf(globalId).stream().map(RoofPlane::id).collect(Collectors.toSet());
    }
}

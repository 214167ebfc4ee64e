package runtrue.roof.models;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.roof.EdgeKind;
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
    @ParameterizedTest
    @CsvSource({"3X88NCenT88BCur6dUWHN1, ABUTMENT, 3.881", "1WSrSNLRn7EvqVoTs$M0PF, HEAD, 5.011"})
    void the_sloping_step_of_a_mansard_is_an_abutment_above_and_a_head_below(
            String element, EdgeKind kind, double length) {
        ReadModel model = ReadModel.read(SharedFiles.folder("models").resolve("mansard-terrace-breps.ifc"));
        Set<String> planes = ids(model, element);

        assertThat(model.roof().edges())
                .filteredOn(e -> e.kind() == kind && planes.containsAll(e.planes()))
                .filteredOn(e -> Math.abs(e.to().getZ() - e.from().getZ()) > 1)
                .singleElement()
                .satisfies(e -> assertThat(e.length()).isCloseTo(length, within(2e-3)));
    }

    private static Set<String> ids(ReadModel model, String globalId) {
        return model.planesOf(globalId).stream().map(RoofPlane::id).collect(Collectors.toSet());
    }
}

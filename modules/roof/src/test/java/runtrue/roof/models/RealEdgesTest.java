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
        "eleven-slab-roof-ifc2x3.ifc, 2S8PiWcbHBVvIkcp3DcBw3, 2S8PiWcbHBVvIkcpFDcBw3, PITCH_CHANGE, 15.167",
        "eleven-slab-roof-ifc2x3.ifc, 2S8PiWcbHBVvIkcpxDcBw3, 2S8PiWcbHBVvIkcpZDcBw3, PITCH_CHANGE, 8.718",
        "eleven-slab-roof-ifc2x3.ifc, 2S8PiWcbHBVvIkcptDcBw3, 2S8PiWcbHBVvIkcpVDcBw3, PITCH_CHANGE, 9.329"
    })
    void two_elements_share_one_edge(String file, String one, String other, EdgeKind kind, double length) {
        ReadModel model = ReadModel.read(SharedFiles.folder("models").resolve(file));
        Set<String> first = ids(model, one);
        Set<String> second = ids(model, other);

        List<RoofEdge> shared = model.roof().edges().stream()
                .filter(e -> e.planes().stream().anyMatch(first::contains)
                        && e.planes().stream().anyMatch(second::contains))
                .toList();
        assertThat(shared).singleElement().satisfies(e -> {
            assertThat(e.kind()).isEqualTo(kind);
            assertThat(e.length()).isCloseTo(length, within(1e-3));
        });
    }

    private static Set<String> ids(ReadModel model, String globalId) {
        return model.planesOf(globalId).stream().map(RoofPlane::id).collect(Collectors.toSet());
    }
}

package runtrue.shape.curve;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChordTest {
    /**
     * The cubic with points at heights 0, h, -h, 0 has the height 3 h t (1 - t) (1 - 2 t): at most h / (2 sqrt 3) =
     * 0.28868 h, at t = 0.2113, but 0.28125 h at the quarter and nothing in the middle.
     */
    @ParameterizedTest
    @CsvSource({"0.2886, false", "0.2890, true"})
    void a_swing_between_the_quarters_counts(double most, boolean keeps) {
        double[][] swing = {{0, 0, 0, 1}, {1, 1, 0, 1}, {2, -1, 0, 1}, {3, 0, 0, 1}};
        assertThat(Chord.of(Vector3D.ZERO, Vector3D.of(3, 0, 0), most).keeps(swing))
                .isEqualTo(keeps);
    }

    /** A quarter of a circle of radius 1 leaves its chord by 1 - 1 / sqrt 2 = 0.29289; its middle point has the weight 1 / sqrt 2. */
    @ParameterizedTest
    @CsvSource({"0.2928, false", "0.2930, true"})
    void weights_count(double most, boolean keeps) {
        double w = Math.sqrt(0.5);
        double[][] quarter = {{1, 0, 0, 1}, {w, w, 0, w}, {0, 1, 0, 1}};
        assertThat(Chord.of(Vector3D.of(1, 0, 0), Vector3D.of(0, 1, 0), most).keeps(quarter))
                .isEqualTo(keeps);
    }

    @ParameterizedTest
    @CsvSource({"0.7, false", "0.8, true"})
    void a_closed_piece_is_measured_from_its_start(double most, boolean keeps) {
        double[][] loop = {{0, 0, 0, 1}, {1, 1, 0, 1}, {-1, 1, 0, 1}, {0, 0, 0, 1}};
        assertThat(Chord.of(Vector3D.ZERO, Vector3D.ZERO, most).keeps(loop)).isEqualTo(keeps);
    }
}

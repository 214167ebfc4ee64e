package runtrue.shape.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runtrue.shape.ShapeException;

class ChainTest {
    private static final Fineness FINE = Fineness.of(2e-3, 1e-7, 0.01);
    private static final Conic CIRCLE = new Conic(Vector3D.ZERO, Vector3D.of(3, 0, 0), Vector3D.of(0, 3, 0));

    @Test
    void an_arc_through_three_points_passes_them_in_order() {
        Vector3D a = Vector3D.of(1, 2, 3);
        Vector3D b = Vector3D.of(2, 5, 1);
        Vector3D c = Vector3D.of(-3, 1, 4);
        Conic circle = Conic.through(a, b, c).orElseThrow();
        double atB = circle.nearest(b);
        double atC = circle.nearest(c);
        assertThat(circle.at(0).distance(a)).isLessThan(1e-12);
        assertThat(circle.at(atB).distance(b)).isLessThan(1e-12);
        assertThat(circle.at(atC).distance(c)).isLessThan(1e-12);
        assertThat(atB).isPositive();
        assertThat(atC > atB || atC < 0).isTrue();
    }

    @Test
    void three_points_on_a_line_have_no_circle() {
        assertThat(Conic.through(Vector3D.ZERO, Vector3D.of(1, 1, 1), Vector3D.of(2, 2, 2)))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.02, 0.3, 7, 400})
    void chords_leave_the_arc_by_no_more_than_the_tolerance(double radius) {
        int n = FINE.chords(radius, Math.PI);
        assertThat(radius * (1 - Math.cos(Math.PI / n / 2))).isLessThanOrEqualTo(0.002 + 1e-12);
    }

    @Test
    void what_is_carried_along_an_arc_keeps_the_tolerance_too() {
        int n = FINE.carrying(5).chords(3, Math.PI);
        assertThat(8 * (1 - Math.cos(Math.PI / n / 2))).isLessThanOrEqualTo(0.002 + 1e-12);
    }

    @Test
    void absurd_sizes_are_refused_instead_of_filling_the_memory() {
        assertThatThrownBy(() -> FINE.chords(1e20, Math.PI)).isInstanceOf(ShapeException.class);
        assertThatThrownBy(() -> FINE.chords(Double.NaN, Math.PI)).isInstanceOf(ShapeException.class);
    }

    /** A line of length 2 and a quarter circle of radius 3: spans as the file counts them. */
    private static Chain bend() {
        return new Chain(List.of(
                Piece.straight(Vector3D.of(3, -2, 0), Vector3D.of(3, 0, 0), 2), new Piece(CIRCLE, 0, Math.PI / 2, 90)));
    }

    @Test
    void a_part_is_cut_by_the_chains_own_parameter() {
        Chain part = bend().part(1, 2 + 45);
        assertThat(part.from()).isEqualTo(Vector3D.of(3, -1, 0));
        assertThat(part.to().distance(Vector3D.of(3 * Math.sqrt(0.5), 3 * Math.sqrt(0.5), 0)))
                .isLessThan(1e-12);
        assertThat(part.span()).isEqualTo(46, within(1e-12));
    }

    @Test
    void the_nearest_parameter_is_found_across_pieces() {
        assertThat(bend().nearest(Vector3D.of(9, 9, 0))).isEqualTo(2 + 45, within(1e-9));
        assertThat(bend().nearest(Vector3D.of(4, -1.5, 0))).isEqualTo(0.5, within(1e-12));
        assertThat(bend().nearest(Vector3D.of(-1, 3, 0))).isEqualTo(92, within(1e-9));
    }

    @Test
    void a_smooth_joint_has_one_direction_and_a_corner_two() {
        List<Station> smooth = bend().track(FINE).stations();
        for (Station station : smooth) {
            assertThat(station.before().distance(station.after())).isLessThan(1e-12);
        }
        Track square = Chain.polyline(List.of(
                        Vector3D.ZERO, Vector3D.of(1, 0, 0), Vector3D.of(1, 1, 0), Vector3D.of(0, 1, 0), Vector3D.ZERO))
                .track(FINE);
        assertThat(square.closed()).isTrue();
        assertThat(square.stations()).hasSize(4);
        assertThat(square.stations().get(0).before().eq(Vector3D.of(0, -1, 0), precision()))
                .isTrue();
    }

    @Test
    void a_reversed_chain_runs_back() {
        Chain back = bend().reversed();
        assertThat(back.from()).isEqualTo(bend().to());
        Station first = back.track(FINE).stations().get(0);
        assertThat(first.after().eq(Vector3D.of(1, 0, 0), precision())).isTrue();
    }

    private static org.apache.commons.numbers.core.Precision.DoubleEquivalence precision() {
        return org.apache.commons.numbers.core.Precision.doubleEquivalenceOfEpsilon(1e-9);
    }
}

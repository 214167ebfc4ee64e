package runtrue.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import runtrue.report.drawing.place.Patch;
import runtrue.report.drawing.place.Vec;
import runtrue.result.PlaneResult;

class CurvedPatchTest {
    /** Half a barrel of radius 2, 10 long, seen from above: its arc of 2 x pi is 4 wide in plan, the crown half-way. */
    private static Patch halfBarrel() {
        PlaneResult any = MillLane.result().planes().get(0);
        List<Vec> bend = List.of(
                new Vec(0, -2), new Vec(2 * Math.PI / 3, -1), new Vec(4 * Math.PI / 3, 1), new Vec(2 * Math.PI, 2));
        List<Vec> developed = List.of(new Vec(0, 0), new Vec(10, 0), new Vec(10, 2 * Math.PI), new Vec(0, 2 * Math.PI));
        return new Patch(any, new Vec(100, 50), new Vec(1, 0), new Vec(0, -1), bend, List.of(developed), List.of());
    }

    @Test
    void a_length_along_the_arc_is_drawn_where_it_lies_in_plan() {
        Patch patch = halfBarrel();
        assertThat(patch.at(3, 0).y()).isCloseTo(52, within(1e-9));
        assertThat(patch.at(3, Math.PI).y()).isCloseTo(50, within(1e-9));
        assertThat(patch.at(3, 4 * Math.PI / 3).y()).isCloseTo(49, within(1e-9));
        assertThat(patch.at(3, Math.PI).x()).isCloseTo(103, within(1e-9));
    }

    @Test
    void what_lies_within_it_in_plan_is_found_within_it() {
        Patch patch = halfBarrel();
        assertThat(patch.contains(new Vec(105, 51.9))).isTrue();
        assertThat(patch.contains(new Vec(105, 52.1))).isFalse();
        assertThat(patch.contains(new Vec(110.1, 50))).isFalse();
    }
}

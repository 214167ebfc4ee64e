package runtrue.report.drawing.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import runtrue.report.drawing.place.Box;
import runtrue.report.drawing.place.Vec;

class GridLayerTest {
    private static final Box AREA = new Box(0, 0, 10, 10);

    @Test
    void aLineIsCutAtTheSidesThatItCrosses() {
        assertThat(GridLayer.within(new Vec(-5, 5), new Vec(15, 5), AREA))
                .hasValueSatisfying(ends -> assertThat(ends).containsExactly(new Vec(0, 5), new Vec(10, 5)));
    }

    @Test
    void aLineBesideTheAreaHasNoPartInIt() {
        assertThat(GridLayer.within(new Vec(-5, 11), new Vec(15, 11), AREA)).isEmpty();
        assertThat(GridLayer.within(new Vec(11, 0), new Vec(15, 5), AREA)).isEmpty();
    }
}

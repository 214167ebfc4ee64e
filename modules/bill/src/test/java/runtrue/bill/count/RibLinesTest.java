package runtrue.bill.count;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.locationtech.jts.geom.Envelope;
import runtrue.roof.SetOut;

class RibLinesTest {
    @Property(tries = 60)
    void ribs_start_and_end_at_the_edges_and_lie_no_farther_apart_than_the_spacing(
            @ForAll @DoubleRange(min = 0.01, max = 40) double width, @ForAll SetOut setOut) {
        List<Double> ribs = RibLines.of(new Envelope(2, 2 + width, 0, 1), 0.5, 0.5, setOut);
        assertThat(ribs.get(0)).isEqualTo(2);
        assertThat(ribs.get(ribs.size() - 1)).isEqualTo(2 + width);
        for (int i = 1; i < ribs.size(); i++) {
            assertThat(ribs.get(i) - ribs.get(i - 1)).isBetween(0.0005, 0.5 + 1.1e-3);
        }
    }
}

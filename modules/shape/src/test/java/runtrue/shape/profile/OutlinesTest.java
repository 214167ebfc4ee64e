package runtrue.shape.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.shape.curve.Chain;
import runtrue.shape.curve.Fineness;

/** Areas in mm2. Handbook areas hold root fillets, (4 - pi) r2 for the four of an I section; those are added here. */
class OutlinesTest {
    private static double area(double[] outline) {
        return Ring.of(outline, 0).signedArea();
    }

    /** Dimensions and areas of hot-rolled sections as in EN 10365 tables (from memory). */
    @ParameterizedTest
    @CsvSource({"200, 100, 5.6, 8.5, 12, 2848", "300, 150, 7.1, 10.7, 15, 5381", "160, 160, 8, 13, 15, 5425"})
    void i_sections_have_their_handbook_area(double h, double b, double tw, double tf, double r, double handbook) {
        double fillets = (4 - Math.PI) * r * r;
        assertThat(area(Outlines.iShape(b, tf, b, tf, h, tw)) + fillets).isEqualTo(handbook, within(1.0));
    }

    @Test
    void other_sections_have_the_area_of_the_strips_they_are_made_of() {
        assertThat(area(Outlines.iShape(200, 10, 100, 8, 300, 6)))
                .isEqualTo(200 * 10 + 100 * 8 + 282 * 6, within(1e-9));
        assertThat(area(Outlines.lShape(100, 150, 10))).isEqualTo(100 * 10 + 140 * 10, within(1e-9));
        assertThat(area(Outlines.uShape(80, 200, 6, 9))).isEqualTo(2 * 80 * 9 + 182 * 6, within(1e-9));
        assertThat(area(Outlines.tShape(120, 130, 8, 10))).isEqualTo(120 * 10 + 120 * 8, within(1e-9));
        assertThat(area(Outlines.cShape(65, 200, 2, 20))).isEqualTo(2 * (200 + 2 * 63 + 2 * 18), within(1e-9));
        assertThat(area(Outlines.zShape(70, 200, 2, 2))).isEqualTo(2 * (200 + 2 * 68), within(1e-9));
        assertThat(area(Outlines.trapezium(6, 4, 3, 1))).isEqualTo(15, within(1e-9));
    }

    @Test
    void outlines_are_centred_and_fill_their_bounding_box() {
        for (double[] outline : new double[][] {
            Outlines.lShape(100, 150, 10),
            Outlines.uShape(100, 150, 6, 9),
            Outlines.tShape(100, 150, 8, 10),
            Outlines.cShape(100, 150, 2, 20),
            Outlines.iShape(100, 10, 100, 10, 150, 6)
        }) {
            double maxX = 0;
            double minX = 0;
            double maxY = 0;
            double minY = 0;
            for (int i = 0; i < outline.length; i += 2) {
                maxX = Math.max(maxX, outline[i]);
                minX = Math.min(minX, outline[i]);
                maxY = Math.max(maxY, outline[i + 1]);
                minY = Math.min(minY, outline[i + 1]);
            }
            assertThat(new double[] {minX, minY, maxX, maxY}).containsExactly(-50, -75, 50, 75);
        }
    }

    @Test
    void a_centre_line_profile_has_length_times_thickness() {
        Chain angle = Chain.polyline(List.of(Vector3D.ZERO, Vector3D.of(100, 0, 0), Vector3D.of(100, 50, 0)));
        assertThat(CentreLine.thickened("L", angle, 4, Fineness.of(2, 1e-6, 0.01))
                        .area())
                .isEqualTo(150 * 4, within(1e-9));
    }
}

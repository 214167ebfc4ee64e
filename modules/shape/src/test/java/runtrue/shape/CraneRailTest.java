package runtrue.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CraneRailTest {
    /**
     * Dimensions (k, b1, b2, b3, f1, f2, f3, h1, h2, h3 in mm) and kilograms a metre of DIN 536-1, table 1 and 2; masses
     * from memory. Roundings, which are left out, take or give up to 2.5 %.
     */
    @ParameterizedTest
    @CsvSource({
        "A45, 45, 125, 54, 24, 14.5, 11, 8, 55, 24, 20, 22.1",
        "A55, 55, 150, 66, 31, 17.5, 12.5, 9, 65, 28.5, 25, 31.8",
        "A65, 65, 175, 78, 38, 20, 14, 10, 75, 34, 30, 43.1",
        "A75, 75, 200, 90, 45, 22, 15.4, 11, 85, 39.5, 35, 56.2",
        "A100, 100, 200, 100, 60, 23, 16.5, 12, 95, 45.5, 40, 74.3",
        "A120, 120, 220, 120, 72, 30, 20, 14, 105, 55.5, 47.5, 100.0"
    })
    void rolled_rails_have_the_mass_of_the_standard(
            String name,
            double k,
            double b1,
            double b2,
            double b3,
            double f1,
            double f2,
            double f3,
            double h1,
            double h2,
            double h3,
            double mass) {
        Shape shape = ModelText.readIn(
                "IFC2X3",
                String.format(
                        Locale.ROOT,
                        "#200=IFCEXTRUDEDAREASOLID(#211,#11,#12,1000.);#211=IFCCRANERAILASHAPEPROFILEDEF(.AREA.,'%s',#14,"
                                + "%.1f,%.1f,$,%.1f,%.1f,%.1f,%.1f,%.1f,%.1f,%.1f,%.1f,$);",
                        name,
                        h1,
                        b1,
                        k,
                        h2,
                        h3,
                        b3,
                        b2,
                        f1,
                        f2,
                        f3));
        assertThat(shape)
                .isInstanceOfSatisfying(
                        Shape.Body.class,
                        body -> assertThat(7850 * UpwardPlanes.volume(body.faces()))
                                .isCloseTo(mass, withinPercentage(2.5)));
    }
}

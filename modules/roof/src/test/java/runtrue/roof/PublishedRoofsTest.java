package runtrue.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runtrue.roof.RoofFixtures.p;
import static runtrue.roof.RoofFixtures.settings;
import static runtrue.roof.RoofFixtures.slab;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Planes and edges against roof-framing handbooks and worked examples. */
class PublishedRoofsTest {
    private static final double FOOT = 0.3048;

    /**
     * Rafter tables of the framing square: I. S. Griffith, Carpentry, section 23, and US Navy, Builder 3 and 2, volume 2
     * (NAVEDTRA 14044), chapter 2. Inches per foot of common run, published to two decimals.
     */
    @ParameterizedTest(name = "{0} in 12")
    @CsvSource({
        "3, 12.37, 17.23",
        "4, 12.65, 17.44",
        "5, 13.00, 17.69",
        "6, 13.42, 18.00",
        "7, 13.89, 18.36",
        "8, 14.42, 18.76",
        "9, 15.00, 19.21",
        "10, 15.62, 19.70",
        "11, 16.28, 20.22"
    })
    void runs_and_hips_follow_the_framing_square(double rise, double common, double hip) {
        double halfWidth = 1;
        Roof roof = Roofs.layOut(
                RoofFixtures.hipRoof(6, 2 * halfWidth, Math.atan(rise / 12), 0.1), List.of(), settings(0.5));

        double run = roof.planes().stream()
                .mapToDouble(PlaneLayout::longestRun)
                .max()
                .orElseThrow();
        assertThat(run * 12).isCloseTo(common, within(0.005));
        List<RoofEdge> hips = edges(roof, EdgeKind.HIP);
        assertThat(hips).hasSize(4);
        assertThat(hips).allSatisfy(h -> assertThat(h.length() * 12).isCloseTo(hip, within(0.005)));
    }

    /** US Navy, Builder 3 and 2, volume 2, "Hip, continued": 8 in rise, 15 ft common run; hip 23.45 ft, rise 10 ft. */
    @Test
    void a_hip_of_the_navy_manual_has_its_published_length() {
        Roof roof = Roofs.layOut(
                RoofFixtures.hipRoof(50 * FOOT, 30 * FOOT, Math.atan(8.0 / 12), 0.15), List.of(), settings(0.5));

        assertThat(edges(roof, EdgeKind.HIP))
                .allSatisfy(h -> assertThat(h.length() / FOOT).isCloseTo(23.45, within(0.005)));
        assertThat(roof.planes())
                .allSatisfy(l -> assertThat((l.plane().ridgeLevel() - l.plane().eaveLevel()) / FOOT)
                        .isCloseTo(10, within(1e-6)));
    }

    /** US Navy, Builder 3 and 2, volume 2, figure 2-17: 7 in rise, 16 ft span; common rafter 9 ft 3 1/8 in. */
    @Test
    void the_run_of_a_gable_is_the_published_common_rafter() {
        double rise = 8 * FOOT * 7 / 12;
        Roof roof = Roofs.layOut(
                List.of(slab("south", 0.1, p(0, 0, 0), p(6, 0, 0), p(6, 8 * FOOT, rise), p(0, 8 * FOOT, rise))),
                List.of(),
                settings(0.5));

        assertThat(roof.planes().get(0).longestRun() / FOOT * 12).isCloseTo(111.125, within(0.02));
    }

    /** A public worked calculation to EN 1991-1-4 (12 x 30 m, terrain category IV): eaves 8 m, ridge 9 m; 9.46 degrees. */
    @Test
    void the_pitch_of_a_gable_is_that_of_the_published_sheet() {
        Roof roof = Roofs.layOut(
                List.of(
                        slab("south", 0.1, p(0, 0, 8), p(20, 0, 8), p(20, 6, 9), p(0, 6, 9)),
                        slab("north", 0.1, p(20, 12, 8), p(0, 12, 8), p(0, 6, 9), p(20, 6, 9))),
                List.of(),
                settings(0.5));

        assertThat(roof.planes())
                .hasSize(2)
                .allSatisfy(l -> assertThat(Math.toDegrees(l.plane().pitch())).isCloseTo(9.46, within(0.005)));
    }

    /** Plane geometry, worked by hand: 20 x 10 m, 30 degrees; plan 200 over cos 30 = 230.940, ridge 10, hips 7.6376. */
    @Test
    void a_hip_roof_is_as_large_as_its_plan_over_the_cosine() {
        Roof roof = Roofs.layOut(RoofFixtures.hipRoof(20, 10, Math.toRadians(30), 0.2), List.of(), settings(0.5));

        assertThat(roof.planes().stream().mapToDouble(l -> l.plane().area()).sum())
                .isCloseTo(230.940, within(0.001));
        assertThat(roof.planes().stream().mapToDouble(l -> l.plane().planArea()).sum())
                .isCloseTo(200, within(1e-6));
        assertThat(total(roof, EdgeKind.RIDGE)).isCloseTo(10, within(1e-6));
        assertThat(total(roof, EdgeKind.HIP)).isCloseTo(4 * 7.6376, within(0.001));
        assertThat(total(roof, EdgeKind.EAVE)).isCloseTo(60, within(1e-6));
        assertThat(total(roof, EdgeKind.VERGE)).isZero();
        assertThat(roof.bodies()).singleElement().satisfies(b -> {
            assertThat(b.width()).isCloseTo(10, within(1e-3));
            assertThat(b.length()).isCloseTo(20, within(1e-3));
        });
    }

    /**
     * L-shaped roof of equal pitch, worked by hand: 20 x 10 m with a wing 8 m wide that stands out 6 m, 15 degrees.
     * Plan 248, over cos 15 = 256.748; two valleys of 4 m common run, each 4 sqrt(2 + tan2 15) = 5.7575.
     */
    @Test
    void an_l_shaped_roof_has_two_valleys_of_the_wing_s_half_width() {
        double t = Math.tan(Math.toRadians(15));
        double main = 5 * t;
        double wing = 4 * t;
        Roof roof = Roofs.layOut(
                List.of(
                        slab("north", 0.1, p(20, 10, 0), p(0, 10, 0), p(0, 5, main), p(20, 5, main)),
                        slab(
                                "south",
                                0.1,
                                p(0, 0, 0),
                                p(6, 0, 0),
                                p(10, 4, wing),
                                p(14, 0, 0),
                                p(20, 0, 0),
                                p(20, 5, main),
                                p(0, 5, main)),
                        slab("wing west", 0.1, p(6, 0, 0), p(6, -6, 0), p(10, -6, wing), p(10, 4, wing)),
                        slab("wing east", 0.1, p(14, -6, 0), p(14, 0, 0), p(10, 4, wing), p(10, -6, wing))),
                List.of(),
                settings(0.5));

        assertThat(roof.planes().stream().mapToDouble(l -> l.plane().area()).sum())
                .isCloseTo(256.748, within(0.001));
        assertThat(edges(roof, EdgeKind.VALLEY))
                .hasSize(2)
                .allSatisfy(v -> assertThat(v.length()).isCloseTo(5.7575, within(0.0001)));
        assertThat(total(roof, EdgeKind.RIDGE)).isCloseTo(20 + 10, within(1e-6));
        assertThat(total(roof, EdgeKind.EAVE)).isCloseTo(20 + 6 + 6 + 6 + 6, within(1e-6));
        assertThat(total(roof, EdgeKind.VERGE)).isCloseTo((20 + 8) / Math.cos(Math.toRadians(15)), within(1e-6));
    }

    static List<RoofEdge> edges(Roof roof, EdgeKind kind) {
        return roof.edges().stream().filter(e -> e.kind() == kind).toList();
    }

    static double total(Roof roof, EdgeKind kind) {
        return edges(roof, kind).stream().mapToDouble(RoofEdge::length).sum();
    }
}

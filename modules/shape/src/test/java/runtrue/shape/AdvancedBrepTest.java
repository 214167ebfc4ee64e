package runtrue.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Bodies by curved faces against their formulas. Chords of 2 mm at most: a circle of radius r keeps more than 1 - 4/3 c/r
 * of its area, a ball more than 1 - 3 c/r of its volume.
 */
class AdvancedBrepTest {
    private static final double CHORD = Tolerances.standard().chord();

    static double area(List<Face> faces) {
        return faces.stream().mapToDouble(UpwardPlanes::area).sum();
    }

    private static Arguments body(
            String name, Function<BrepText, String> text, double volume, double area, double leastRadius) {
        return Arguments.of(name, text.apply(BrepText.millimetres()), volume, area, leastRadius);
    }

    static Stream<Arguments> bodies() {
        double pi = Math.PI;
        return Stream.of(
                body("cylinder with a seam", t -> AdvancedBodies.seamed(t, 500, 1000), pi / 4, 1.5 * pi, 0.5),
                body("cylinder with two loops", t -> AdvancedBodies.seamless(t, 500, 1000), pi / 4, 1.5 * pi, 0.5),
                body("cylinder in halves", t -> AdvancedBodies.halved(t, 500, 1000), pi / 4, 1.5 * pi, 0.5),
                body("tube", t -> AdvancedBodies.tube(t, 500, 300, 1000), 0.16 * pi, 1.92 * pi, 0.3),
                body("dome", t -> AdvancedBodies.dome(t, 2000, false), 16 * pi / 3, 12 * pi, 2),
                body("dome with a seam", t -> AdvancedBodies.dome(t, 2000, true), 16 * pi / 3, 12 * pi, 2),
                body("ball with a seam", t -> AdvancedBodies.ball(t, 1000, true), 4 * pi / 3, 4 * pi, 1),
                body("ball with a corner", t -> AdvancedBodies.ball(t, 1000, false), 4 * pi / 3, 4 * pi, 1),
                body("cone", t -> AdvancedBodies.cone(t, 300, 400), 0.012 * pi, 0.24 * pi, 0.3),
                body("cylinder as a spline", t -> AdvancedBodies.splined(t, 500, 1000), pi / 4, 1.5 * pi, 0.5),
                body("torus", t -> AdvancedBodies.torus(t, 2000, 500), pi * pi, 4 * pi * pi, 0.5),
                body(
                        "barrel",
                        t -> AdvancedBodies.barrel(t, 10_000, 9_900, 6000),
                        0.25 * pi * (100 - 98.01) * 6,
                        0.5 * pi * 19.9 * 6 + 2 * 0.25 * pi * (100 - 98.01) + 2 * 0.1 * 6,
                        10));
    }

    /** Formulas of any handbook of mathematics, of solids of revolution by Pappus and Guldin; radii 2 and 1 m and so on. */
    static Stream<Arguments> turnedBodies() {
        double pi = Math.PI;
        double slant = Math.sqrt(1 + 1.5 * 1.5);
        double parabola = Math.pow(4 + 4 * 1.5 * 1.5, 1.5) - 8;
        return Stream.of(
                // V = pi h / 3 (R2 + R r + r2), A = pi (R + r) s + pi (R2 + r2)
                body("frustum", t -> TurnedBodies.frustum(t, 2000, 1000, 1500), 3.5 * pi, pi * (3 * slant + 5), 1),
                // V = pi R2 h / 2, A = pi R / (6 h2) ((R2 + 4 h2)^(3/2) - R3) + pi R2
                body(
                        "paraboloid",
                        t -> TurnedBodies.paraboloid(t, 2000, 1500),
                        3 * pi,
                        pi * 2 / (6 * 2.25) * parabola + 4 * pi,
                        1.3),
                // V = pi h2 (3 R - h) / 3, A = 2 pi R h + pi a2, a2 = h (2 R - h)
                body("cap", t -> TurnedBodies.cap(t, 5000, 1000), 14 * pi / 3, 10 * pi + 9 * pi, 3),
                // V = pi a b h, A = girth h + 2 pi a b; girth of an ellipse of half axes 2 and 1: 9.688448220547675
                body(
                        "elliptic cylinder",
                        t -> TurnedBodies.ellipticCylinder(t, 2000, 1000, 3000),
                        6 * pi,
                        3 * 9.688448220547675 + 4 * pi,
                        0.5),
                // A quarter of V = 2 pi2 R r2 and of A = 4 pi2 R r, and the two ends
                body("elbow", t -> TurnedBodies.elbow(t, 2000, 500), pi * pi / 4, pi * pi + 0.5 * pi, 0.5));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({"bodies", "turnedBodies"})
    void close_and_have_their_volume_and_area(String name, String data, double volume, double area, double radius) {
        Shape.Body body = ModelText.body(data);
        assertThat(body.remarks()).isEmpty();
        assertThat(body.closed()).isTrue();
        double lost = 3 * CHORD / radius;
        assertThat(area(body.faces())).isEqualTo(area, within(lost * area));
        double shell = name.equals("barrel") ? CHORD * area / 2 : lost * volume;
        assertThat(UpwardPlanes.volume(body.faces())).isEqualTo(volume, within(shell));
    }

    @Test
    void a_box_keeps_its_six_faces_exactly() {
        Shape.Body body = ModelText.body(AdvancedBodies.box(BrepText.millimetres(), 4000, 3000, 200));
        assertThat(body.closed()).isTrue();
        assertThat(body.faces()).hasSize(6);
        assertThat(UpwardPlanes.volume(body.faces())).isEqualTo(2.4, within(1e-12));
        assertThat(area(body.faces())).isEqualTo(26.8, within(1e-12));
    }
}

package runtrue.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleBinaryOperator;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Single curved faces and surfaces: their area by a formula or an integral, and how far their facets leave them. */
class SurfacesTest {
    private static final double CHORD = Tolerances.standard().chord();

    /** Midpoint rule over 400 by 400 cells. */
    private static double integral(DoubleBinaryOperator f, double x, double y) {
        double sum = 0;
        int n = 400;
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < n; k++) {
                sum += f.applyAsDouble((i + 0.5) * x / n, (k + 0.5) * y / n);
            }
        }
        return sum * x * y / n / n;
    }

    private static double area(Shape.Body body) {
        return AdvancedBrepTest.area(body.faces());
    }

    /** z = h x y / (a b) over a rectangle of a by b metres, whose corner at a, b stands h high. */
    private static String saddle(BrepText t, double a, double b, double h) {
        double[][][] net = {{{0, 0, 0}, {0, b, 0}}, {{a, 0, 0}, {a, b, h}}};
        return "IFCBSPLINESURFACEWITHKNOTS(1,1," + t.net(net)
                + ",.UNSPECIFIED.,.F.,.F.,.F.,(2,2),(2,2),(0.,1.),(0.,1.),.UNSPECIFIED.)";
    }

    @Test
    void a_saddle_between_straight_edges_has_the_area_of_the_integral() {
        BrepText t = BrepText.millimetres();
        Shape.Body body = ModelText.body(t.item(saddle(t, 6000, 4000, 2000)));
        double s = 2.0 / 24;
        double expected = integral((x, y) -> Math.sqrt(1 + s * s * (x * x + y * y)), 6, 4);
        assertThat(area(body)).isEqualTo(expected, within(1e-3 * expected));
        for (Face face : body.faces()) {
            Vector3D mean = face.outline().stream().reduce(Vector3D.ZERO, Vector3D::add);
            mean = mean.multiply(1.0 / face.outline().size());
            assertThat(mean.getZ()).isEqualTo(s * mean.getX() * mean.getY(), within(CHORD));
        }
    }

    @Test
    void a_saddle_trimmed_by_edges_is_the_same_as_the_whole_surface() {
        BrepText t = BrepText.millimetres();
        int surface = t.line(saddle(t, 6000, 4000, 2000));
        int[] v = {t.vertex(0, 0, 0), t.vertex(6000, 0, 0), t.vertex(6000, 4000, 2000), t.vertex(0, 4000, 0)};
        int[] e = new int[4];
        for (int i = 0; i < 4; i++) {
            e[i] = t.straight(v[i], v[(i + 1) % 4]);
        }
        t.face(surface, true, t.bound(e));
        BrepText whole = BrepText.millimetres();
        assertThat(area(ModelText.body(t.open())))
                .isEqualTo(area(ModelText.body(whole.item(saddle(whole, 6000, 4000, 2000)))), within(1e-9));
    }

    static Stream<Arguments> trimmed() {
        double pi = Math.PI;
        return Stream.of(
                Arguments.of("IFCSPHERICALSURFACE(#11,2000.)", "30.,0.,120.,90.", 4 * pi / 2, 2),
                Arguments.of("IFCSPHERICALSURFACE(#11,2000.)", "30.,-30.,120.,30.", 4 * pi / 2, 2),
                Arguments.of("IFCTOROIDALSURFACE(#11,2000.,500.)", "0.,0.,90.,360.", pi * pi, 0.5),
                Arguments.of("IFCTOROIDALSURFACE(#11,2000.,500.)", "0.,-90.,360.,90.", 2 * pi * (pi + 0.5), 0.5),
                Arguments.of("IFCCYLINDRICALSURFACE(#11,500.)", "0.,0.,360.,1000.", pi, 0.5),
                Arguments.of("IFCPLANE(#11)", "0.,0.,3000.,2000.", 6, 1));
    }

    @ParameterizedTest
    @MethodSource
    void trimmed(String basis, String trims, double expected, double radius) {
        Shape.Body body =
                ModelText.body("#200=IFCRECTANGULARTRIMMEDSURFACE(#201," + trims + ",.T.,.T.);#201=" + basis + ";");
        assertThat(area(body)).isLessThanOrEqualTo(expected * (1 + 1e-9));
        assertThat(area(body)).isEqualTo(expected, within(2 * CHORD / radius * expected));
    }

    @Test
    void a_profile_turned_about_an_axis_makes_a_cone_and_a_ring() {
        String data = "#200=IFCSURFACEOFREVOLUTION(#201,$,#202);#201=IFCARBITRARYOPENPROFILEDEF(.CURVE.,$,#203);"
                + "#202=IFCAXIS1PLACEMENT(#10,#204);#204=IFCDIRECTION((0.,1.,0.));#203=IFCPOLYLINE((#205,#206,#207));"
                + "#205=IFCCARTESIANPOINT((0.,400.));#206=IFCCARTESIANPOINT((300.,0.));#207=IFCCARTESIANPOINT((500.,0.));";
        double expected = Math.PI * (0.3 * 0.5 + 0.25 - 0.09);
        assertThat(area(ModelText.body(data))).isEqualTo(expected, within(0.006 * expected));
    }

    @Test
    void a_curve_drawn_along_a_direction_makes_strips() {
        String data = "#200=IFCSURFACEOFLINEAREXTRUSION(#201,#11,#12,2000.);"
                + "#201=IFCARBITRARYOPENPROFILEDEF(.CURVE.,$,#203);#203=IFCTRIMMEDCURVE(#204,(IFCPARAMETERVALUE(0.)),"
                + "(IFCPARAMETERVALUE(90.)),.T.,.PARAMETER.);#204=IFCCIRCLE(#14,5000.);";
        Shape.Body body = ModelText.body(data);
        assertThat(body.faces()).allSatisfy(face -> assertThat(face.outline()).hasSize(4));
        assertThat(area(body)).isEqualTo(5 * Math.PI, within(1.001 * CHORD / 15 * 5 * Math.PI));
    }

    /** A cylinder cut off aslant has the volume of one cut off straight through the middle of the cut. */
    @ParameterizedTest
    @CsvSource({"0", "0.3", "1"})
    void a_cylinder_cut_aslant_closes(double slope) {
        BrepText t = BrepText.millimetres();
        double r = 1000;
        int a = t.vertex(r, 0, 0);
        int b = t.vertex(r, 0, 2000 + slope * r);
        int rim = t.edge(a, a, AdvancedBodies.circle(t, 0, r));
        double rise = Math.hypot(1, slope);
        int axes = t.axes(0, 0, 2000, t.direction(-slope / rise, 0, 1 / rise), t.direction(1 / rise, 0, slope / rise));
        int cut = t.edge(b, b, t.line("IFCELLIPSE(#" + axes + "," + t.length(r * rise) + "," + t.length(r) + ")"));
        int seam = t.straight(a, b);
        t.face(AdvancedBodies.cylinder(t, r), true, t.bound(rim, seam, -cut, -seam));
        t.plane(t.bound(-rim));
        t.plane(t.bound(cut));
        Shape.Body body = ModelText.body(t.brep());
        assertThat(body.closed()).isTrue();
        assertThat(body.remarks()).isEmpty();
        assertThat(UpwardPlanes.volume(body.faces())).isEqualTo(2 * Math.PI, within(0.004 * 2 * Math.PI));
    }

    @Test
    void a_hole_in_a_curved_face_is_left_out() {
        BrepText t = BrepText.millimetres();
        int[] v = {t.vertex(1000, 0, 0), t.vertex(0, 1000, 0), t.vertex(0, 1000, 1000), t.vertex(1000, 0, 1000)};
        int low = t.edge(v[0], v[1], AdvancedBodies.circle(t, 0, 1000));
        int high = t.edge(v[3], v[2], AdvancedBodies.circle(t, 1000, 1000));
        String outer = t.bound(low, t.straight(v[1], v[2]), -high, -t.straight(v[0], v[3]));
        double x = 1000 * Math.cos(Math.PI / 6);
        int[] h = {t.vertex(x, 500, 300), t.vertex(500, x, 300), t.vertex(500, x, 700), t.vertex(x, 500, 700)};
        int holeLow = t.edge(h[0], h[1], AdvancedBodies.circle(t, 300, 1000));
        int holeHigh = t.edge(h[3], h[2], AdvancedBodies.circle(t, 700, 1000));
        String inner = t.bound(t.straight(h[0], h[3]), holeHigh, -t.straight(h[1], h[2]), -holeLow);
        t.face(AdvancedBodies.cylinder(t, 1000), true, outer, inner);
        double expected = Math.PI / 2 - 0.4 * Math.PI / 6;
        assertThat(area(ModelText.body(t.open()))).isEqualTo(expected, within(0.003 * expected));
    }

    /** A dome of 20 m by 16 m that rises 3 m: degree 2 each way, straight at its eaves. */
    @Test
    void a_spline_dome_keeps_the_chord_tolerance_at_the_middles_of_its_facets() {
        BrepText t = BrepText.millimetres();
        double[][][] net = new double[3][3][];
        for (int i = 0; i < 3; i++) {
            for (int k = 0; k < 3; k++) {
                net[i][k] = new double[] {i * 10_000, k * 8000, i == 1 && k == 1 ? 12_000 : 0};
            }
        }
        Shape.Body body = ModelText.body(t.item("IFCBSPLINESURFACEWITHKNOTS(2,2," + t.net(net)
                + ",.UNSPECIFIED.,.F.,.F.,.F.,(3,3),(3,3),(0.,1.),(0.,1.),.UNSPECIFIED.)"));
        for (Face face : body.faces()) {
            Vector3D mean = face.outline().stream().reduce(Vector3D.ZERO, Vector3D::add);
            mean = mean.multiply(1.0 / face.outline().size());
            double x = mean.getX() / 20;
            double y = mean.getY() / 16;
            double z = 12 * 2 * x * (1 - x) * 2 * y * (1 - y);
            assertThat(mean.getZ()).isEqualTo(z, within(CHORD * Math.sqrt(2)));
        }
        double expected = integral(
                (x, y) -> {
                    double dx = 48.0 / 20 * (1 - 2 * x / 20) * y / 16 * (1 - y / 16);
                    double dy = 48.0 / 16 * (1 - 2 * y / 16) * x / 20 * (1 - x / 20);
                    return Math.sqrt(1 + dx * dx + dy * dy);
                },
                20,
                16);
        assertThat(area(body)).isEqualTo(expected, within(1e-3 * expected));
    }
}

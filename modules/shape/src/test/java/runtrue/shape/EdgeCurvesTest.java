package runtrue.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.ifc.IfcModel;
import runtrue.shape.curve.Chain;
import runtrue.shape.curve.CurveReader;
import runtrue.shape.curve.Fineness;
import runtrue.step.StepFile;

/** Curves of edges and trimmed curves: which part is meant, and where it lies. Millimetres and degrees. */
class EdgeCurvesTest {
    private static final Fineness FINE = Fineness.of(0.01, 1e-6, 0.01);

    /** Four rational quarters: a circle of 500 about the origin, from +x over +y. */
    private static final String SPLINE_CIRCLE = "#200=IFCRATIONALBSPLINECURVEWITHKNOTS(2,"
            + "(#231,#232,#233,#234,#235,#236,#237,#238,#231),.CIRCULAR_ARC.,.T.,.F.,(3,2,2,2,3),(0.,1.,2.,3.,4.),"
            + ".UNSPECIFIED.,(1.,0.7071067811865476,1.,0.7071067811865476,1.,0.7071067811865476,1.,0.7071067811865476,1.));"
            + "#231=IFCCARTESIANPOINT((500.,0.,0.));#232=IFCCARTESIANPOINT((500.,500.,0.));"
            + "#233=IFCCARTESIANPOINT((0.,500.,0.));#234=IFCCARTESIANPOINT((-500.,500.,0.));"
            + "#235=IFCCARTESIANPOINT((-500.,0.,0.));#236=IFCCARTESIANPOINT((-500.,-500.,0.));"
            + "#237=IFCCARTESIANPOINT((0.,-500.,0.));#238=IFCCARTESIANPOINT((500.,-500.,0.));";

    private static Chain between(String data, Vector3D from, Vector3D to, boolean sameSense) {
        String text = ModelText.text("IFC4", data);
        try (StepFile file = StepFile.of("test.ifc", text.getBytes(StandardCharsets.ISO_8859_1))) {
            return new CurveReader(FINE).between(IfcModel.of(file).entity(200), from, to, sameSense);
        }
    }

    private static Chain read(String data) {
        String text = ModelText.text("IFC4", data);
        try (StepFile file = StepFile.of("test.ifc", text.getBytes(StandardCharsets.ISO_8859_1))) {
            return new CurveReader(FINE).read(IfcModel.of(file).entity(200));
        }
    }

    private static double length(Chain chain) {
        List<Vector3D> points = chain.points(FINE);
        double length = 0;
        for (int i = 1; i < points.size(); i++) {
            length += points.get(i).distance(points.get(i - 1));
        }
        return length;
    }

    /** Arcs of a circle of 500 as quarters of its girth; the two curves run the same way. */
    @ParameterizedTest
    @CsvSource({
        "500, 0, 0, 500, true, 1",
        "500, 0, 0, 500, false, 3",
        "0, 500, 500, 0, true, 3",
        "0, 500, 500, 0, false, 1",
        "0, -500, 0, 500, true, 2",
        "500, 0, 500, 0, true, 4",
        "0, 500, 0, 500, false, 4"
    })
    void an_edge_takes_the_part_of_a_closed_curve_that_its_sense_says(
            double x1, double y1, double x2, double y2, boolean sameSense, double quarters) {
        Vector3D from = Vector3D.of(x1, y1, 0);
        Vector3D to = Vector3D.of(x2, y2, 0);
        for (String curve : List.of("#200=IFCCIRCLE(#11,500.);", SPLINE_CIRCLE)) {
            Chain chain = between(curve, from, to, sameSense);
            assertThat(chain.from().distance(from)).isLessThan(1e-4);
            assertThat(chain.to().distance(to)).isLessThan(1e-4);
            assertThat(length(chain)).isEqualTo(quarters * 250 * Math.PI, within(0.2));
        }
    }

    @Test
    void an_edge_on_an_open_spline_runs_either_way() {
        String spline = "#200=IFCBSPLINECURVEWITHKNOTS(3,(#231,#232,#233,#234),.UNSPECIFIED.,.F.,.F.,(4,4),(0.,1.),"
                + ".UNSPECIFIED.);#231=IFCCARTESIANPOINT((0.,0.,0.));#232=IFCCARTESIANPOINT((100.,0.,50.));"
                + "#233=IFCCARTESIANPOINT((200.,100.,0.));#234=IFCCARTESIANPOINT((300.,100.,0.));";
        Vector3D start = Vector3D.ZERO;
        Vector3D end = Vector3D.of(300, 100, 0);
        assertThat(between(spline, end, start, false).from().distance(end)).isLessThan(1e-6);
        assertThat(length(between(spline, start, end, true)))
                .isEqualTo(length(between(spline, end, start, false)), within(1e-9));
    }

    @Test
    void an_edge_on_a_line_is_straight_whatever_the_line_starts_at() {
        Chain chain = between(
                "#200=IFCLINE(#10,#201);#201=IFCVECTOR(#12,2.);", Vector3D.of(0, 0, 7), Vector3D.of(0, 0, -3), false);
        assertThat(chain.points(FINE)).containsExactly(Vector3D.of(0, 0, 7), Vector3D.of(0, 0, -3));
    }

    /** Trims by angle in degrees or by point, with and against the curve: the length of arc that is left. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "(IFCPARAMETERVALUE(0.)),(IFCPARAMETERVALUE(90.)),.T.,.PARAMETER.|1|500,0|0,500",
                "(IFCPARAMETERVALUE(90.)),(IFCPARAMETERVALUE(0.)),.T.,.PARAMETER.|3|0,500|500,0",
                "(IFCPARAMETERVALUE(90.)),(IFCPARAMETERVALUE(0.)),.F.,.PARAMETER.|1|0,500|500,0",
                "(IFCPARAMETERVALUE(-90.)),(IFCPARAMETERVALUE(450.)),.T.,.PARAMETER.|2|0,-500|0,500",
                "(#241),(#242),.T.,.CARTESIAN.|1|500,0|0,500",
                "(#241),(#242),.F.,.CARTESIAN.|3|500,0|0,500",
                "(#241,IFCPARAMETERVALUE(5.)),(#242,IFCPARAMETERVALUE(6.)),.T.,.CARTESIAN.|1|500,0|0,500",
                "(#241,IFCPARAMETERVALUE(0.)),(#241,IFCPARAMETERVALUE(360.)),.T.,.CARTESIAN.|4|500,0|500,0"
            })
    void a_trimmed_circle_keeps_the_arc_between_its_trims(String trims, double quarters, String from, String to) {
        Chain chain = read("#200=IFCTRIMMEDCURVE(#251," + trims + ");#251=IFCCIRCLE(#11,500.);"
                + "#241=IFCCARTESIANPOINT((500.,0.,0.));#242=IFCCARTESIANPOINT((0.,500.,0.));");
        assertThat(length(chain)).isEqualTo(quarters * 250 * Math.PI, within(0.1));
        assertThat(chain.from().distance(place(from))).isLessThan(1e-9);
        assertThat(chain.to().distance(place(to))).isLessThan(1e-9);
    }

    /** The standard forbids trims of bounded curves; files have them. */
    @ParameterizedTest
    @CsvSource({"1., 2., 1", "3.5, 0.5, 1", "0.5, 3., 2.5"})
    void a_trimmed_spline_is_read_too(String from, String to, double quarters) {
        Chain chain = read(SPLINE_CIRCLE.replace("#200=", "#201=") + "#200=IFCTRIMMEDCURVE(#201,(IFCPARAMETERVALUE("
                + from + ")),(IFCPARAMETERVALUE(" + to + ")),.T.,.PARAMETER.);");
        assertThat(length(chain)).isEqualTo(quarters * 250 * Math.PI, within(0.2));
    }

    private static Vector3D place(String xy) {
        String[] c = xy.split(",", -1);
        return Vector3D.of(Double.parseDouble(c[0]), Double.parseDouble(c[1]), 0);
    }
}

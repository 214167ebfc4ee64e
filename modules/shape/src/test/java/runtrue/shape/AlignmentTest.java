package runtrue.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Bodies along alignments, millimetres. The placements of the segments follow from the formulas of setting out; the
 * volume of a body that lies evenly about its line is its section times the length of the line (Pappus).
 */
class AlignmentTest {
    private static final String SCHEMA = "IFC4X3_ADD2";

    private static final String BAR = "#211=IFCRECTANGLEPROFILEDEF(.AREA.,$,#14,100.,200.);";

    private static String along(String directrix) {
        return "#200=IFCFIXEDREFERENCESWEPTAREASOLID(#211,#11,#220,$,$,#12);" + BAR + directrix;
    }

    private static Shape.Body body(String data) {
        Shape shape = ModelText.readIn(SCHEMA, data);
        assertThat(shape).isInstanceOf(Shape.Body.class);
        return (Shape.Body) shape;
    }

    private static String segment(int id, double x, double y, double heading, double start, double length, int parent) {
        return "#%d=IFCCURVESEGMENT(.CONTSAMEGRADIENT.,#%d,IFCLENGTHMEASURE(%s),IFCLENGTHMEASURE(%s),#%d);"
                        .formatted(id, id + 1, start, length, parent)
                + "#%d=IFCAXIS2PLACEMENT2D(#%d,#%d);#%d=IFCCARTESIANPOINT((%s,%s));"
                        .formatted(id + 1, id + 2, id + 3, id + 2, x, y)
                + "#%d=IFCDIRECTION((%s,%s));".formatted(id + 3, Math.cos(heading), Math.sin(heading));
    }

    private static final String PARENTS = "#221=IFCLINE(#13,#222);#222=IFCVECTOR(#223,1.);#223=IFCDIRECTION((1.,0.));"
            + "#224=IFCCIRCLE(#14,20000.);#225=IFCCLOTHOID(#14,20000.);";

    /** Straight 10 m, clothoid of 20 m to a radius of 20 m (A = 20 m), arc of 10 m: to the left, and to the right. */
    @ParameterizedTest
    @CsvSource({"1", "-1"})
    void a_straight_a_clothoid_and_an_arc_follow_each_other(int side) {
        double t = 0.5;
        double x = 20000 * (1 - t * t / 10 + Math.pow(t, 4) / 216 - Math.pow(t, 6) / 9360);
        double y = 20000 * (t / 3 - Math.pow(t, 3) / 42 + Math.pow(t, 5) / 1320 - Math.pow(t, 7) / 75600);
        Shape.Body body = body(along("#220=IFCCOMPOSITECURVE((#240,#250,#260,#270),.F.);"
                + PARENTS.replace("IFCCLOTHOID(#14,20000.)", "IFCCLOTHOID(#14," + side * 20000 + ".)")
                + segment(240, 0, 0, 0, 0, 10000, 221)
                + segment(250, 10000, 0, 0, 0, 20000, 225)
                + segment(260, 10000 + x, side * y, side * t, 0, side * 10000, 224)
                + segment(270, 0, 0, 0, 0, 0, 221)));

        assertThat(body.closed()).isTrue();
        assertThat(UpwardPlanes.volume(body.faces())).isCloseTo(0.1 * 0.2 * 40, withinPercentage(0.01));
        // The arc turns by 0.5 rad more, about a centre 20 m to the side of its beginning.
        double endX = (10000 + x - 20000 * Math.sin(t) + 20000 * Math.sin(2 * t)) / 1000;
        double endY = (y + 20000 * Math.cos(t) - 20000 * Math.cos(2 * t)) / 1000;
        double reachX = endX + 0.1 * Math.sin(2 * t);
        double reachY = endY + 0.1 * Math.cos(2 * t);
        assertThat(Extents.of(body, 0)[1]).isCloseTo(reachX, within(1e-4));
        assertThat(side > 0 ? Extents.of(body, 1)[1] : -Extents.of(body, 1)[0]).isCloseTo(reachY, within(1e-4));
    }

    /** The same parabola as IFC writes it: level at first, y = x^2 / (2 R), R = 100 m, over 20 m of a line in plan. */
    private static final String CREST = "#220=IFCGRADIENTCURVE((#240,#280),.F.,#230,$);"
            + "#230=IFCCOMPOSITECURVE((#250),.F.);" + PARENTS + segment(250, 0, 0, 0, 0, 20000, 221)
            + "#226=IFCPOLYNOMIALCURVE(#14,(0.,1.),(0.,0.,0.000005),$);";

    @Test
    void a_gradient_lifts_its_line_in_plan() {
        // Length of y = x^2 / 2R from 0 to 10 m: (x sqrt(1 + (x/R)^2) + R asinh(x/R)) / 2.
        double ratio = 0.1;
        double arc = 50 * (ratio * Math.hypot(1, ratio) + Math.log(ratio + Math.hypot(1, ratio)));
        Shape.Body body = body(along(CREST
                + segment(240, 0, 0, 0, 0, 1000 * arc, 226)
                + segment(280, 10000, 500, Math.atan(0.1), 0, 10000 * Math.hypot(1, 0.1), 221)));

        double rest = 10 * Math.hypot(1, 0.1);
        assertThat(body.closed()).isTrue();
        assertThat(UpwardPlanes.volume(body.faces())).isCloseTo(0.1 * 0.2 * (arc + rest), withinPercentage(0.01));
        // The bar stands square to the gradient: its end leans back by half its height times the sine.
        double lean = 0.1 / Math.hypot(1, 0.1);
        assertThat(Extents.of(body, 2)[1]).isCloseTo(0.5 + 1.0 + 0.05 * lean / 0.1, within(1e-3));
    }

    @Test
    void a_bend_in_plan_climbs_with_its_gradient() {
        // A helix: a quarter of a circle of 20 m that climbs by 1 in 10.
        double plan = 20 * Math.PI / 2;
        Shape.Body body = body(along("#220=IFCGRADIENTCURVE((#240),.F.,#230,$);#230=IFCCOMPOSITECURVE((#250),.F.);"
                + PARENTS
                + segment(250, 0, 0, 0, 0, 1000 * plan, 224)
                + segment(240, 0, 0, Math.atan(0.1), 0, 1000 * plan * Math.hypot(1, 0.1), 221)));

        assertThat(UpwardPlanes.volume(body.faces()))
                .isCloseTo(0.1 * 0.2 * plan * Math.hypot(1, 0.1), withinPercentage(0.05));
        assertThat(Extents.of(body, 2)[1]).isCloseTo(0.1 * plan + 0.05, within(2e-3));
        assertThat(Extents.of(body, 1)[1]).isCloseTo(20, within(0.02));
    }

    @Test
    void sections_stand_at_distances_in_plan() {
        // 1000 to 9000 in plan on a slope of 3 in 4: 10 m along it.
        Shape.Body body = body("#200=IFCSECTIONEDSOLIDHORIZONTAL(#220,(#211,#211),(#241,#242));" + BAR
                + "#241=IFCAXIS2PLACEMENTLINEAR(#243,$,$);#242=IFCAXIS2PLACEMENTLINEAR(#244,$,$);"
                + "#243=IFCPOINTBYDISTANCEEXPRESSION(IFCLENGTHMEASURE(1000.),$,$,$,#220);"
                + "#244=IFCPOINTBYDISTANCEEXPRESSION(IFCLENGTHMEASURE(9000.),$,$,$,#220);"
                + "#220=IFCGRADIENTCURVE((#260),.F.,#230,$);#230=IFCCOMPOSITECURVE((#250),.F.);" + PARENTS
                + segment(250, 0, 0, 0, 0, 12000, 221)
                + segment(260, 0, 0, Math.atan(0.75), 0, 15000, 221));

        assertThat(UpwardPlanes.volume(body.faces())).isCloseTo(0.1 * 0.2 * 10, withinPercentage(1e-6));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "#220=IFCSEGMENTEDREFERENCECURVE((#240),.F.,#230,$);|IfcSegmentedReferenceCurve",
                "#220=IFCCOMPOSITECURVE((#240),.F.);#240=IFCCURVESEGMENT(.CONTINUOUS.,#14,IFCPARAMETERVALUE(0.),"
                        + "IFCPARAMETERVALUE(1.),#225);|by its parameter",
                "#220=IFCCOMPOSITECURVE((#240),.F.);#240=IFCCURVESEGMENT(.CONTINUOUS.,#14,IFCPARAMETERVALUE(0.),"
                        + "IFCLENGTHMEASURE(1.),#224);|starts by a parameter",
                "#220=IFCCOMPOSITECURVE((#240),.F.);#240=IFCCURVESEGMENT(.CONTINUOUS.,#14,IFCLENGTHMEASURE(0.),"
                        + "IFCLENGTHMEASURE(1.),#227);#227=IFCSINESPIRAL(#14,100.,$,$);|IfcSineSpiral"
            })
    void what_is_not_followed_is_named_with_what_to_do(String directrix, String part) {
        Shape shape = ModelText.readIn(SCHEMA, along(directrix + PARENTS));
        assertThat(shape)
                .isInstanceOfSatisfying(
                        Shape.Unread.class,
                        unread -> assertThat(unread.reason()).contains(part).contains("export"));
    }
}

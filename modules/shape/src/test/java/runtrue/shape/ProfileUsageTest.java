package runtrue.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Members that draw an axis and state a profile. The numbers of cardinal points and what is left and top are by the
 * documentation of IfcCardinalPointReference in IFC4.3: the line of sight follows the extrusion, so that left is towards
 * the profile's positive x and top towards its positive y.
 */
class ProfileUsageTest {
    private static final String ALONG_Z = "#200=IFCPOLYLINE((#10,#201));#201=IFCCARTESIANPOINT((0.,0.,3000.));";
    private static final String ALONG_X = "#200=IFCPOLYLINE((#10,#201));#201=IFCCARTESIANPOINT((4000.,0.,0.));";

    private static final String RECTANGLE = "#310=IFCRECTANGLEPROFILEDEF(.AREA.,'P',#14,100.,200.);";
    private static final String ANGLE = "#310=IFCLSHAPEPROFILEDEF(.AREA.,'P',#14,200.,100.,10.,$,$,$);";
    private static final String JOIST = "#310=IFCISHAPEPROFILEDEF(.AREA.,'P',#14,100.,200.,6.,9.,$,$,$);";

    private static final List<String> MEMBER =
            List.of("'Body','Any',(#200)", "'Axis','Curve3D',(#200)", "IFCSLAB(", "IFCMEMBER(", ".ROOF.", ".PURLIN.");

    private static String usage(String cardinal, String extent) {
        return "#300=IFCRELASSOCIATESMATERIAL('0000000000000000000300',$,$,$,(#100),#301);"
                + "#301=IFCMATERIALPROFILESETUSAGE(#302," + cardinal + "," + extent + ");"
                + "#302=IFCMATERIALPROFILESET('Set',$,(#303),$);"
                + "#303=IFCMATERIALPROFILE($,$,#305,#310,$,$);#305=IFCMATERIAL('Steel',$,$);";
    }

    private static Shape.Body body(String data) {
        return body("IFC4", data, List.of());
    }

    private static Shape.Body body(String schema, String data, List<String> more) {
        List<String> pairs = new ArrayList<>(MEMBER);
        pairs.addAll(more);
        Shape shape = ModelText.readIn(schema, data, pairs);
        assertThat(shape).isInstanceOf(Shape.Body.class);
        return (Shape.Body) shape;
    }

    private static String reason(String data) {
        Shape shape = ModelText.readIn("IFC4", data, MEMBER);
        assertThat(shape).isInstanceOf(Shape.Unread.class);
        return ((Shape.Unread) shape).reason();
    }

    /** By hand: a rectangle of 100 by 200 mm, the point on the axis at the origin; least x and y of the section, mm. */
    @ParameterizedTest
    @CsvSource({
        "1, -100, 0", "2, -50, 0", "3, 0, 0",
        "4, -100, -100", "5, -50, -100", "6, 0, -100",
        "7, -100, -200", "8, -50, -200", "9, 0, -200"
    })
    void a_point_on_the_box_lies_on_the_axis(int cardinal, double x, double y) {
        checkSection(body(ALONG_Z + RECTANGLE + usage("" + cardinal, "$")), 100 * 200, x, y);
    }

    /**
     * By hand: an angle 100 wide and 200 deep of 10 mm. Its area is 100 x 10 + 190 x 10 = 2900, its centroid (1000 x 50 +
     * 1900 x 5) / 2900 = 20.517 from the back of the long leg and (1000 x 5 + 1900 x 105) / 2900 = 70.517 from the bottom.
     */
    @ParameterizedTest
    @CsvSource({"10, -20.517, -70.517", "11, -20.517, 0", "12, -100, -70.517", "13, 0, -70.517", "14, -20.517, -200"})
    void a_point_in_line_with_the_centroid_lies_on_the_axis(int cardinal, double x, double y) {
        checkSection(body(ALONG_Z + ANGLE + usage("" + cardinal, "$")), 2900, x, y);
    }

    /** The shear centre of a section with two axes of symmetry is where they cross. */
    @ParameterizedTest
    @CsvSource({"15, -50, -100", "16, -50, 0", "17, -100, -100", "18, 0, -100", "19, -50, -200"})
    void a_point_in_line_with_the_shear_centre_of_a_joist_lies_on_the_axis(int cardinal, double x, double y) {
        checkSection(body(ALONG_Z + JOIST + usage("" + cardinal, "$")), 2 * 100 * 9 + 182 * 6, x, y);
    }

    private static void checkSection(Shape.Body body, double area, double x, double y) {
        assertThat(UpwardPlanes.volume(body.faces())).isCloseTo(area * 3000 * 1e-9, withinPercentage(1e-6));
        assertThat(Extents.of(body, 0)).containsExactly(new double[] {x / 1000, x / 1000 + 0.1}, within(1e-6));
        assertThat(Extents.of(body, 1)).containsExactly(new double[] {y / 1000, y / 1000 + 0.2}, within(1e-6));
        assertThat(Extents.of(body, 2)).containsExactly(new double[] {0, 3}, within(1e-9));
    }

    @Test
    void without_a_cardinal_point_the_profile_lies_by_its_own_origin() {
        String moved = "#310=IFCRECTANGLEPROFILEDEF(.AREA.,'P',#311,100.,200.);"
                + "#311=IFCAXIS2PLACEMENT2D(#312,$);#312=IFCCARTESIANPOINT((30.,0.));";
        checkSection(body(ALONG_Z + moved + usage("$", "$")), 100 * 200, -20, -100);
    }

    /** Looking along +x with z up, left is +y. */
    @ParameterizedTest
    @CsvSource({"7, -0.1, -0.2", "8, -0.05, -0.2", "3, 0, 0"})
    void along_another_axis_the_profile_stands_upright(int cardinal, double y, double z) {
        Shape.Body body = body(ALONG_X + RECTANGLE + usage("" + cardinal, "$"));
        assertThat(Extents.of(body, 0)).containsExactly(new double[] {0, 4}, within(1e-9));
        assertThat(Extents.of(body, 1)).containsExactly(new double[] {y, y + 0.1}, within(1e-9));
        assertThat(Extents.of(body, 2)).containsExactly(new double[] {z, z + 0.2}, within(1e-9));
        assertThat(body.sweep())
                .hasValueSatisfying(s -> assertThat(s.path().getX()).isEqualTo(4, within(1e-9)));
        assertThat(body.closed()).isTrue();
    }

    @Test
    void the_result_says_that_it_was_assumed_and_from_what() {
        Shape.Body body = body(ALONG_X + RECTANGLE + usage("8", "$"));
        assertThat(body.assumed()).isTrue();
        assertThat(body.representation()).isEqualTo("Axis/Curve3D: IfcPolyline, with IfcMaterialProfileSetUsage");
        assertThat(body.remarks())
                .singleElement()
                .asString()
                .contains("draws no body", "material usage #301", "8 (top centre)", "upright");
    }

    @ParameterizedTest
    @ValueSource(strings = {"IFC4", "IFC4X3_ADD2"})
    void both_schemas_that_have_the_usage_are_read_in_feet(String schema) {
        Shape.Body body = body(
                schema,
                ALONG_X + RECTANGLE + usage("5", "$") + "#90=IFCMEASUREWITHUNIT(IFCLENGTHMEASURE(0.3048),#91);"
                        + "#91=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);",
                List.of(
                        "#4=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.)",
                        "#4=IFCCONVERSIONBASEDUNIT(#6,.LENGTHUNIT.,'FOOT',#90)"));
        assertThat(UpwardPlanes.volume(body.faces()))
                .isCloseTo(100 * 200 * 4000 * Math.pow(0.3048, 3), withinPercentage(1e-6));
    }

    /** Pappus: the area times the way of its centroid, a quarter of a circle of 5 m. */
    @Test
    void a_curved_axis_is_followed() {
        String arc = "#200=IFCTRIMMEDCURVE(#202,(IFCPARAMETERVALUE(0.)),(IFCPARAMETERVALUE(90.)),.T.,.PARAMETER.);"
                + "#202=IFCCIRCLE(#11,5000.);";
        Shape.Body body = body(arc + RECTANGLE + usage("5", "$"));
        assertThat(UpwardPlanes.volume(body.faces())).isCloseTo(0.02 * Math.PI / 2 * 5, withinPercentage(0.1));
        assertThat(Extents.of(body, 2)).containsExactly(new double[] {-0.1, 0.1}, within(1e-9));
    }

    @Test
    void a_system_line_along_z_gives_way_to_the_extent_that_counts_from_its_beginning() {
        Shape.Body body = body(ALONG_Z + RECTANGLE + usage("5", "2500."));
        assertThat(Extents.of(body, 2)).containsExactly(new double[] {0, 2.5}, within(1e-9));
    }

    @Test
    void another_axis_is_followed_and_the_stated_extent_told() {
        Shape.Body body = body(ALONG_X + RECTANGLE + usage("5", "3500."));
        assertThat(Extents.of(body, 0)).containsExactly(new double[] {0, 4}, within(1e-9));
        assertThat(body.remarks()).anyMatch(remark -> remark.contains("3.500 m, its axis is 4.000 m"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "#200=IFCBOUNDINGBOX(#10,1.,1.,1.);|5|no Axis curve for it to follow",
                "#200=IFCPOLYLINE((#10,#10));|5|its Axis has no length",
                "#200=IFCPOLYLINE((#10,#201));#201=IFCCARTESIANPOINT((4000.,0.,0.));|77|cardinal point 77",
                "#200=IFCPOLYLINE((#10,#201));#201=IFCCARTESIANPOINT((4000.,0.,0.));|15|shear centre"
            })
    void what_is_missing_is_named(String axis, String cardinal, String part) {
        assertThat(reason(axis + ANGLE + usage(cardinal, "$")))
                .contains("none can be made of its material usage", part, "export it with its body");
    }

    private static String tapering(String cardinalAtEnd) {
        return usage("5", "$")
                        .replace(
                                "IFCMATERIALPROFILESETUSAGE(#302,5,$)",
                                "IFCMATERIALPROFILESETUSAGETAPERING(#302,5,$,#306," + cardinalAtEnd + ")")
                + "#306=IFCMATERIALPROFILESET('End',$,(#307),$);"
                + "#307=IFCMATERIALPROFILE($,$,#305,#320,$,$);"
                + "#320=IFCRECTANGLEPROFILEDEF(.AREA.,'End',#14,100.,400.);";
    }

    /** A prismatoid: 100 wide, its depth grows evenly from 200 to 400, so that the mean depth is 300. */
    @ParameterizedTest
    @CsvSource({"$, -0.2, 0.2", "8, -0.4, 0.1", "2, -0.1, 0.4"})
    void a_tapering_profile_grows_along_a_straight_axis(String cardinalAtEnd, double low, double high) {
        Shape.Body body = body(ALONG_X + RECTANGLE + tapering(cardinalAtEnd));
        assertThat(UpwardPlanes.volume(body.faces())).isCloseTo(0.1 * 0.3 * 4, withinPercentage(1e-6));
        assertThat(Extents.of(body, 2)).containsExactly(new double[] {low, high}, within(1e-9));
        assertThat(body.closed()).isTrue();
        assertThat(body.assumed()).isTrue();
    }

    @Test
    void a_profile_that_tapers_along_an_arc_is_named() {
        String arc = "#200=IFCTRIMMEDCURVE(#202,(IFCPARAMETERVALUE(0.)),(IFCPARAMETERVALUE(90.)),.T.,.PARAMETER.);"
                + "#202=IFCCIRCLE(#11,5000.);";
        assertThat(reason(arc + RECTANGLE + tapering("$"))).contains("tapers along an axis that is no straight line");
    }

    @Test
    void a_set_without_a_profile_is_named() {
        assertThat(reason(ALONG_X + ANGLE + usage("5", "$").replace("#305,#310", "#305,$")))
                .contains("its profile set #302 (IfcMaterialProfileSet) names no profile");
    }
}

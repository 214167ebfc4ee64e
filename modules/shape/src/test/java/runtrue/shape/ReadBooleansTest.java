package runtrue.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runtrue.shape.ModelText.BLOCK;
import static runtrue.shape.ModelText.body;
import static runtrue.shape.ModelText.reason;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The block is 4 by 3 by 0.2 m: x from -2 to 2, y from -1.5 to 1.5, z from 0 to 0.2. */
class ReadBooleansTest {
    private static final String PLANE_AT_X_1 = "#220=IFCPLANE(#221);#221=IFCAXIS2PLACEMENT3D(#222,#223,#12);"
            + "#222=IFCCARTESIANPOINT((1000.,0.,0.));#223=IFCDIRECTION((1.,0.,0.));";

    private static double volume(Shape.Body body) {
        assertThat(body.closed()).isTrue();
        assertThat(body.remarks()).isEmpty();
        return UpwardPlanes.volume(body.faces());
    }

    @ParameterizedTest
    @CsvSource({"DIFFERENCE, .T., 0.6", "DIFFERENCE, .F., 1.8", "INTERSECTION, .T., 1.8", "INTERSECTION, .F., 0.6"})
    void a_half_space_lies_on_the_side_that_its_agreement_says(String operator, String agreement, double volume) {
        String data = "#200=IFCBOOLEANRESULT(." + operator + ".,#210,#201);#201=IFCHALFSPACESOLID(#220," + agreement
                + ");" + PLANE_AT_X_1 + BLOCK;
        Shape.Body body = body(data);
        assertThat(volume(body)).isEqualTo(volume, within(1e-9));
        assertThat(body.sweep()).as("still one extrusion").isPresent();
    }

    @Test
    void a_boxed_half_space_is_a_half_space() {
        String data = "#200=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#210,#201);"
                + "#201=IFCBOXEDHALFSPACE(#220,.T.,#230);#230=IFCBOUNDINGBOX(#10,1.,1.,1.);";
        assertThat(volume(body(data + PLANE_AT_X_1 + BLOCK))).isEqualTo(0.6, within(1e-9));
    }

    /** Removed: x below 1 m within the boundary, a square of 1 m about its position, or a wide one. */
    @ParameterizedTest
    @CsvSource({"500., 2.2", "5000., 0.6"})
    void a_bounded_half_space_removes_only_what_its_boundary_holds(String half, double volume) {
        String data = "#200=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#210,#201);"
                + "#201=IFCPOLYGONALBOUNDEDHALFSPACE(#220,.T.,#11,#230);"
                + "#230=IFCPOLYLINE((#231,#232,#233,#234,#231));"
                + "#231=IFCCARTESIANPOINT((-H,-H));#232=IFCCARTESIANPOINT((H,-H));".replace("H", half)
                + "#233=IFCCARTESIANPOINT((H,H));#234=IFCCARTESIANPOINT((-H,H));".replace("H", half);
        assertThat(volume(body(data + PLANE_AT_X_1 + BLOCK))).isEqualTo(volume, within(1e-9));
    }

    @Test
    void solids_are_taken_off_added_and_intersected() {
        String tool = "#201=IFCBLOCK(#11,1000.,1000.,1000.);";
        for (String[] expected : new String[][] {{"DIFFERENCE", "2.2"}, {"UNION", "3.2"}, {"INTERSECTION", "0.2"}}) {
            Shape.Body body = body("#200=IFCBOOLEANRESULT(." + expected[0] + ".,#210,#201);" + tool + BLOCK);
            assertThat(volume(body)).isEqualTo(Double.parseDouble(expected[1]), within(1e-9));
        }
    }

    @Test
    void a_long_chain_of_clippings_is_walked_without_end() {
        StringBuilder data = new StringBuilder();
        for (int i = 0; i < 300; i++) {
            data.append("#").append(1000 + i).append("=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#");
            data.append(i == 299 ? 210 : 1001 + i).append(",#201);");
        }
        data.append("#200=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#1000,#201);#201=IFCHALFSPACESOLID(#220,.T.);");
        assertThat(volume(body(data + PLANE_AT_X_1 + BLOCK))).isEqualTo(0.6, within(1e-9));
    }

    @Test
    void a_boolean_that_contains_itself_is_a_reason() {
        assertThat(reason("#200=IFCBOOLEANRESULT(.DIFFERENCE.,#200,#201);#201=IFCHALFSPACESOLID(#220,.T.);"
                        + PLANE_AT_X_1))
                .contains("has itself as its operand");
        assertThat(reason("#200=IFCBOOLEANRESULT(.DIFFERENCE.,#210,#200);" + BLOCK))
                .contains("refers to itself");
    }

    @Test
    void nothing_left_is_a_reason() {
        String data = "#200=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#201,#202);"
                + "#201=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#210,#203);"
                + "#202=IFCHALFSPACESOLID(#220,.T.);#203=IFCHALFSPACESOLID(#220,.F.);";
        assertThat(reason(data + PLANE_AT_X_1 + BLOCK)).contains("Nothing is left");
    }

    @Test
    void openings_are_taken_off_in_their_own_placement() {
        Shape.Body body = body("#200=IFCEXTRUDEDAREASOLID(#211,#11,#12,200.);"
                + opening("IFCEXTRUDEDAREASOLID(#310,#11,#12,500.)", "1000.,500.,-100.")
                + "#310=IFCRECTANGLEPROFILEDEF(.AREA.,$,#14,1000.,800.);" + BLOCK);
        assertThat(volume(body)).isEqualTo((12 - 0.8) * 0.2, within(1e-9));
        assertThat(body.faces()).hasSize(10);
        assertThat(body.sweep()).isPresent();
        assertThat(body.faces())
                .filteredOn(face -> face.normal().getZ() > 0.9)
                .singleElement()
                .satisfies(top -> assertThat(top.holes()).singleElement().satisfies(hole -> {
                    assertThat(hole).allSatisfy(corner -> {
                        assertThat(corner.getX()).isBetween(0.5 - 1e-9, 1.5 + 1e-9);
                        assertThat(corner.getZ()).isEqualTo(0.2, within(1e-12));
                    });
                }));
    }

    @Test
    void an_opening_that_is_not_read_is_a_remark() {
        Shape.Body body = body(
                "#200=IFCEXTRUDEDAREASOLID(#211,#11,#12,200.);" + opening("IFCSPHERE(#11,-500.)", "0.,0.,0.") + BLOCK);
        assertThat(body.remarks()).singleElement().asString().contains("#300", "was not subtracted", "IfcSphere");
        assertThat(UpwardPlanes.volume(body.faces())).isEqualTo(2.4, within(1e-9));
    }

    private static String opening(String item, String at) {
        return "#300=IFCOPENINGELEMENT('0000000000000000000300',$,$,$,$,#301,#302,$,.OPENING.);"
                + "#301=IFCLOCALPLACEMENT(#15,#303);#303=IFCAXIS2PLACEMENT3D(#304,$,$);"
                + "#304=IFCCARTESIANPOINT((" + at + "));#302=IFCPRODUCTDEFINITIONSHAPE($,$,(#305));"
                + "#305=IFCSHAPEREPRESENTATION(#2,'Body','SweptSolid',(#306));#306=" + item + ";"
                + "#307=IFCRELVOIDSELEMENT('0000000000000000000307',$,$,$,#100,#300);";
    }
}

package runtrue.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static runtrue.shape.ModelText.BLOCK;
import static runtrue.shape.ModelText.reason;

import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnreadTest {
    private static final Pattern NAMES_WHAT_TO_DO = Pattern.compile("(?s).*\\b(export|check)\\b.*\\.");

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "#200=IFCREVOLVEDAREASOLID(#211,#11,$,1.);|IfcRevolvedAreaSolid",
                "#200=IFCSWEPTDISKSOLID(#201,1.,$,$,$);#201=IFCPOLYLINE(());|#201 (IfcPolyline) has no points",
                "#200=IFCEXTRUDEDAREASOLID(#999,#11,#12,200.);|#999",
                "#200=IFCEXTRUDEDAREASOLID(#211,#11,#12,0.);|depth of #200",
                "#200=IFCEXTRUDEDAREASOLID(#211,#11,#12,$);|#200",
                "#200=IFCEXTRUDEDAREASOLID(#211,#11,#201,200.);#201=IFCDIRECTION((1.,0.,0.));|within the plane",
                "#200=IFCEXTRUDEDAREASOLID(#211,#11,#201,200.);#201=IFCDIRECTION((0.,0.,0.));|has no length",
                "#200=IFCEXTRUDEDAREASOLID(#201,#11,#12,2.);#201=IFCRECTANGLEPROFILEDEF(.AREA.,$,#14,0.,3.);|XDim of #201",
                "#200=IFCEXTRUDEDAREASOLID(#201,#11,#12,2.);#201=IFCISHAPEPROFILEDEF(.AREA.,$,#14,10.,10.,30.,30.,$,$,$);|no area",
                "#200=IFCEXTRUDEDAREASOLID(#201,#11,#12,2.);#201=IFCCIRCLEPROFILEDEF(.AREA.,$,#14,-3.);|Radius of #201",
                "#200=IFCTRIANGULATEDFACESET(#201,$,.T.,((1,2,9)),$);#201=IFCCARTESIANPOINTLIST3D(((0.,0.,0.)));|point 2",
                "#200=IFCTRIANGULATEDFACESET(#201,$,.T.,((1,1,1)),$);#201=IFCCARTESIANPOINTLIST3D(((0.,0.,0.)));|no faces",
                "#200=IFCBOUNDINGBOX(#10,1.,1.,1.);|no body representation",
                "#200=IFCMAPPEDITEM(#201,#202);#201=IFCREPRESENTATIONMAP(#11,#203);#202=IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#10,$,$);#203=IFCSHAPEREPRESENTATION(#2,'Body','x',(#200));|refers to itself",
                "#200=IFCMAPPEDITEM(#201,#202);#201=IFCREPRESENTATIONMAP(#11,#203);#202=IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#10,0.,$);#203=IFCSHAPEREPRESENTATION(#2,'Body','x',(#210));|#202"
            })
    void what_is_not_read_has_a_reason_that_names_it(String data, String part) {
        assertThat(reason(data + BLOCK)).contains(part).matches(NAMES_WHAT_TO_DO);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "no body representation and no parts|draw it in the authoring program|''",
                "its 1 part;|name them under selectors|#300=IFCRELAGGREGATES('r',$,$,$,#100,(#301));"
                        + "#301=IFCPLATE('p',$,$,$,$,#15,$,$,.SHEET.);"
            })
    void an_element_without_representation_is_told_from_a_container_of_parts(String what, String action, String data) {
        Shape shape = ModelText.readWith("#15,#101,$,.ROOF.", "#15,$,$,.ROOF.", data);
        assertThat(shape).isInstanceOfSatisfying(Shape.Unread.class, unread -> {
            assertThat(unread.reason()).contains(what, action);
            assertThat(unread.representation()).isEmpty();
        });
    }

    @Test
    void coordinates_beyond_any_map_are_refused() {
        Shape shape = ModelText.readWith(
                "#15=IFCLOCALPLACEMENT($,#11);",
                "#15=IFCLOCALPLACEMENT($,#16);#16=IFCAXIS2PLACEMENT3D(#17,$,$);#17=IFCCARTESIANPOINT((1.E12,0.,0.));",
                "#200=IFCEXTRUDEDAREASOLID(#211,#11,#12,200.);" + BLOCK);
        assertThat(shape).isInstanceOf(Shape.Unread.class);
    }

    @Test
    void a_placement_that_hangs_on_itself_is_refused() {
        Shape shape = ModelText.readWith(
                "#15=IFCLOCALPLACEMENT($,#11);",
                "#15=IFCLOCALPLACEMENT(#15,#11);",
                "#200=IFCEXTRUDEDAREASOLID(#211,#11,#12,200.);" + BLOCK);
        assertThat(shape).isInstanceOf(Shape.Unread.class);
    }

    @Test
    void a_second_body_is_taken_when_the_first_cannot_be_read() {
        Shape shape = ModelText.readWith(
                "$,$,(#102)",
                "$,$,(#102,#103)",
                "#103=IFCSHAPEREPRESENTATION(#2,'Facetation','SweptSolid',(#210));#200=IFCSPHERE(#11,-5.);" + BLOCK);
        assertThat(shape)
                .isInstanceOfSatisfying(
                        Shape.Body.class,
                        body -> assertThat(body.representation()).startsWith("Facetation/SweptSolid"));
    }

    @ParameterizedTest
    @CsvSource({"IAI, SweptSolid, true", "'', SweptSolid, true", "Reference, SweptSolid, false", "IAI, Curve2D, false"})
    void a_representation_under_another_name_is_a_body_when_its_type_is_one(
            String identifier, String type, boolean read) {
        Shape shape = ModelText.readWith("'Body','Any',(#200)", "'" + identifier + "','" + type + "',(#210)", BLOCK);
        assertThat(shape instanceof Shape.Body).isEqualTo(read);
    }

    @Test
    void a_part_that_cannot_be_read_is_a_remark_beside_the_others() {
        Shape shape = ModelText.readWith("'Any',(#200)", "'Any',(#200,#210)", "#200=IFCSPHERE(#11,-5.);" + BLOCK);
        assertThat(shape)
                .isInstanceOfSatisfying(
                        Shape.Body.class,
                        body -> assertThat(body.remarks())
                                .singleElement()
                                .asString()
                                .contains("part of the body was not read", "IfcSphere"));
    }
}

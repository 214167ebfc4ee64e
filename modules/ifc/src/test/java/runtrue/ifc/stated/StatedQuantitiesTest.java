package runtrue.ifc.stated;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.ifc.IfcModel;
import runtrue.ifc.ModelText;

/** Factors: foot 0.3048 m and degree pi/180, as ISO 80000 gives them. */
class StatedQuantitiesTest {
    private static final String MILLIMETRES_AND_DEGREES = """
            #1=IFCPROJECT('0',$,$,$,$,$,$,(),#2);
            #2=IFCUNITASSIGNMENT((#3,#4,#5));
            #3=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);
            #4=IFCSIUNIT(*,.AREAUNIT.,$,.SQUARE_METRE.);
            #5=IFCCONVERSIONBASEDUNIT($,.PLANEANGLEUNIT.,'GRAD, or so it says',#6);
            #6=IFCMEASUREWITHUNIT(IFCPLANEANGLEMEASURE(0.0174532925199433),#7);
            #7=IFCSIUNIT(*,.PLANEANGLEUNIT.,$,.RADIAN.);
            #8=IFCSIUNIT(*,.AREAUNIT.,.MILLI.,.SQUARE_METRE.);
            #9=IFCCONVERSIONBASEDUNIT($,.AREAUNIT.,'SQUARE METRE',#10);
            #10=IFCMEASUREWITHUNIT(IFCAREAMEASURE(0.09290304),#4);
            """;

    /** As of a file whose assignment holds nothing but a length. */
    private static final String FEET_ALONE = """
            #1=IFCPROJECT('0',$,$,$,$,$,$,(),#2);
            #2=IFCUNITASSIGNMENT((#3));
            #3=IFCCONVERSIONBASEDUNIT($,.LENGTHUNIT.,'METRE',#4);
            #4=IFCMEASUREWITHUNIT(IFCLENGTHMEASURE(0.3048),#5);
            #5=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);
            """;

    private static final String SLAB = """
            #20=IFCSLAB('slab',$,$,$,$,$,$,$,.ROOF.);
            #21=IFCRELDEFINESBYPROPERTIES('r',$,$,$,(#20),#22);
            """;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "IFCQUANTITYAREA('GrossArea',$,$,82.5)          | AREA      | GROSS  | 82.5",
                "IFCQUANTITYAREA('NetArea',$,#8,1500000.)       | AREA      | NET    | 1.5",
                "IFCQUANTITYAREA('NetArea',$,#9,100.)           | AREA      | NET    | 9.290304",
                "IFCQUANTITYAREA('ProjectedArea',$,$,71.5)      | AREA      | PLAN   | 71.5",
                "IFCQUANTITYAREA('Area',$,$,3.)                 | AREA      | UNSAID | 3",
                "IFCQUANTITYLENGTH('Width',$,$,206.)            | THICKNESS | NONE   | 0.206",
            })
    void a_quantity_of_any_set_is_read_by_the_factor_of_its_unit(
            String quantity, StatedKind kind, AreaMeaning meaning, double value) {
        StatedQuantity stated = single(quantities(MILLIMETRES_AND_DEGREES, quantity));

        assertThat(stated.kind()).isEqualTo(kind);
        assertThat(stated.meaning()).isEqualTo(meaning);
        assertThat(stated.value()).isCloseTo(value, within(1e-12));
        assertThat(stated.unitStated()).isTrue();
    }

    @Test
    void an_angle_is_read_by_the_factor_whatever_its_unit_is_called() {
        StatedQuantity stated = single(
                properties(MILLIMETRES_AND_DEGREES, "Pset_SlabCommon", "PitchAngle", "IFCPLANEANGLEMEASURE(30.)"));

        assertThat(stated.kind()).isEqualTo(StatedKind.PITCH);
        assertThat(stated.value()).isCloseTo(Math.toRadians(30), within(1e-12));
        assertThat(stated.source()).isEqualTo("Pset_SlabCommon.PitchAngle");
        assertThat(stated.raw()).isEqualTo(30);
    }

    @Test
    void an_angle_in_a_file_without_an_angle_unit_is_taken_as_radians_and_says_so() {
        StatedQuantity stated =
                single(properties(FEET_ALONE, "Pset_SlabCommon", "PitchAngle", "IFCPLANEANGLEMEASURE(30.)"));

        assertThat(stated.value()).isEqualTo(30);
        assertThat(stated.unitStated()).isFalse();
    }

    @Test
    void an_area_in_a_file_without_an_area_unit_is_taken_in_squares_of_its_length_unit() {
        StatedQuantity stated = single(quantities(FEET_ALONE, "IFCQUANTITYAREA('GrossArea',$,$,100.)"));

        assertThat(stated.value()).isCloseTo(9.290304, within(1e-12));
        assertThat(stated.unitStated()).isFalse();
    }

    @Test
    void a_bare_number_has_no_unit() {
        StatedQuantity stated =
                single(properties(MILLIMETRES_AND_DEGREES, "Pset_SlabCommon", "PitchAngle", "IFCREAL(30.)"));

        assertThat(stated.unitStated()).isFalse();
        assertThat(stated.raw()).isEqualTo(30);
    }

    @ParameterizedTest
    @CsvSource({
        "Pset_RoofCommon, TotalArea, IFCAREAMEASURE(5.), TOTAL, 5",
        "Pset_RoofCommon, ProjectedArea, IFCAREAMEASURE(4.), PLAN, 4",
        "Pset_CoveringCommon, TotalThickness, IFCPOSITIVELENGTHMEASURE(120.), NONE, 0.12",
    })
    void properties_of_the_standard_sets_are_read(
            String set, String name, String value, AreaMeaning meaning, double si) {
        StatedQuantity stated = single(properties(MILLIMETRES_AND_DEGREES, set, name, value));

        assertThat(stated.meaning()).isEqualTo(meaning);
        assertThat(stated.value()).isCloseTo(si, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({
        "Our own, TotalArea, IFCAREAMEASURE(5.)",
        "Pset_SlabCommon, PitchAngle, IFCLABEL('steep')",
        "Pset_SlabCommon, PitchAngle, $",
        "Pset_SlabCommon, Reference, IFCIDENTIFIER('12')",
    })
    void what_is_no_such_quantity_is_left_alone(String set, String name, String value) {
        assertThat(properties(MILLIMETRES_AND_DEGREES, set, name, value)).isEmpty();
    }

    @Test
    void layers_with_a_thickness_each_state_the_thickness_together() {
        IfcModel model = ModelText.model("IFC2X3", MILLIMETRES_AND_DEGREES + """
                        #20=IFCSLAB('slab',$,$,$,$,$,$,$,.ROOF.);
                        #30=IFCRELASSOCIATESMATERIAL('m',$,$,$,(#20),#31);
                        #31=IFCMATERIALLAYERSET((#32,#33),$);
                        #32=IFCMATERIALLAYER(#34,100.,$);
                        #33=IFCMATERIALLAYER(#34,60.,$);
                        #34=IFCMATERIAL('wool');
                        """);

        StatedQuantity stated = single(StatedQuantities.ofRoof(model.describe(model.entity(20)), model.units()));

        assertThat(stated.source()).isEqualTo(StatedQuantities.MATERIAL_LAYERS);
        assertThat(stated.value()).isCloseTo(0.16, within(1e-12));
    }

    @Test
    void of_a_member_length_and_slope_are_read() {
        IfcModel model = ModelText.model("IFC4", MILLIMETRES_AND_DEGREES + """
                        #20=IFCMEMBER('m',$,$,$,$,$,$,$,.PURLIN.);
                        #21=IFCRELDEFINESBYPROPERTIES('r',$,$,$,(#20),#22);
                        #22=IFCELEMENTQUANTITY('q',$,'Qto_MemberBaseQuantities',$,$,(#23,#24));
                        #23=IFCQUANTITYLENGTH('Length',$,$,6000.,$);
                        #24=IFCQUANTITYAREA('NetArea',$,$,1.,$);
                        #25=IFCRELDEFINESBYPROPERTIES('r2',$,$,$,(#20),#26);
                        #26=IFCPROPERTYSET('p',$,'Pset_MemberCommon',$,(#27,#28));
                        #27=IFCPROPERTYSINGLEVALUE('Slope',$,IFCPLANEANGLEMEASURE(5.),$);
                        #28=IFCPROPERTYSINGLEVALUE('Span',$,IFCPOSITIVELENGTHMEASURE(5500.),$);
                        """);

        assertThat(StatedQuantities.ofMember(model.describe(model.entity(20)), model.units()))
                .extracting(StatedQuantity::kind)
                .containsExactlyInAnyOrder(StatedKind.LENGTH, StatedKind.PITCH);
    }

    private static List<StatedQuantity> quantities(String units, String quantity) {
        return stated(units + SLAB + "#22=IFCELEMENTQUANTITY('q',$,'Any name',$,$,(#23));\n#23=" + quantity + ";");
    }

    private static List<StatedQuantity> properties(String units, String set, String name, String value) {
        return stated(units + SLAB + "#22=IFCPROPERTYSET('p',$,'" + set + "',$,(#23));\n#23=IFCPROPERTYSINGLEVALUE('"
                + name + "',$," + value + ",$);");
    }

    private static List<StatedQuantity> stated(String data) {
        IfcModel model = ModelText.model("IFC2X3", data);
        return StatedQuantities.ofRoof(model.describe(model.entity(20)), model.units());
    }

    private static StatedQuantity single(List<StatedQuantity> stated) {
        assertThat(stated).hasSize(1);
        return stated.get(0);
    }
}

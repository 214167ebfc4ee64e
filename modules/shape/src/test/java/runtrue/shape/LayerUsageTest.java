package runtrue.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Slabs that draw a foot print and state layers. Where the layers lie is by the definition of IfcMaterialLayerSetUsage in
 * the documentation of IFC4.3 (attributes DirectionSense and OffsetFromReferenceLine, figure 2); volumes are area times
 * thickness. The foot print is an L of 4 by 3 m less 1 by 1 m.
 */
class LayerUsageTest {
    private static final String OUTLINE = "#200=IFCPOLYLINE((#201,#202,#203,#204,#205,#206,#201));"
            + "#201=IFCCARTESIANPOINT((0.,0.));#202=IFCCARTESIANPOINT((4000.,0.));"
            + "#203=IFCCARTESIANPOINT((4000.,2000.));#204=IFCCARTESIANPOINT((3000.,2000.));"
            + "#205=IFCCARTESIANPOINT((3000.,3000.));#206=IFCCARTESIANPOINT((0.,3000.));";

    private static final double AREA = 11;

    private static final List<String> FOOT_PRINT = List.of("'Body','Any',(#200)", "'FootPrint','Curve2D',(#200)");

    private static String layers(String schema, String direction, String sense, double offset) {
        boolean early = schema.equals("IFC2X3");
        return "#300=IFCRELASSOCIATESMATERIAL('0000000000000000000300',$,$,$,(#100),#301);"
                + "#301=IFCMATERIALLAYERSETUSAGE(#302,." + direction + ".,." + sense + ".," + offset
                + (early ? ");" : ",$);")
                + "#302=IFCMATERIALLAYERSET((#303,#304),'Panel'" + (early ? ");" : ",$);")
                + "#303=IFCMATERIALLAYER(#305,120.,$" + (early ? ");" : ",$,$,$,$);")
                + "#304=IFCMATERIALLAYER($,80.,$" + (early ? ");" : ",$,$,$,$);")
                + "#305=IFCMATERIAL('Wool'" + (early ? ");" : ",$,$);");
    }

    private static Shape read(String data) {
        return ModelText.readIn("IFC4", data, FOOT_PRINT);
    }

    private static Shape.Body body(Shape shape) {
        assertThat(shape).isInstanceOf(Shape.Body.class);
        return (Shape.Body) shape;
    }

    private static String reason(Shape shape) {
        assertThat(shape).isInstanceOf(Shape.Unread.class);
        return ((Shape.Unread) shape).reason();
    }

    @ParameterizedTest
    @CsvSource({
        "IFC2X3, POSITIVE, 0, 0, 0.2",
        "IFC2X3, NEGATIVE, 50, -0.15, 0.05",
        "IFC4, POSITIVE, 50, 0.05, 0.25",
        "IFC4, NEGATIVE, 0, -0.2, 0",
        "IFC4X3_ADD2, POSITIVE, -50, -0.05, 0.15",
        "IFC4X3_ADD2, NEGATIVE, -50, -0.25, -0.05"
    })
    void a_foot_print_is_as_thick_as_its_layers_from_their_base_in_their_sense(
            String schema, String sense, double offset, double low, double high) {
        Shape.Body body = body(ModelText.readIn(schema, OUTLINE + layers(schema, "AXIS3", sense, offset), FOOT_PRINT));
        assertThat(UpwardPlanes.volume(body.faces())).isEqualTo(AREA * 0.2, within(1e-9));
        assertThat(Extents.of(body, 2)).containsExactly(new double[] {low, high}, within(1e-9));
        assertThat(body.closed()).isTrue();
    }

    @Test
    void the_result_says_that_it_was_assumed_and_from_what() {
        Shape.Body body = body(read(OUTLINE + layers("IFC4", "AXIS3", "NEGATIVE", 50)));
        assertThat(body.assumed()).isTrue();
        assertThat(body.representation()).isEqualTo("FootPrint/Curve2D: IfcPolyline, with IfcMaterialLayerSetUsage");
        assertThat(body.remarks())
                .singleElement()
                .asString()
                .contains("draws no body", "assumed from its material usage #301", "200.0 mm", "below", "+50.0 mm");
    }

    /** A foot of 0.3048 m by the conversion factor; the name is not looked at. */
    @ParameterizedTest
    @CsvSource({"0.3048, 'FOOT'", "0.0254, 'Zoll'", "1, 'METRE'"})
    void lengths_are_in_the_units_of_the_file(double unit, String name) {
        Shape.Body body = body(ModelText.readIn(
                "IFC4",
                OUTLINE + layers("IFC4", "AXIS3", "POSITIVE", 0)
                        + "#90=IFCMEASUREWITHUNIT(IFCLENGTHMEASURE(" + unit + "),#91);"
                        + "#91=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);",
                List.of(
                        FOOT_PRINT.get(0),
                        FOOT_PRINT.get(1),
                        "#4=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.)",
                        "#4=IFCCONVERSIONBASEDUNIT(#6,.LENGTHUNIT.,'" + name + "',#90)")));
        double cube = Math.pow(1000 * unit, 3);
        assertThat(UpwardPlanes.volume(body.faces())).isEqualTo(AREA * 0.2 * cube, within(1e-9 * cube));
    }

    @Test
    void curves_within_the_foot_print_are_holes_of_it() {
        String set = OUTLINE.replace("#200=", "#210=")
                + "#200=IFCGEOMETRICCURVESET((#210,#211));#211=IFCCIRCLE(#212,500.);"
                + "#212=IFCAXIS2PLACEMENT2D(#213,$);#213=IFCCARTESIANPOINT((1500.,1500.));";
        Shape.Body body = body(read(set + layers("IFC4", "AXIS3", "POSITIVE", 0)));
        assertThat(UpwardPlanes.volume(body.faces())).isEqualTo(0.2 * (AREA - Math.PI * 0.25), within(2e-3));
    }

    @Test
    void a_drawn_body_goes_before_all_that_is_stated() {
        Shape.Body body = body(ModelText.read("#200=IFCEXTRUDEDAREASOLID(#211,#11,#12,200.);" + ModelText.BLOCK
                + layers("IFC4", "AXIS3", "POSITIVE", 0)));
        assertThat(body.assumed()).isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "AXIS2|120.|#200=IFCPOLYLINE((#201,#202,#203,#201));|stacked along AXIS2, not along AXIS3",
                "AXIS3|-120.|#200=IFCPOLYLINE((#201,#202,#203,#201));|#303 (IfcMaterialLayer) has a negative thickness",
                "AXIS3|120.|#200=IFCPOLYLINE((#201,#202,#203));|none of its curves (FootPrint/Curve2D: IfcPolyline) closes",
                "AXIS3|120.|#200=IFCPOLYLINE((#201,#202,#209,#201));#209=IFCCARTESIANPOINT((0.,9.,500.));|does not lie parallel",
                "AXIS3|120.|#200=IFCBOUNDINGBOX(#10,1.,1.,1.);|there is no FootPrint curve to lay them on"
            })
    void what_is_missing_is_named(String direction, String thickness, String curve, String part) {
        String data = layers("IFC4", direction, "POSITIVE", 0).replace("120.", thickness);
        assertThat(reason(read(curve + OUTLINE.replace("#200=", "#299=") + data)))
                .contains("none can be made of its material usage", part, "export it with its body");
    }

    @Test
    void without_a_usage_the_reason_says_that_there_is_none() {
        assertThat(reason(read(OUTLINE))).contains("only FootPrint/Curve2D", "no material layer or profile set usage");
    }
}

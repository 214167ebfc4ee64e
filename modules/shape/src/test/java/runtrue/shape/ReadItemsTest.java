package runtrue.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runtrue.shape.ModelText.BLOCK;
import static runtrue.shape.ModelText.body;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReadItemsTest {
    private static double volume(Shape.Body body) {
        assertThat(body.closed()).isTrue();
        return UpwardPlanes.volume(body.faces());
    }

    @Test
    void an_extrusion_comes_in_metres_with_its_sweep_and_its_label() {
        Shape.Body body = body("#200=IFCEXTRUDEDAREASOLID(#211,#11,#12,200.);" + BLOCK);
        assertThat(volume(body)).isEqualTo(4 * 3 * 0.2, within(1e-12));
        assertThat(body.faces()).hasSize(6);
        assertThat(body.representation()).isEqualTo("Body/Any: IfcExtrudedAreaSolid");
        assertThat(body.sweep()).hasValueSatisfying(sweep -> {
            assertThat(sweep.profileName()).isEqualTo("R");
            assertThat(sweep.section()).hasSize(4);
            assertThat(sweep.path().getZ()).isEqualTo(0.2, within(1e-12));
        });
    }

    @Test
    void an_extrusion_needs_no_position() {
        assertThat(volume(body("#200=IFCEXTRUDEDAREASOLID(#211,$,#12,200.);" + BLOCK)))
                .isEqualTo(2.4, within(1e-12));
    }

    @Test
    void a_placement_far_away_loses_no_digits_when_the_origin_is_taken_off() {
        String far = "#15=IFCLOCALPLACEMENT($,#16);\n#16=IFCAXIS2PLACEMENT3D(#17,$,$);\n"
                + "#17=IFCCARTESIANPOINT((350000000.,6200000000.,125000.));";
        String data = "#200=IFCEXTRUDEDAREASOLID(#211,#11,#12,200.);" + BLOCK;
        Shape.Body body = (Shape.Body) ModelText.readWith("#15=IFCLOCALPLACEMENT($,#11);", far, data);
        assertThat(volume(body)).isEqualTo(2.4, within(1e-6));
        assertThat(body.faces().get(0).outline().get(0).getY()).isEqualTo(6_200_000, within(2.0));
    }

    /** Areas worked out by hand, in mm2. The arcs' areas are those of regular polygons within the chord tolerance. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "IFCRECTANGLEHOLLOWPROFILEDEF(.AREA.,$,#14,200.,100.,10.,$,$)|5600|0",
                "IFCISHAPEPROFILEDEF(.AREA.,$,#14,100.,200.,5.6,8.5,12.,$,$)|2724.8|0",
                "IFCLSHAPEPROFILEDEF(.AREA.,$,#14,100.,$,10.,$,$,$)|1900|0",
                "IFCUSHAPEPROFILEDEF(.AREA.,$,#14,200.,80.,6.,9.,$,$,$)|2532|0",
                "IFCTSHAPEPROFILEDEF(.AREA.,$,#14,130.,120.,8.,10.,$,$,$,$,$)|2160|0",
                "IFCCSHAPEPROFILEDEF(.AREA.,$,#14,200.,65.,2.,20.,$)|724|0",
                "IFCZSHAPEPROFILEDEF(.AREA.,$,#14,200.,70.,2.,2.,$,$)|672|0",
                "IFCTRAPEZIUMPROFILEDEF(.AREA.,$,#14,600.,400.,300.,100.)|150000|0",
                "IFCASYMMETRICISHAPEPROFILEDEF(.AREA.,$,#14,200.,300.,6.,10.,$,100.,8.,$,$,$,$,$)|4492|0",
                "IFCROUNDEDRECTANGLEPROFILEDEF(.AREA.,$,#14,200.,100.,20.)|19656.6|60",
                "IFCCIRCLEPROFILEDEF(.AREA.,$,#14,500.)|785398|4200",
                "IFCCIRCLEHOLLOWPROFILEDEF(.AREA.,$,#14,500.,100.)|282743|1600",
                "IFCELLIPSEPROFILEDEF(.AREA.,$,#14,500.,250.)|392699|2100"
            })
    void profiles_have_their_area(String profile, double area, double slack) {
        Shape.Body body = body("#200=IFCEXTRUDEDAREASOLID(#211,#11,#12,1000.);#211=" + profile + ";");
        assertThat(volume(body)).isEqualTo(area * 1e-6, within(slack * 1e-6 + 1e-9));
        assertThat(volume(body)).isLessThanOrEqualTo(area * 1e-6 + 1e-9);
    }

    /** A stadium: a rectangle of 2000 by 1000 with half circles of radius 500 at its ends. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "#212=IFCINDEXEDPOLYCURVE(#213,(IFCLINEINDEX((1,2)),IFCARCINDEX((2,3,4)),IFCLINEINDEX((4,5)),"
                        + "IFCARCINDEX((5,6,1))),.F.);#213=IFCCARTESIANPOINTLIST2D(((0.,0.),(2000.,0.),(2500.,500.),"
                        + "(2000.,1000.),(0.,1000.),(-500.,500.)));",
                "#212=IFCCOMPOSITECURVE((#221,#222,#223,#224),.F.);"
                        + "#221=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,#231);#231=IFCPOLYLINE((#241,#242));"
                        + "#222=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,#232);"
                        + "#232=IFCTRIMMEDCURVE(#251,(IFCPARAMETERVALUE(-90.)),(IFCPARAMETERVALUE(90.)),.T.,.PARAMETER.);"
                        + "#223=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.F.,#233);#233=IFCPOLYLINE((#244,#243));"
                        + "#224=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.F.,#234);"
                        + "#234=IFCTRIMMEDCURVE(#252,(#241),(#244),.F.,.CARTESIAN.);"
                        + "#241=IFCCARTESIANPOINT((0.,0.));#242=IFCCARTESIANPOINT((2000.,0.));"
                        + "#243=IFCCARTESIANPOINT((2000.,1000.));#244=IFCCARTESIANPOINT((0.,1000.));"
                        + "#251=IFCCIRCLE(#253,500.);#252=IFCCIRCLE(#254,500.);"
                        + "#253=IFCAXIS2PLACEMENT2D(#255,$);#254=IFCAXIS2PLACEMENT2D(#256,$);"
                        + "#255=IFCCARTESIANPOINT((2000.,500.));#256=IFCCARTESIANPOINT((0.,500.));"
            })
    void curves_of_lines_and_arcs_enclose_their_area(String curve) {
        String data = "#200=IFCEXTRUDEDAREASOLID(#211,#11,#12,1000.);"
                + "#211=IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#212);" + curve;
        double exact = 2 + Math.PI * 0.25;
        double chordLoss = Math.PI * 0.002;
        assertThat(volume(body(data))).isBetween(exact - chordLoss, exact);
    }

    @Test
    void a_profile_with_voids_has_holes() {
        Shape.Body body = body("#200=IFCEXTRUDEDAREASOLID(#211,#11,#12,1000.);"
                + "#211=IFCARBITRARYPROFILEDEFWITHVOIDS(.AREA.,$,#212,(#213));"
                + "#212=IFCPOLYLINE((#221,#222,#223,#224,#221));#213=IFCCIRCLE(#14,100.);"
                + "#221=IFCCARTESIANPOINT((-500.,-500.));#222=IFCCARTESIANPOINT((500.,-500.));"
                + "#223=IFCCARTESIANPOINT((500.,500.));#224=IFCCARTESIANPOINT((-500.,500.));");
        assertThat(volume(body)).isEqualTo(1 - Math.PI * 0.01, within(0.0015));
        assertThat(body.faces().get(0).holes()).hasSize(1);
    }

    /** The third axis against the right hand mirrors; three scales stretch the block unevenly. */
    @ParameterizedTest
    @CsvSource({"1., 1., 1., 1, 1", "-1., 1., 1., 1, 1", "1., 2., 0.5, 3., 3", "-1., 2., 1., 1., 2"})
    void mapped_items_keep_outward_normals_under_mirroring_and_uneven_scale(
            String axis3, String sx, String sy, String sz, double factor) {
        String data = "#200=IFCMAPPEDITEM(#201,#202);#201=IFCREPRESENTATIONMAP(#11,#203);"
                + "#203=IFCSHAPEREPRESENTATION(#2,'Body','SweptSolid',(#210));"
                + "#202=IFCCARTESIANTRANSFORMATIONOPERATOR3DNONUNIFORM(#204,#205,#10," + sx + ",#206," + sy + "," + sz
                + ");#204=IFCDIRECTION((1.,0.,0.));#205=IFCDIRECTION((0.,1.,0.));#206=IFCDIRECTION((0.,0.," + axis3
                + "));";
        assertThat(volume(body(data + BLOCK))).isEqualTo(2.4 * factor, within(1e-9));
    }

    @Test
    void a_mirroring_axis_turns_the_map_and_keeps_the_sweep() {
        String data = "#200=IFCMAPPEDITEM(#201,#202);#201=IFCREPRESENTATIONMAP(#11,#203);"
                + "#203=IFCSHAPEREPRESENTATION(#2,'Body','SweptSolid',(#210));"
                + "#202=IFCCARTESIANTRANSFORMATIONOPERATOR3D(#204,#205,#10,1.,#206);"
                + "#204=IFCDIRECTION((1.,0.,0.));#205=IFCDIRECTION((0.,1.,0.));#206=IFCDIRECTION((0.,0.,-1.));";
        Shape.Body body = body(data + BLOCK);
        assertThat(volume(body)).isEqualTo(2.4, within(1e-9));
        assertThat(body.sweep().orElseThrow().path().getZ()).isEqualTo(-0.2, within(1e-12));
    }

    @Test
    void a_derived_profile_may_mirror() {
        String data = "#200=IFCEXTRUDEDAREASOLID(#211,#11,#12,1000.);"
                + "#211=IFCMIRROREDPROFILEDEF(.AREA.,'M',#212,*,$);"
                + "#212=IFCLSHAPEPROFILEDEF(.AREA.,$,#14,100.,60.,10.,$,$,$);";
        Shape.Body body = body(data);
        assertThat(volume(body)).isEqualTo(1500e-6, within(1e-12));
        assertThat(body.sweep().orElseThrow().section()).anySatisfy(corner -> {
            assertThat(corner.eq(Vector3D.of(0.03, -0.05, 0), precision())).isTrue();
        });
    }

    @Test
    void triangles_with_an_index_of_points_are_merged_into_faces() {
        Shape.Body body = body("#200=IFCTRIANGULATEDFACESET(#201,$,.T.,((1,3,2),(1,2,4),(2,3,4),(3,1,4)),(4,3,2,1));"
                + "#201=IFCCARTESIANPOINTLIST3D(((0.,0.,3000.),(0.,3000.,0.),(3000.,0.,0.),(0.,0.,0.)));");
        assertThat(volume(body)).isEqualTo(4.5, within(1e-9));
        assertThat(body.faces()).hasSize(4);
    }

    @Test
    void polygons_with_voids_have_holes() {
        Shape.Body body = body("#200=IFCPOLYGONALFACESET(#201,.F.,(#202),$);"
                + "#202=IFCINDEXEDPOLYGONALFACEWITHVOIDS((1,2,3,4),((5,6,7,8)));"
                + "#201=IFCCARTESIANPOINTLIST3D(((0.,0.,0.),(3000.,0.,0.),(3000.,3000.,0.),(0.,3000.,0.),"
                + "(1000.,1000.,0.),(2000.,1000.,0.),(2000.,2000.,0.),(1000.,2000.,0.)));");
        assertThat(body.closed()).isFalse();
        assertThat(body.faces()).singleElement().satisfies(face -> {
            assertThat(face.holes()).hasSize(1);
            assertThat(UpwardPlanes.area(face)).isEqualTo(8, within(1e-12));
        });
    }

    private static org.apache.commons.numbers.core.Precision.DoubleEquivalence precision() {
        return org.apache.commons.numbers.core.Precision.doubleEquivalenceOfEpsilon(1e-9);
    }
}

package runtrue.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runtrue.shape.ModelText.body;
import static runtrue.shape.ModelText.reason;

import java.util.Collections;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Swept bodies and primitives against the formulas of solid geometry. What chords leave out is bounded by the chord
 * tolerance: a body is no greater than its formula and no smaller than that of one whose radii are less by the tolerance.
 */
class ReadSweepsTest {
    private static final double CHORD = Tolerances.standard().chord();
    private static final String DISK = "#211=IFCCIRCLEPROFILEDEF(.AREA.,$,#215,100.);"
            + "#215=IFCAXIS2PLACEMENT2D(#216,$);#216=IFCCARTESIANPOINT((1000.,0.));";
    private static final String RECTANGLE = "#211=IFCRECTANGLEPROFILEDEF(.AREA.,'R',#14,200.,100.);";
    private static final String AXIS = "#213=IFCAXIS1PLACEMENT(#10,#214);#214=IFCDIRECTION((0.,1.,0.));";

    private static double volume(Shape.Body body) {
        assertThat(body.closed()).isTrue();
        return UpwardPlanes.volume(body.faces());
    }

    private static double area(Shape.Body body) {
        return body.faces().stream().mapToDouble(UpwardPlanes::area).sum();
    }

    /** Pappus and Guldin: volume is area, and surface is girth, times the way of the centroid. */
    @ParameterizedTest
    @ValueSource(doubles = {30, 90, 200, 360})
    void a_torus_segment_is_what_pappus_says(double degrees) {
        Shape.Body torus = body("#200=IFCREVOLVEDAREASOLID(#211,#11,#213," + degrees + ");" + AXIS + DISK);
        double way = Math.toRadians(degrees);
        double exact = way * Math.PI * 0.01;
        assertThat(volume(torus)).isBetween(exact * Math.pow((0.1 - CHORD) / 0.1, 2) * (1 - CHORD), exact);
        double skin = way * 2 * Math.PI * 0.1 + (degrees == 360 ? 0 : 2 * Math.PI * 0.01);
        assertThat(area(torus)).isBetween(skin * (1 - CHORD / 0.1), skin);
    }

    /** Between two planes through the axis, straight lines enclose sin(a)/a of what arcs do, whatever the section. */
    @Test
    void a_turned_rectangle_has_exactly_the_volume_of_its_wedges() {
        Shape.Body turned = body("#200=IFCREVOLVEDAREASOLID(#211,#11,#213,90.);" + AXIS
                + RECTANGLE.replace("#14", "#215") + "#215=IFCAXIS2PLACEMENT2D(#216,$);"
                + "#216=IFCCARTESIANPOINT((1000.,0.));");
        int wedges = (turned.faces().size() - 4) / 2;
        double a = Math.PI / 2 / wedges;
        assertThat(volume(turned)).isEqualTo(Math.PI / 2 * 0.02 * Math.sin(a) / a, within(1e-12));
        assertThat(1.1 * (1 - Math.cos(a / 2))).isLessThanOrEqualTo(CHORD);
    }

    @Test
    void a_profile_that_touches_its_axis_makes_a_full_body() {
        Shape.Body cylinder = body("#200=IFCREVOLVEDAREASOLID(#211,#11,#213,360.);" + AXIS
                + RECTANGLE.replace("#14", "#215") + "#215=IFCAXIS2PLACEMENT2D(#216,$);"
                + "#216=IFCCARTESIANPOINT((100.,0.));");
        double exact = Math.PI * 0.04 * 0.1;
        assertThat(volume(cylinder)).isBetween(exact * (1 - 2 * CHORD / 0.2), exact);
    }

    @Test
    void an_axis_through_the_profile_is_refused() {
        assertThat(reason("#200=IFCREVOLVEDAREASOLID(#211,#11,#213,90.);" + AXIS + RECTANGLE))
                .contains("#200", "runs through its profile");
    }

    private static final String ELBOW = "#221=IFCINDEXEDPOLYCURVE(#222,(IFCLINEINDEX((1,2)),IFCARCINDEX((2,3,4)),"
            + "IFCLINEINDEX((4,5))),.F.);#222=IFCCARTESIANPOINTLIST3D(((0.,0.,0.),(1000.,0.,0.),"
            + "(1353.5533905932738,146.4466094067262,0.),(1500.,500.,0.),(1500.,1500.,0.)));";

    @Test
    void a_pipe_elbow_has_the_volume_of_its_centre_line() {
        Shape.Body pipe = body("#200=IFCSWEPTDISKSOLID(#221,100.,80.,$,$);" + ELBOW);
        double length = 2 + Math.PI / 2 * 0.5;
        double wall = Math.PI * (0.1 * 0.1 - 0.08 * 0.08) * length;
        double tolerance = 2 * Math.PI * 0.1 * CHORD * length;
        assertThat(volume(pipe)).isEqualTo(wall, within(tolerance));
        assertThat(area(pipe)).isEqualTo(2 * Math.PI * 0.18 * length + 2 * wall / length, within(0.02 * 2.3));
    }

    /** Cut by planes through its axis, a pipe keeps section times length of its axis: so do two that meet in a mitre. */
    @ParameterizedTest
    @CsvSource({"1000., 1000., 0.", "2000., 1500., 300.", "300., 800., -900."})
    void a_mitred_pipe_has_the_volume_of_a_straight_one_as_long(String x, String y, String z) {
        String bent = "#221=IFCPOLYLINE((#10,#231,#232));#231=IFCCARTESIANPOINT((1000.,0.,0.));"
                + "#232=IFCCARTESIANPOINT((" + x + "," + y + "," + z + "));";
        double second =
                Math.hypot(Math.hypot(Double.parseDouble(x) - 1000, Double.parseDouble(y)), Double.parseDouble(z));
        String straight = "#221=IFCPOLYLINE((#10,#231));#231=IFCCARTESIANPOINT((" + (1000 + second) + ",0.,0.));";
        String disk = "#200=IFCSWEPTDISKSOLID(#221,50.,$,$,$);";
        assertThat(volume(body(disk + bent))).isEqualTo(volume(body(disk + straight)), within(1e-9));
    }

    @Test
    void a_straight_pipe_tells_its_sweep() {
        Shape.Body pipe = body("#200=IFCSWEPTDISKSOLID(#221,50.,$,$,$);#221=IFCPOLYLINE((#10,#231));"
                + "#231=IFCCARTESIANPOINT((3000.,0.,4000.));");
        assertThat(pipe.sweep()).hasValueSatisfying(sweep -> {
            assertThat(sweep.path().distance(Vector3D.of(3, 0, 4))).isLessThan(1e-12);
            assertThat(sweep.profileName()).isEqualTo("IfcSweptDiskSolid");
            assertThat(sweep.section()).allSatisfy(p -> assertThat(p.norm()).isEqualTo(0.05, within(1e-12)));
        });
    }

    @Test
    void a_ring_of_pipe_closes_upon_itself_with_a_void_inside() {
        Shape.Body ring = body("#200=IFCSWEPTDISKSOLID(#221,100.,50.,$,$);#221=IFCCIRCLE(#11,1000.);");
        double exact = 2 * Math.PI * Math.PI * (0.01 - 0.0025);
        assertThat(volume(ring)).isEqualTo(exact, within(2 * Math.PI * 2 * Math.PI * 0.15 * CHORD));
    }

    @Test
    void a_closed_way_in_space_comes_back_without_a_twist() {
        Shape.Body ring = body("#200=IFCSWEPTDISKSOLID(#221,50.,$,$,$);"
                + "#221=IFCPOLYLINE((#231,#232,#233,#234,#231));#231=IFCCARTESIANPOINT((0.,0.,0.));"
                + "#232=IFCCARTESIANPOINT((2000.,0.,500.));#233=IFCCARTESIANPOINT((2000.,2000.,0.));"
                + "#234=IFCCARTESIANPOINT((0.,2000.,500.));");
        double length = 4 * Math.hypot(2, 0.5);
        assertThat(volume(ring)).isEqualTo(Math.PI * 0.0025 * length, within(0.06 * Math.PI * 0.0025 * length));
    }

    /** At a corner the outer side gains what the inner one loses, when the profile lies evenly about its way. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "#200=IFCFIXEDREFERENCESWEPTAREASOLID(#211,#11,#221,$,$,#12);",
                "#200=IFCSURFACECURVESWEPTAREASOLID(#211,#11,#221,$,$,#222);#222=IFCPLANE(#11);",
                "#200=IFCSURFACECURVESWEPTAREASOLID(#211,#11,#221,$,$,#222);"
                        + "#222=IFCSURFACEOFLINEAREXTRUSION(#223,#11,#12,1000.);"
                        + "#223=IFCARBITRARYOPENPROFILEDEF(.CURVE.,$,#226);#226=IFCPOLYLINE((#228,#229));"
                        + "#228=IFCCARTESIANPOINT((-9000.,0.));#229=IFCCARTESIANPOINT((9000.,0.));"
            })
    void a_moulding_meets_in_mitres_and_keeps_its_section(String sweep) {
        String way = sweep.contains("EXTRUSION")
                ? "#231=IFCCARTESIANPOINT((2000.,0.,0.));#232=IFCCARTESIANPOINT((2000.,0.,1000.));"
                : "#231=IFCCARTESIANPOINT((2000.,0.,0.));#232=IFCCARTESIANPOINT((2000.,1000.,0.));";
        Shape.Body moulding = body(sweep + "#221=IFCPOLYLINE((#10,#231,#232));" + way + RECTANGLE);
        assertThat(volume(moulding)).isEqualTo(0.02 * 3, within(1e-9));
        assertThat(moulding.faces()).hasSize(8);
    }

    @Test
    void the_profile_stands_with_its_x_axis_on_the_surface_and_its_y_to_the_right_of_the_way() {
        Shape.Body moulding = body("#200=IFCSURFACECURVESWEPTAREASOLID(#211,#11,#221,$,$,#222);#222=IFCPLANE(#11);"
                + "#221=IFCPOLYLINE((#10,#231));#231=IFCCARTESIANPOINT((2000.,0.,0.));"
                + "#211=IFCRECTANGLEPROFILEDEF(.AREA.,'R',#215,200.,100.);#215=IFCAXIS2PLACEMENT2D(#216,$);"
                + "#216=IFCCARTESIANPOINT((100.,50.));");
        assertThat(moulding.faces())
                .allSatisfy(face -> assertThat(face.outline()).allSatisfy(p -> {
                    assertThat(p.getZ()).isBetween(-1e-12, 0.2 + 1e-12);
                    assertThat(p.getY()).isBetween(-0.1 - 1e-12, 1e-12);
                }));
    }

    /** Parameters of a polyline count its lengths; 0 to 1, whatever the curve, is how files state the whole. */
    @ParameterizedTest
    @CsvSource({
        "0., 2., 3, 0",
        "$, $, 3, 0",
        "0., 1., 3, 1",
        "0.5, 1.5, 1.5, 0",
        "0., 3000., 3, 0",
        "0., 777., 3, 1",
        "IFCLENGTHMEASURE(500.), IFCLENGTHMEASURE(2500.), 2, 0"
    })
    void start_and_end_choose_a_part_of_the_directrix(String start, String end, double length, int remarks) {
        Shape.Body body = body("#200=IFCFIXEDREFERENCESWEPTAREASOLID(#211,#11,#221," + start + "," + end + ",#12);"
                + "#221=IFCPOLYLINE((#10,#231,#232));#231=IFCCARTESIANPOINT((2000.,0.,0.));"
                + "#232=IFCCARTESIANPOINT((2000.,1000.,0.));" + RECTANGLE);
        assertThat(volume(body)).isEqualTo(0.02 * length, within(1e-9));
        assertThat(body.remarks()).hasSize(remarks);
    }

    @Test
    void a_part_of_a_circle_is_counted_in_the_files_angles_and_runs_over_its_beginning() {
        String disk = "#200=IFCSWEPTDISKSOLID(#221,100.,$,%s,%s);#221=IFCCIRCLE(#11,1000.);";
        double quarter = volume(body(disk.formatted("0.", "90.")));
        assertThat(quarter).isEqualTo(Math.PI / 2 * Math.PI * 0.01, within(Math.PI / 2 * 2 * Math.PI * 0.1 * CHORD));
        assertThat(volume(body(disk.formatted("315.", "45.")))).isEqualTo(quarter, within(1e-9));
    }

    @Test
    void a_bend_tighter_than_the_profile_is_a_remark() {
        Shape.Body body = body("#200=IFCSWEPTDISKSOLID(#221,100.,$,$,$);#221=IFCPOLYLINE((#10,#231,#232,#233));"
                + "#231=IFCCARTESIANPOINT((1000.,0.,0.));#232=IFCCARTESIANPOINT((1000.,20.,0.));"
                + "#233=IFCCARTESIANPOINT((0.,20.,0.));");
        assertThat(body.remarks()).anySatisfy(remark -> assertThat(remark).contains("crosses itself", "#200"));
    }

    @Test
    void a_directrix_that_turns_back_is_refused() {
        assertThat(reason("#200=IFCSWEPTDISKSOLID(#221,100.,$,$,$);#221=IFCPOLYLINE((#10,#231,#232));"
                        + "#231=IFCCARTESIANPOINT((1000.,0.,0.));#232=IFCCARTESIANPOINT((0.,10.,0.));"))
                .contains("#200", "turns back on itself");
    }

    @Test
    void a_directrix_along_its_reference_is_refused() {
        assertThat(reason("#200=IFCFIXEDREFERENCESWEPTAREASOLID(#211,#11,#221,$,$,#12);"
                        + "#221=IFCPOLYLINE((#10,#231));#231=IFCCARTESIANPOINT((0.,0.,1000.));" + RECTANGLE))
                .contains("#200", "keep to");
    }

    /**
     * A real file's reinforcing bar has a reference plane whose normal lies in the plane of its directrix. Straight lengths
     * between mitres keep area times length.
     */
    @Test
    void a_profile_does_not_turn_over_where_its_way_passes_the_direction_it_keeps_to() {
        Shape.Body body = body("#200=IFCSURFACECURVESWEPTAREASOLID(#211,#11,#221,$,$,#222);#222=IFCPLANE(#223);"
                + "#223=IFCAXIS2PLACEMENT3D(#10,#224,$);#224=IFCDIRECTION((0.,1.,0.));"
                + "#211=IFCRECTANGLEPROFILEDEF(.AREA.,$,#14,20.,20.);#221=IFCPOLYLINE((#10,#231,#232));"
                + "#231=IFCCARTESIANPOINT((50.,-300.,0.));#232=IFCCARTESIANPOINT((0.,-600.,0.));");
        assertThat(volume(body)).isEqualTo(0.02 * 0.02 * 2 * Math.hypot(0.05, 0.3), within(1e-9));
        assertThat(body.remarks()).singleElement().asString().contains("would turn over", "without turning");
    }

    /** Frustum of a cone: pi h / 3 (R2 + R r + r2); its ends have different numbers of chords. */
    @Test
    void a_tapered_pipe_is_a_frustum() {
        Shape.Body frustum = body("#200=IFCEXTRUDEDAREASOLIDTAPERED(#211,#11,#12,1000.,#212);"
                + "#211=IFCCIRCLEPROFILEDEF(.AREA.,$,#14,500.);#212=IFCCIRCLEPROFILEDEF(.AREA.,$,#14,100.);");
        double exact = Math.PI / 3 * (0.25 + 0.05 + 0.01);
        assertThat(volume(frustum)).isBetween(exact * (1 - 2 * CHORD / 0.1), exact);
        double slant = Math.hypot(1, 0.4);
        double skin = Math.PI * 0.6 * slant + Math.PI * 0.26;
        assertThat(area(frustum)).isEqualTo(skin, within(skin * 2 * CHORD / 0.1));
        assertThat(frustum.sweep()).isEmpty();
    }

    /** A prismatoid whose sides are twisted: h / 6 (A1 + 4 Am + A2), Am the section half-way. */
    @Test
    void a_tapered_beam_with_an_offset_end_is_a_prismatoid() {
        Shape.Body beam = body("#200=IFCEXTRUDEDAREASOLIDTAPERED(#211,#11,#12,6000.,#212);"
                + "#211=IFCISHAPEPROFILEDEF(.AREA.,$,#14,150.,600.,10.,12.,$,$,$);"
                + "#212=IFCISHAPEPROFILEDEF(.AREA.,$,#215,150.,300.,10.,12.,$,$,$);"
                + "#215=IFCAXIS2PLACEMENT2D(#216,$);#216=IFCCARTESIANPOINT((0.,150.));");
        double a1 = 2 * 0.15 * 0.012 + 0.576 * 0.01;
        double a2 = 2 * 0.15 * 0.012 + 0.276 * 0.01;
        assertThat(volume(beam)).isEqualTo(6 * 0.5 * (a1 + a2), within(1e-9));
    }

    /** Base area times a third of the height; the base is centred, as the standard has it. */
    @Test
    void a_pyramid_stands_about_the_centre_of_its_base() {
        Shape.Body pyramid = body("#200=IFCRECTANGULARPYRAMID(#11,4000.,3000.,1500.);");
        assertThat(volume(pyramid)).isEqualTo(6, within(1e-12));
        assertThat(area(pyramid)).isEqualTo(12 + 4 * Math.hypot(1.5, 1.5) + 3 * Math.hypot(1.5, 2), within(1e-9));
        assertThat(pyramid.faces())
                .hasSize(5)
                .allSatisfy(face -> assertThat(face.outline())
                        .allSatisfy(p -> assertThat(Math.abs(p.getX())).isLessThanOrEqualTo(2 + 1e-12)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.02, 0.5, 3})
    void round_primitives_have_their_volume_and_area(double r) {
        double mm = 1000 * r;
        double less = Math.max(1 - CHORD / r, Math.cos(Math.PI / 12));
        Shape.Body sphere = body("#200=IFCSPHERE(#11," + mm + ");");
        assertThat(volume(sphere))
                .isBetween(4 * Math.PI / 3 * Math.pow(less * r, 3) * 0.95, 4 * Math.PI / 3 * r * r * r);
        assertThat(area(sphere)).isBetween(4 * Math.PI * r * r * less * less * 0.95, 4 * Math.PI * r * r);
        Shape.Body cone = body("#200=IFCRIGHTCIRCULARCONE(#11," + 2 * mm + "," + mm + ");");
        double coneVolume = 2 * Math.PI / 3 * r * r * r;
        assertThat(volume(cone)).isBetween(coneVolume * less * less, coneVolume);
        double coneArea = Math.PI * r * r * (1 + Math.sqrt(5));
        assertThat(area(cone)).isBetween(coneArea * less * less, coneArea);
    }

    @Test
    void every_facet_of_a_sphere_keeps_the_chord_tolerance() {
        Shape.Body sphere = body("#200=IFCSPHERE(#11,2000.);");
        assertThat(sphere.faces()).allSatisfy(face -> {
            double depth = 2 - face.normal().dot(face.outline().get(0));
            assertThat(depth).isBetween(0.0, CHORD);
        });
    }

    /** A prismatoid over a bent way: sections change evenly with the way, so that their areas do when one side changes. */
    @Test
    void sections_change_evenly_along_their_way_and_stand_upright() {
        Shape shape = ModelText.readIn(
                "IFC4X3",
                "#200=IFCSECTIONEDSOLIDHORIZONTAL(#221,(#211,#212),(#241,#242));"
                        + "#211=IFCRECTANGLEPROFILEDEF(.AREA.,'R',#14,200.,100.);"
                        + "#212=IFCRECTANGLEPROFILEDEF(.AREA.,$,#14,200.,300.);#221=IFCINDEXEDPOLYCURVE(#222,$,.F.);"
                        + "#222=IFCCARTESIANPOINTLIST3D(((0.,0.,0.),(2000.,0.,0.),(2000.,2000.,0.)));"
                        + "#241=IFCAXIS2PLACEMENTLINEAR(#243,$,$);#242=IFCAXIS2PLACEMENTLINEAR(#244,$,$);"
                        + "#243=IFCPOINTBYDISTANCEEXPRESSION(IFCLENGTHMEASURE(0.),$,$,$,#221);"
                        + "#244=IFCPOINTBYDISTANCEEXPRESSION(IFCLENGTHMEASURE(4000.),$,$,$,#221);");
        assertThat(volume((Shape.Body) shape)).isEqualTo(0.2 * 0.2 * 4, within(0.002));
    }

    /** A block of 400 by 300 by 200 mm with what is cut from it or joined to it: volumes by formula, within the chords. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "DIFFERENCE|#212=IFCSPHERE(#11,80.);|0.023731917|0.0001",
                "UNION|#212=IFCSPHERE(#11,80.);|0.025876495|0.0005",
                "INTERSECTION|#212=IFCSPHERE(#11,80.);|0.000268083|0.00003",
                "DIFFERENCE|#212=IFCSWEPTDISKSOLID(#221,40.,$,$,$);#221=IFCPOLYLINE((#231,#232));"
                        + "#231=IFCCARTESIANPOINT((200.,150.,-100.));#232=IFCCARTESIANPOINT((200.,150.,300.));"
                        + "|0.022994690|0.0001",
                "DIFFERENCE|#212=IFCREVOLVEDAREASOLID(#211,#11,#213,90.);#211=IFCCIRCLEPROFILEDEF(.AREA.,$,#215,30.);"
                        + "#215=IFCAXIS2PLACEMENT2D(#216,$);#216=IFCCARTESIANPOINT((100.,150.));"
                        + "#213=IFCAXIS1PLACEMENT(#10,#214);#214=IFCDIRECTION((0.,-1.,0.));|0.023555868|0.0001"
            })
    void curved_bodies_combine_with_plane_ones(String operator, String tool, double volume, double slack) {
        Shape.Body body = body(
                "#200=IFCBOOLEANRESULT(." + operator + ".,#210,#212);" + "#210=IFCBLOCK(#11,400.,300.,200.);" + tool);
        assertThat(volume(body)).isEqualTo(volume, within(slack));
    }

    @Test
    void a_profile_swept_along_a_spline_has_the_volume_of_its_way() {
        String way =
                "#221=IFCBSPLINECURVEWITHKNOTS(2,(#10,#231,#232),.UNSPECIFIED.,.F.,.F.,(3,3),(0.,1.),.UNSPECIFIED.);"
                        + "#231=IFCCARTESIANPOINT((2000.,0.,0.));#232=IFCCARTESIANPOINT((4000.,2000.,0.));";
        Shape.Body body = body("#200=IFCFIXEDREFERENCESWEPTAREASOLID(#211,#11,#221,0.,1.,#12);" + way + RECTANGLE);
        // Length of the parabola with these control points: |C'| = 4 sqrt(1 + t2), integrated from 0 to 1.
        double length = 2 * (Math.sqrt(2) + Math.log(1 + Math.sqrt(2)));
        assertThat(volume(body)).isEqualTo(0.02 * length, within(0.02 * length * 1e-3));
    }

    @Test
    void a_moulding_on_a_cylinder_stands_off_its_axis() {
        Shape.Body ring = body("#200=IFCSURFACECURVESWEPTAREASOLID(#211,#11,#221,$,$,#222);"
                + "#222=IFCCYLINDRICALSURFACE(#11,1000.);#221=IFCCIRCLE(#11,1000.);" + RECTANGLE);
        double exact = 2 * Math.PI * 0.02;
        assertThat(volume(ring)).isBetween(exact * (1 - 2 * CHORD), exact);
        assertThat(ring.faces())
                .allSatisfy(face -> assertThat(face.outline())
                        .allSatisfy(
                                p -> assertThat(Math.hypot(p.getX(), p.getY())).isBetween(0.9 - CHORD, 1.1 + 1e-9)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "#200=IFCSPHERE(#11,1.E9);",
                "#200=IFCSWEPTDISKSOLID(#221,100.,$,$,$);#221=IFCCIRCLE(#11,1.E14);",
                "#200=IFCREVOLVEDAREASOLID(#211,#11,#213,90.);" + AXIS
                        + "#211=IFCCIRCLEPROFILEDEF(.AREA.,$,#215,1.E8);#215=IFCAXIS2PLACEMENT2D(#216,$);"
                        + "#216=IFCCARTESIANPOINT((2.E8,0.));"
            })
    void absurd_sizes_end_with_a_reason_and_not_with_the_memory(String data) {
        assertThat(reason(data)).containsAnyOf("faces, which is more than is read", "chords");
    }

    @Test
    void curves_that_name_each_other_over_and_over_end_with_a_reason() {
        StringBuilder data = new StringBuilder(
                "#200=IFCEXTRUDEDAREASOLID(#211,#11,#12,1000.);" + "#211=IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#300);");
        for (int i = 300; i < 340; i++) {
            data.append("#%d=IFCCOMPOSITECURVE((#%d,#%d,#%d),.F.);".formatted(i, i + 100, i + 100, i + 100));
            data.append("#%d=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,#%d);".formatted(i + 100, i + 1));
        }
        data.append("#340=IFCPOLYLINE((#13,#341));#341=IFCCARTESIANPOINT((1.,0.));");
        assertThat(reason(data.toString())).contains("too many others");
    }

    /** A few hundred kilobytes that would make a hundred million pieces. */
    @Test
    void segments_that_name_one_long_curve_again_and_again_end_with_a_reason() {
        String many = String.join(",", Collections.nCopies(5_000, "#302"));
        StringBuilder points = new StringBuilder("#13");
        for (int i = 0; i < 20_000; i++) {
            points.append(i % 2 == 0 ? ",#304" : ",#13");
        }
        String data = "#200=IFCEXTRUDEDAREASOLID(#211,#11,#12,1000.);#211=IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#301);"
                + "#301=IFCCOMPOSITECURVE((" + many + "),.F.);"
                + "#302=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,#303);#303=IFCPOLYLINE((" + points + "));"
                + "#304=IFCCARTESIANPOINT((1.,0.));";
        assertThat(reason(data)).contains("pieces");
    }
}

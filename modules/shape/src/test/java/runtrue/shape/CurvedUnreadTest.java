package runtrue.shape;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Curved faces that cannot be read have a reason with the number of what is wrong, and cost neither time nor memory. */
class CurvedUnreadTest {
    private static final String NET = "((#231,#232),(#233,#234))";
    private static final String POINTS = "#231=IFCCARTESIANPOINT((0.,0.,0.));#232=IFCCARTESIANPOINT((0.,900.,0.));"
            + "#233=IFCCARTESIANPOINT((900.,0.,0.));#234=IFCCARTESIANPOINT((900.,900.,500.));"
            + "#235=IFCCARTESIANPOINT((1.E15,1.E15,1.E15));";

    private static String face(String surface, String loop) {
        return "#200=IFCSHELLBASEDSURFACEMODEL((#201));#201=IFCOPENSHELL((#202));#202=IFCADVANCEDFACE((#203),#204,.T.);"
                + "#203=IFCFACEOUTERBOUND(#205,.T.);#204=" + surface + ";#205=" + loop + ";" + POINTS;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "IFCCYLINDRICALSURFACE(#11,-5.)|Radius of #204",
                "IFCTOROIDALSURFACE(#11,5.,9.)|through its own axis",
                "IFCSURFACEOFLINEAREXTRUSION(#211,#11,#212,5.);#211=IFCARBITRARYOPENPROFILEDEF(.CURVE.,$,#213);#212=IFCDIRECTION((1.,0.,0.));#213=IFCPOLYLINE((#231,#232))|within the plane",
                "IFCSURFACEOFLINEAREXTRUSION(#211,#11,#12,5.);#211=IFCRECTANGLEPROFILEDEF(.AREA.,$,#14,1.,1.)|which is no curve",
                "IFCSURFACEOFREVOLUTION(#211,#11,#212);#211=IFCARBITRARYOPENPROFILEDEF(.CURVE.,$,#213);#212=IFCAXIS1PLACEMENT(#10,$);#213=IFCPOLYLINE((#231,#10))|lies on the axis",
                "IFCSURFACEOFREVOLUTION(#211,#11,#212);#211=IFCARBITRARYOPENPROFILEDEF(.CURVE.,$,#213);#212=IFCAXIS1PLACEMENT(#10,$);#213=IFCPOLYLINE((#232,#233))|one half plane",
                "IFCBSPLINESURFACEWITHKNOTS(1,1,((#231,#232),(#233,#234)),$,.F.,.F.,.F.,(2,2),(2,1),(0.,1.),(0.,1.),$)|3.0 knots for 2",
                "IFCBSPLINESURFACEWITHKNOTS(1,1,((#231,#232),(#233,#234)),$,.F.,.F.,.F.,(2,2),(2,2),(0.,1.),(1.,0.),$)|knots fall",
                "IFCBSPLINESURFACEWITHKNOTS(1,1,((#231,#232),(#233,#234)),$,.F.,.F.,.F.,(2,2),(2,2),(0.,1.),(1.,1.),$)|span nothing",
                "IFCBSPLINESURFACEWITHKNOTS(1,1,((#231,#232),(#233)),$,.F.,.F.,.F.,(2,2),(2,2),(0.,1.),(0.,1.),$)|rows of equal length",
                "IFCBSPLINESURFACEWITHKNOTS(99,1,((#231,#232),(#233,#234)),$,.F.,.F.,.F.,(2,2),(2,2),(0.,1.),(0.,1.),$)|degree",
                "IFCRATIONALBSPLINESURFACEWITHKNOTS(1,1,((#231,#232),(#233,#234)),$,.F.,.F.,.F.,(2,2),(2,2),(0.,1.),(0.,1.),$,((1.,1.),(1.,0.)))|weight",
                "IFCCURVEBOUNDEDSURFACE(#204,(),.F.)|refers to itself"
            })
    void a_surface_that_is_none_says_so(String surface, String part) {
        assertThat(ModelText.reason(face(surface, "IFCPOLYLOOP((#231,#233,#234))")))
                .contains(part);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "IFCPOLYLOOP((#231,#234,#232,#233))|cross each other",
                "IFCPOLYLOOP((#231,#232,#235))|100 000 km",
                "IFCLOOP()|Loops of type IfcLoop",
                "IFCVERTEXLOOP(#206);#206=IFCVERTEXPOINT(#231)|#202"
            })
    void a_loop_that_trims_nothing_says_so(String loop, String part) {
        String saddle = "IFCBSPLINESURFACEWITHKNOTS(1,1," + NET + ",$,.F.,.F.,.F.,(2,2),(2,2),(0.,1.),(0.,1.),$)";
        Shape shape = ModelText.read(face(saddle, loop));
        if (shape instanceof Shape.Unread unread) {
            assertThat(unread.reason()).contains(part);
        } else {
            assertThat(part).isEqualTo("#202");
        }
    }

    @Test
    void a_surface_of_absurd_size_is_refused_before_it_is_cut() {
        String reason = ModelText.reason("#200=IFCRECTANGULARTRIMMEDSURFACE(#201,0.,0.,360.,360.,.T.,.T.);"
                + "#201=IFCTOROIDALSURFACE(#11,1.E12,1.E11);");
        assertThat(reason).contains("#200").contains("export");
    }

    @Test
    void a_surface_with_spikes_ends_within_the_budget() {
        BrepText t = BrepText.millimetres();
        double[][][] net = new double[40][40][];
        for (int i = 0; i < 40; i++) {
            for (int k = 0; k < 40; k++) {
                net[i][k] = new double[] {1000 * i, 1000 * k, (i + k) % 2 == 0 ? 0 : 1e9};
            }
        }
        StringBuilder values = new StringBuilder("(0.");
        for (int i = 1; i < 38; i++) {
            values.append(',').append(i).append('.');
        }
        String knots = "(4" + ",1".repeat(36) + ",4)";
        String reason = ModelText.reason(t.item("IFCBSPLINESURFACEWITHKNOTS(3,3," + t.net(net) + ",$,.F.,.F.,.F.,"
                + knots + "," + knots + "," + values + ")," + values + "),$)"));
        assertThat(reason).contains("#200").contains("export");
    }

    /** As some files write a plane face with a hole: the ring around it as a second face on the same plane. */
    @Test
    void a_hole_that_stands_as_a_face_of_its_own_is_a_hole() {
        String points = "#231=IFCCARTESIANPOINT((0.,0.,0.));#232=IFCCARTESIANPOINT((4000.,0.,0.));"
                + "#233=IFCCARTESIANPOINT((4000.,3000.,0.));#234=IFCCARTESIANPOINT((0.,3000.,0.));"
                + "#235=IFCCARTESIANPOINT((1000.,1000.,0.));#236=IFCCARTESIANPOINT((2000.,1000.,0.));"
                + "#237=IFCCARTESIANPOINT((2000.,2000.,0.));#238=IFCCARTESIANPOINT((1000.,2000.,0.));";
        String outer = "IFCPOLYLOOP((#231,#232,#233,#234))";
        String inner = "IFCPOLYLOOP((#235,#236,#237,#238))";
        for (boolean swapped : new boolean[] {false, true}) {
            String data = "#200=IFCSHELLBASEDSURFACEMODEL((#201));#201=IFCOPENSHELL((#202,#203));"
                    + "#202=IFCADVANCEDFACE((#204),#206,.T.);#203=IFCADVANCEDFACE((#205),#206,.T.);#206=IFCPLANE(#11);"
                    + "#204=IFCFACEOUTERBOUND(#207,.T.);#205=IFCFACEBOUND(#208,.F.);#207=" + (swapped ? inner : outer)
                    + ";#208=" + (swapped ? outer : inner) + ";" + points;
            Shape.Body body = ModelText.body(data);
            assertThat(body.faces())
                    .singleElement()
                    .satisfies(face -> assertThat(face.holes()).hasSize(1));
            assertThat(AdvancedBrepTest.area(body.faces())).isEqualTo(11, org.assertj.core.api.Assertions.within(1e-9));
        }
    }
}

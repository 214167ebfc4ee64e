package runtrue.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runtrue.shape.ModelText.body;
import static runtrue.shape.ModelText.reason;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Roofs that are surfaces within curves and have no thickness: areas by formula, directions by the basis surface. */
class BoundedSurfacesTest {
    /** Turned about x by the angle whose tangent is 3/4, 100 mm up. */
    private static final String PITCHED = "#201=IFCPLANE(#202);#202=IFCAXIS2PLACEMENT3D(#203,#204,#205);"
            + "#203=IFCCARTESIANPOINT((0.,0.,100.));#204=IFCDIRECTION((0.,-0.6,0.8));#205=IFCDIRECTION((1.,0.,0.));";

    private static final String FLAT_CURVE = "#221=IFCPOLYLINE((#231,#232,#233,#234,#231));"
            + "#231=IFCCARTESIANPOINT((0.,0.));#232=IFCCARTESIANPOINT((4000.,0.));"
            + "#233=IFCCARTESIANPOINT((4000.,2500.));#234=IFCCARTESIANPOINT((0.,2500.));";

    private static final String CURVE_IN_SPACE = "#221=IFCPOLYLINE((#231,#232,#233,#234,#231));"
            + "#231=IFCCARTESIANPOINT((0.,0.,100.));#232=IFCCARTESIANPOINT((4000.,0.,100.));"
            + "#233=IFCCARTESIANPOINT((4000.,2000.,1600.));#234=IFCCARTESIANPOINT((0.,2000.,1600.));";

    private static double area(Shape.Body body) {
        return AdvancedBrepTest.area(body.faces());
    }

    @ParameterizedTest
    @ValueSource(strings = {FLAT_CURVE, CURVE_IN_SPACE})
    void a_pitched_plane_within_a_curve_keeps_its_area_and_direction(String curve) {
        Shape.Body body = body("#200=IFCCURVEBOUNDEDPLANE(#201,#221,());" + PITCHED + curve);
        assertThat(area(body)).isEqualTo(10, within(1e-9));
        assertThat(body.faces()).singleElement().satisfies(face -> {
            assertThat(face.normal().getY()).isEqualTo(-0.6, within(1e-9));
            assertThat(face.normal().getZ()).isEqualTo(0.8, within(1e-9));
        });
        assertThat(Extents.of(body, 2)).containsExactly(new double[] {0.1, 1.6}, within(1e-9));
        assertThat(body.closed()).isFalse();
    }

    @Test
    void inner_boundaries_are_holes() {
        Shape.Body body = body("#200=IFCCURVEBOUNDEDPLANE(#201,#221,(#222));" + PITCHED + FLAT_CURVE
                + "#222=IFCCIRCLE(#223,500.);#223=IFCAXIS2PLACEMENT2D(#224,$);"
                + "#224=IFCCARTESIANPOINT((2000.,1200.));");
        assertThat(area(body)).isEqualTo(10 - Math.PI * 0.25, within(0.01 * Math.PI * 0.25));
        assertThat(body.faces())
                .singleElement()
                .satisfies(face -> assertThat(face.holes()).hasSize(1));
    }

    /** A quarter of a cylinder of radius 500, from 0 to 1000: its boundary walked counter-clockwise from outside. */
    @Test
    void a_cylinder_within_curves_in_space_has_its_area() {
        Shape.Body body = body("#200=IFCCURVEBOUNDEDSURFACE(#201,(#210),.F.);#201=IFCCYLINDRICALSURFACE(#11,500.);"
                + "#210=IFCOUTERBOUNDARYCURVE((#211,#212,#213,#214),.F.);"
                + "#211=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,#221);"
                + "#212=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,#222);"
                + "#213=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.F.,#223);"
                + "#214=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,#224);"
                + "#221=IFCTRIMMEDCURVE(#225,(IFCPARAMETERVALUE(0.)),(IFCPARAMETERVALUE(90.)),.T.,.PARAMETER.);"
                + "#223=IFCTRIMMEDCURVE(#226,(IFCPARAMETERVALUE(0.)),(IFCPARAMETERVALUE(90.)),.T.,.PARAMETER.);"
                + "#225=IFCCIRCLE(#11,500.);#226=IFCCIRCLE(#227,500.);#227=IFCAXIS2PLACEMENT3D(#228,$,$);"
                + "#228=IFCCARTESIANPOINT((0.,0.,1000.));#222=IFCPOLYLINE((#231,#232));#224=IFCPOLYLINE((#233,#234));"
                + "#231=IFCCARTESIANPOINT((0.,500.,0.));#232=IFCCARTESIANPOINT((0.,500.,1000.));"
                + "#233=IFCCARTESIANPOINT((500.,0.,1000.));#234=IFCCARTESIANPOINT((500.,0.,0.));");
        assertThat(area(body)).isEqualTo(Math.PI / 2 * 0.5, within(0.004 * Math.PI / 2 * 0.5));
        assertThat(body.faces())
                .allMatch(face -> face.normal().getX() > 0 && face.normal().getY() > 0);
    }

    @Test
    void surfaces_of_a_geometric_set_are_read_and_its_lines_passed_over() {
        Shape.Body body = body(
                "#200=IFCGEOMETRICSET((#210,#221));#210=IFCCURVEBOUNDEDPLANE(#201,#221,());" + PITCHED + FLAT_CURVE);
        assertThat(area(body)).isEqualTo(10, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "#200=IFCPLANE(#11);|has no bounds",
                "#200=IFCCURVEBOUNDEDSURFACE(#201,(),.T.);#201=IFCPLANE(#11);|no curve bounds it",
                "#200=IFCCURVEBOUNDEDSURFACE(#201,(),.T.);#201=IFCCYLINDRICALSURFACE(#11,5.);|its outer bound is implied",
                "#200=IFCCURVEBOUNDEDPLANE(#201,#221,());#201=IFCPLANE(#11);#221=IFCPOLYLINE((#231,#232,#231));#231=IFCCARTESIANPOINT((0.,0.));#232=IFCCARTESIANPOINT((9.,0.));|encloses no area",
                "#200=IFCCURVEBOUNDEDPLANE(#201,#221,());#201=IFCPLANE(#11);#221=IFCPOLYLINE((#231,#232,#233,#231));#231=IFCCARTESIANPOINT((0.,0.,0.));#232=IFCCARTESIANPOINT((9.,0.,0.));#233=IFCCARTESIANPOINT((9.,0.,70.));|does not lie in its plane"
            })
    void what_bounds_nothing_has_a_reason(String data, String part) {
        assertThat(reason(data)).contains(part, "export this element");
    }
}

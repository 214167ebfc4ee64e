package runtrue.ifc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** Grids in millimetres, placed at (1000, 0, 500). */
class GridAxesTest {
    private static final String GRID = """
            #1=IFCPROJECT('0',$,$,$,$,$,$,(),#2);
            #2=IFCUNITASSIGNMENT((#3));
            #3=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);
            #10=IFCLOCALPLACEMENT($,#11);
            #11=IFCAXIS2PLACEMENT3D(#12,$,$);
            #12=IFCCARTESIANPOINT((1000.,0.,500.));
            #20=IFCGRID('g',$,'Grid',$,$,#10,$,(#21),(),$,$);
            """;

    @Test
    void placesAPolylineInWorldMetres() {
        GridAxis axis = only("#21=IFCGRIDAXIS('A',#22,.T.);#22=IFCPOLYLINE((#23,#24));"
                + "#23=IFCCARTESIANPOINT((0.,0.));#24=IFCCARTESIANPOINT((0.,6000.));");

        assertThat(axis.grid()).isEqualTo("Grid");
        assertThat(axis.name()).isEqualTo("A");
        assertPoints(axis, Vector3D.of(1, 0, 0.5), Vector3D.of(1, 6, 0.5));
    }

    @Test
    void turnsAnAxisThatRunsAgainstItsCurve() {
        GridAxis axis = only("#21=IFCGRIDAXIS('A',#22,.F.);#22=IFCPOLYLINE((#23,#24));"
                + "#23=IFCCARTESIANPOINT((0.,0.));#24=IFCCARTESIANPOINT((0.,6000.));");

        assertPoints(axis, Vector3D.of(1, 6, 0.5), Vector3D.of(1, 0, 0.5));
    }

    @Test
    void drawsALineFiveHundredMetresToEitherSide() {
        GridAxis axis = only("#21=IFCGRIDAXIS('A',#22,.T.);#22=IFCLINE(#23,#24);"
                + "#23=IFCCARTESIANPOINT((0.,0.));#24=IFCVECTOR(#25,1.);#25=IFCDIRECTION((1.,0.));");

        assertPoints(axis, Vector3D.of(-499, 0, 0.5), Vector3D.of(501, 0, 0.5));
    }

    @Test
    void trimsALineByParametersTimesItsMagnitude() {
        GridAxis axis = only("#21=IFCGRIDAXIS('A',#22,.T.);"
                + "#22=IFCTRIMMEDCURVE(#26,(IFCPARAMETERVALUE(0.)),(IFCPARAMETERVALUE(3.)),.T.,.PARAMETER.);"
                + "#26=IFCLINE(#23,#24);#23=IFCCARTESIANPOINT((0.,0.));#24=IFCVECTOR(#25,2000.);"
                + "#25=IFCDIRECTION((1.,0.));");

        assertPoints(axis, Vector3D.of(1, 0, 0.5), Vector3D.of(7, 0, 0.5));
    }

    @Test
    void trimsALineByPoints() {
        GridAxis axis = only("#21=IFCGRIDAXIS('A',#22,.T.);"
                + "#22=IFCTRIMMEDCURVE(#26,(#23),(#27),.T.,.CARTESIAN.);#27=IFCCARTESIANPOINT((5000.,0.));"
                + "#26=IFCLINE(#23,#24);#23=IFCCARTESIANPOINT((0.,0.));#24=IFCVECTOR(#25,1.);"
                + "#25=IFCDIRECTION((1.,0.));");

        assertPoints(axis, Vector3D.of(1, 0, 0.5), Vector3D.of(6, 0, 0.5));
    }

    @Test
    void facetsAnArcBetweenItsTrims() {
        GridAxis axis = only("#21=IFCGRIDAXIS('A',#22,.T.);"
                + "#22=IFCTRIMMEDCURVE(#26,(#23),(#27),.T.,.CARTESIAN.);#23=IFCCARTESIANPOINT((9000.,0.));"
                + "#27=IFCCARTESIANPOINT((0.,9000.));#26=IFCCIRCLE(#28,9000.);#28=IFCAXIS2PLACEMENT2D(#29,$);"
                + "#29=IFCCARTESIANPOINT((0.,0.));");

        assertThat(axis.points()).hasSize(10);
        assertThat(axis.points().get(0).distance(Vector3D.of(10, 0, 0.5))).isLessThan(1e-9);
        assertThat(axis.points().get(9).distance(Vector3D.of(1, 9, 0.5))).isLessThan(1e-9);
        assertThat(axis.points())
                .allSatisfy(point -> assertThat(point.distance(Vector3D.of(1, 0, 0.5)))
                        .isCloseTo(9, org.assertj.core.api.Assertions.within(1e-9)));
    }

    @Test
    void leavesOutAnAxisThatCannotBeReadWithANote() {
        IfcModel model = ModelText.model("IFC4", GRID + "#21=IFCGRIDAXIS('A',#22,.T.);#22=IFCELLIPSE($,1.,2.);");

        assertThat(model.gridAxes()).isEmpty();
        assertThat(model.notes())
                .anySatisfy(note -> assertThat(note).contains("#21 (IfcGridAxis)", "#22 (IfcEllipse)"));
    }

    private static GridAxis only(String axis) {
        List<GridAxis> axes = ModelText.model("IFC4", GRID + axis).gridAxes();
        assertThat(axes).hasSize(1);
        return axes.get(0);
    }

    private static void assertPoints(GridAxis axis, Vector3D... points) {
        assertThat(axis.points()).hasSize(points.length);
        for (int i = 0; i < points.length; i++) {
            assertThat(axis.points().get(i).distance(points[i])).isLessThan(1e-9);
        }
    }
}

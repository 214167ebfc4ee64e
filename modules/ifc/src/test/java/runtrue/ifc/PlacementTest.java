package runtrue.ifc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** Expected places are worked by hand; the rules for axes are those of ISO 16739 (IfcBuildAxes, IfcBaseAxis). */
class PlacementTest {
    private static final double EXACT = 1e-12;

    @Test
    void addsUpAChainOfPlacements() {
        // The storey is turned a quarter left about z at (10,0,3); the slab lies 2 along the storey's x.
        IfcModel model = model("""
                #20=IFCLOCALPLACEMENT($,#21);
                #21=IFCAXIS2PLACEMENT3D(#22,#23,#24);
                #22=IFCCARTESIANPOINT((10.,0.,3.));
                #23=IFCDIRECTION((0.,0.,1.));
                #24=IFCDIRECTION((0.,1.,0.));
                #30=IFCLOCALPLACEMENT(#20,#31);
                #31=IFCAXIS2PLACEMENT3D(#32,$,$);
                #32=IFCCARTESIANPOINT((2.,0.,0.));
                #1=IFCSLAB('0',$,$,$,$,#30,$,$,$);
                """);

        AffineTransformMatrix3D placement = model.placement(model.entity(1));

        assertAt(placement.apply(Vector3D.ZERO), 10, 2, 3);
        assertAt(placement.apply(Vector3D.of(1, 0, 0)), 10, 3, 3);
        assertAt(placement.apply(Vector3D.of(0, 1, 0)), 9, 2, 3);
    }

    @Test
    void turnsTheReferenceDirectionSquareToTheAxis() {
        AffineTransformMatrix3D transform = transform("""
                #1=IFCAXIS2PLACEMENT3D(#2,#3,#4);
                #2=IFCCARTESIANPOINT((0.,0.,0.));
                #3=IFCDIRECTION((0.,0.,5.));
                #4=IFCDIRECTION((1.,0.,1.));
                """);

        assertAt(transform.apply(Vector3D.of(1, 0, 0)), 1, 0, 0);
        assertAt(transform.apply(Vector3D.of(0, 0, 1)), 0, 0, 1);
    }

    @Test
    void takesTheWorldAxesWhereNoneAreGiven() {
        AffineTransformMatrix3D transform =
                transform("#1=IFCAXIS2PLACEMENT3D(#2,$,$);#2=IFCCARTESIANPOINT((1.,2.,3.));");

        assertAt(transform.apply(Vector3D.of(1, 1, 1)), 2, 3, 4);
    }

    @Test
    void takesWorldYAsReferenceWhereTheAxisLiesAlongX() {
        AffineTransformMatrix3D transform = transform(
                "#1=IFCAXIS2PLACEMENT3D(#2,#3,$);#2=IFCCARTESIANPOINT((0.,0.,0.));#3=IFCDIRECTION((1.,0.,0.));");

        assertAt(transform.apply(Vector3D.of(1, 0, 0)), 0, 1, 0);
        assertAt(transform.apply(Vector3D.of(0, 1, 0)), 0, 0, 1);
    }

    @Test
    void liftsAPlacementInThePlaneToHeightZero() {
        AffineTransformMatrix3D transform =
                transform("#1=IFCAXIS2PLACEMENT2D(#2,#3);#2=IFCCARTESIANPOINT((5.,6.));#3=IFCDIRECTION((0.,-2.));");

        assertAt(transform.apply(Vector3D.of(1, 2, 3)), 7, 5, 3);
    }

    @Test
    void mirrorsByTheSecondAxisOfAnOperator() {
        AffineTransformMatrix3D transform = transform("""
                #1=IFCCARTESIANTRANSFORMATIONOPERATOR3D(#3,#4,#2,$,#5);
                #2=IFCCARTESIANPOINT((1.,0.,0.));
                #3=IFCDIRECTION((1.,0.,0.));
                #4=IFCDIRECTION((0.,-1.,0.));
                #5=IFCDIRECTION((0.,0.,1.));
                """);

        assertAt(transform.apply(Vector3D.of(2, 3, 4)), 3, -3, 4);
        assertThat(transform.preservesOrientation()).isFalse();
    }

    @Test
    void scalesEachAxisOfANonUniformOperator() {
        AffineTransformMatrix3D transform = transform("""
                #1=IFCCARTESIANTRANSFORMATIONOPERATOR3DNONUNIFORM($,$,#2,2.,$,3.,$);
                #2=IFCCARTESIANPOINT((0.,0.,0.));
                """);

        // The third scale falls back on the first.
        assertAt(transform.apply(Vector3D.of(1, 1, 1)), 2, 3, 2);
    }

    @Test
    void mirrorsAnOperatorInThePlane() {
        AffineTransformMatrix3D transform = transform("""
                #1=IFCCARTESIANTRANSFORMATIONOPERATOR2D(#3,#4,#2,2.);
                #2=IFCCARTESIANPOINT((0.,10.));
                #3=IFCDIRECTION((1.,0.));
                #4=IFCDIRECTION((0.,-1.));
                """);

        assertAt(transform.apply(Vector3D.of(1, 1, 0)), 2, 8, 0);
    }

    @Test
    void turnsAnOperatorInThePlaneByItsSecondAxisAlone() {
        AffineTransformMatrix3D transform = transform("""
                #1=IFCCARTESIANTRANSFORMATIONOPERATOR2D($,#4,#2,$);
                #2=IFCCARTESIANPOINT((0.,0.));
                #4=IFCDIRECTION((-1.,0.));
                """);

        // y goes to -x, so x goes to y.
        assertAt(transform.apply(Vector3D.of(1, 0, 0)), 0, 1, 0);
        assertAt(transform.apply(Vector3D.of(0, 1, 0)), -1, 0, 0);
    }

    @Test
    void namesADirectionWithoutLength() {
        assertThatThrownBy(() -> transform("#1=IFCAXIS2PLACEMENT3D(#2,#3,$);"
                        + "#2=IFCCARTESIANPOINT((0.,0.,0.));#3=IFCDIRECTION((0.,0.,0.));"))
                .isInstanceOf(IfcException.class)
                .hasMessageContaining("test.ifc")
                .hasMessageContaining("#3")
                .hasMessageContaining("without length");
    }

    @Test
    void namesAPlacementWhoseAxesAreParallel() {
        assertThatThrownBy(() -> transform("#1=IFCAXIS2PLACEMENT3D(#2,#3,#3);"
                        + "#2=IFCCARTESIANPOINT((0.,0.,0.));#3=IFCDIRECTION((0.,1.,0.));"))
                .isInstanceOf(IfcException.class)
                .hasMessageContaining("#1")
                .hasMessageContaining("parallel");
    }

    @Test
    void refusesAScaleThatIsNotPositive() {
        assertThatThrownBy(() -> transform(
                        "#1=IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#2,0.,$);#2=IFCCARTESIANPOINT((0.,0.,0.));"))
                .isInstanceOf(IfcException.class)
                .hasMessageContaining("Scale");
    }

    @Test
    void namesThePlacementsOfACycle() {
        IfcModel model = model("""
                #20=IFCLOCALPLACEMENT(#30,#21);
                #21=IFCAXIS2PLACEMENT3D(#22,$,$);
                #22=IFCCARTESIANPOINT((0.,0.,0.));
                #30=IFCLOCALPLACEMENT(#20,#21);
                #1=IFCSLAB('0',$,$,$,$,#30,$,$,$);
                """);

        assertThatThrownBy(() -> model.placement(model.entity(1)))
                .isInstanceOf(IfcException.class)
                .hasMessageContaining("relative to itself")
                .hasMessageContaining("#20")
                .hasMessageContaining("#30");
    }

    @Test
    void refusesAbsurdCoordinates() {
        IfcModel model = model("#30=IFCLOCALPLACEMENT($,#31);#31=IFCAXIS2PLACEMENT3D(#32,$,$);"
                + "#32=IFCCARTESIANPOINT((1.E+10,0.,0.));#1=IFCSLAB('0',$,$,$,$,#30,$,$,$);");

        assertThatThrownBy(() -> model.placement(model.entity(1)))
                .isInstanceOf(IfcException.class)
                .hasMessageContaining("#30")
                .hasMessageContaining("million kilometres");
    }

    @Test
    void refusesCoordinatesThatAreNotFinite() {
        IfcModel model = model("#30=IFCLOCALPLACEMENT($,#31);#31=IFCAXIS2PLACEMENT3D(#32,$,$);"
                + "#32=IFCCARTESIANPOINT((1.E+999,0.,0.));#1=IFCSLAB('0',$,$,$,$,#30,$,$,$);");

        assertThatThrownBy(() -> model.placement(model.entity(1)))
                .isInstanceOf(IfcException.class)
                .hasMessageContaining("#32");
    }

    @Test
    void saysThatAnElementHasNoPlacement() {
        IfcModel model = model("#1=IFCSLAB('0',$,$,$,$,$,$,$,$);");

        assertThatThrownBy(() -> model.placement(model.entity(1)))
                .isInstanceOf(IfcException.class)
                .hasMessageContaining("#1 (IfcSlab)")
                .hasMessageContaining("no ObjectPlacement");
    }

    @Test
    void saysThatAGridPlacementIsNotRead() {
        IfcModel model = model("#30=IFCGRIDPLACEMENT(#31,$);#31=IFCVIRTUALGRIDINTERSECTION((),());"
                + "#1=IFCSLAB('0',$,$,$,$,#30,$,$,$);");

        assertThatThrownBy(() -> model.placement(model.entity(1)))
                .isInstanceOf(IfcException.class)
                .hasMessageContaining("#30 (IfcGridPlacement)")
                .hasMessageContaining("not read");
    }

    @Test
    void readsALinearPlacementByItsCartesianFallback() {
        IfcModel model = ModelText.model("IFC4X3_ADD2", """
                #30=IFCLINEARPLACEMENT($,#40,#31);
                #31=IFCAXIS2PLACEMENT3D(#32,$,$);
                #32=IFCCARTESIANPOINT((1.,2.,3.));
                #1=IFCSLAB('0',$,$,$,$,#30,$,$,$);
                """);

        assertAt(model.placement(model.entity(1)).apply(Vector3D.ZERO), 1, 2, 3);
    }

    /** Each link of a chain of random placements is its parent's placement times its own. */
    @Property(tries = 50)
    void composesLinkByLink(@ForAll @Size(18) List<@DoubleRange(min = -100, max = 100) Double> numbers) {
        StringBuilder data = new StringBuilder();
        for (int link = 0; link < 3; link++) {
            int id = 100 * (link + 1);
            data.append(String.format(
                    Locale.ROOT,
                    "#%d=IFCLOCALPLACEMENT(%s,#%d);#%d=IFCAXIS2PLACEMENT3D(#%d,#%d,#%d);"
                            + "#%d=IFCCARTESIANPOINT((%f,%f,%f));#%d=IFCDIRECTION((%f,%f,200.));"
                            + "#%d=IFCDIRECTION((200.,%f,0.));#%d=IFCSLAB('0',$,$,$,$,#%d,$,$,$);",
                    id,
                    link == 0 ? "$" : "#" + (id - 100),
                    id + 1,
                    id + 1,
                    id + 2,
                    id + 3,
                    id + 4,
                    id + 2,
                    numbers.get(6 * link),
                    numbers.get(6 * link + 1),
                    numbers.get(6 * link + 2),
                    id + 3,
                    numbers.get(6 * link + 3),
                    numbers.get(6 * link + 4),
                    id + 4,
                    numbers.get(6 * link + 5),
                    id + 5,
                    id));
        }
        IfcModel model = model(data.toString());

        for (int link = 1; link < 3; link++) {
            int id = 100 * (link + 1);
            Vector3D point = Vector3D.of(1, -2, 3);
            Vector3D byParent = model.placement(model.entity(id - 100 + 5))
                    .apply(model.transform(model.entity(id + 1)).apply(point));
            Vector3D atOnce = model.placement(model.entity(id + 5)).apply(point);
            assertThat(atOnce.distance(byParent)).isLessThan(1e-9);
            // Rotations only: lengths stay.
            AffineTransformMatrix3D placement = model.placement(model.entity(id + 5));
            assertThat(placement.apply(point).distance(placement.apply(Vector3D.ZERO)))
                    .isCloseTo(point.norm(), org.assertj.core.api.Assertions.within(1e-9));
        }
    }

    private static IfcModel model(String data) {
        return ModelText.model("IFC2X3", data);
    }

    private static AffineTransformMatrix3D transform(String data) {
        IfcModel model = model(data);
        return model.transform(model.entity(1));
    }

    private static void assertAt(Vector3D point, double x, double y, double z) {
        assertThat(point.distance(Vector3D.of(x, y, z))).as(point.toString()).isLessThan(EXACT);
    }
}

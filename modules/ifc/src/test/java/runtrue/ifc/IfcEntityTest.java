package runtrue.ifc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import runtrue.step.StepValue;

class IfcEntityTest {
    private final IfcModel model = ModelText.model("IFC4", """
            #1=IFCSLAB('id',$,'Name',$,$,#2,#99,$,.ROOF.);
            #2=IFCLOCALPLACEMENT($,#3);
            #3=IFCAXIS2PLACEMENT3D(#4,$,$);
            #4=IFCCARTESIANPOINT((1.,2,3.5));
            #5=IFCCARTESIANPOINTLIST3D(((0.,0.,0.),(1.,2.,3.)));
            #6=IFCPROPERTYSINGLEVALUE('P',$,IFCREAL(2.5),$);
            #7=IFCPOLYLINE((#4,#4,#98));
            #8=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);
            #9=IFCBSPLINESURFACEWITHKNOTS(1,1,((#4,#4),(#4,#4)),.UNSPECIFIED.,.F.,.F.,.U.,(2,2),(2,2),(0.,1.),(0.,1.),.UNSPECIFIED.);
            """);

    @Test
    void readsAttributesByName() {
        IfcEntity slab = model.entity(1);

        assertThat(slab.type()).isEqualTo("IfcSlab");
        assertThat(slab.label()).isEqualTo("#1 (IfcSlab)");
        assertThat(slab.text("Name")).isEqualTo("Name");
        assertThat(slab.enumeration("PredefinedType")).isEqualTo("ROOF");
        assertThat(slab.ref("ObjectPlacement")).isEqualTo(model.entity(2));
        assertThat(model.entity(6).real("NominalValue")).isEqualTo(2.5);
    }

    @Test
    void answersEmptyForWhatIsOmittedOrUnknownToTheClass() {
        IfcEntity slab = model.entity(1);

        for (String attribute : new String[] {"Description", "NoSuchAttribute"}) {
            assertThat(slab.has(attribute)).isFalse();
            assertThat(slab.value(attribute)).isInstanceOf(StepValue.Omitted.class);
            assertThat(slab.text(attribute)).isEmpty();
            assertThat(slab.enumeration(attribute)).isEmpty();
            assertThat(slab.optionalRef(attribute)).isEmpty();
            assertThat(slab.refs(attribute)).isEmpty();
            assertThat(slab.reals(attribute)).isEmpty();
            assertThat(slab.optionalReal(attribute)).isEmpty();
        }
        assertThat(model.entity(8).has("Dimensions")).isFalse();
    }

    @Test
    void givesNumbersFlat() {
        assertThat(model.entity(4).reals("Coordinates")).containsExactly(1, 2, 3.5);
        assertThat(model.entity(5).reals("CoordList")).containsExactly(0, 0, 0, 1, 2, 3);
    }

    @Test
    void givesReferencesFlatWhetherDecodedOrNot() {
        IfcEntity surface = model.entity(9);

        assertThat(surface.refs("ControlPointsList")).hasSize(4);
        assertThat(surface.real("UDegree")).isEqualTo(1);
        assertThat(surface.refs("ControlPointsList")).hasSize(4).containsOnly(model.entity(4));
    }

    @Test
    void namesTheAttributeThatRefersToNothing() {
        assertThatThrownBy(() -> model.entity(1).ref("Representation"))
                .isInstanceOf(IfcException.class)
                .hasMessage("test.ifc: Representation of #1 (IfcSlab) refers to #99, which is not in the file");
        assertThatThrownBy(() -> model.entity(7).refs("Points"))
                .isInstanceOf(IfcException.class)
                .hasMessageContaining("#98");
    }

    @Test
    void namesTheAttributeThatIsMissing() {
        assertThatThrownBy(() -> model.entity(1).ref("OwnerHistory"))
                .isInstanceOf(IfcException.class)
                .hasMessage("test.ifc: OwnerHistory of #1 (IfcSlab) is missing");
        assertThatThrownBy(() -> model.entity(1).real("Name"))
                .isInstanceOf(IfcException.class)
                .hasMessageContaining("should be a number");
        assertThatThrownBy(() -> model.entity(1).optionalRef("Name"))
                .isInstanceOf(IfcException.class)
                .hasMessageContaining("should refer to one instance");
    }

    @Test
    void isEqualByNumberWithinOneModel() {
        IfcModel other = ModelText.model("IFC4", "#1=IFCSLAB('id',$,'Name',$,$,$,$,$,.ROOF.);");

        assertThat(model.entity(1)).isEqualTo(model.entity(1)).hasSameHashCodeAs(model.entity(1));
        assertThat(model.entity(1)).isNotEqualTo(model.entity(2)).isNotEqualTo(other.entity(1));
    }
}

package runtrue.ifc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Schema, contexts, relations and notes of a model. */
class IfcModelTest {
    @ParameterizedTest
    @CsvSource({"IFC2X_FINAL,IFC2X3", "IFC4X2,IFC4", "IFC4X3_ADD2,IFC4X3"})
    void opensTheSchemaTheFileStates(String stated, String schema) {
        assertThat(ModelText.model(stated, "").schema()).isEqualTo(schema);
    }

    @Test
    void refusesAnotherSchemaByName() {
        assertThatThrownBy(() -> ModelText.model("CIS2", ""))
                .isInstanceOf(IfcException.class)
                .hasMessage("test.ifc: schema CIS2 is not read; export the model as IFC2X3, IFC4 or IFC4X3");
    }

    @Test
    void readsPrecisionInMetresAndTrueNorthClockwise() {
        IfcModel model = ModelText.model("IFC4", """
                #1=IFCPROJECT('0',$,$,$,$,$,$,(#4),#2);
                #2=IFCUNITASSIGNMENT((#3));
                #3=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);
                #4=IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,0.01,#5,#7);
                #5=IFCAXIS2PLACEMENT3D(#6,$,$);
                #6=IFCCARTESIANPOINT((0.,0.,0.));
                #7=IFCDIRECTION((1.,1.));
                """);

        assertThat(model.precision().orElseThrow()).isCloseTo(1e-5, within(1e-18));
        assertThat(model.trueNorth().orElseThrow()).isCloseTo(Math.PI / 4, within(1e-15));
        assertThat(model.notes()).noneSatisfy(note -> assertThat(note).contains("world coordinate system"));
    }

    @Test
    void findsTheContextAboveASubContext() {
        IfcModel model = ModelText.model("IFC4", """
                #1=IFCPROJECT('0',$,$,$,$,$,$,(#8),$);
                #8=IFCGEOMETRICREPRESENTATIONSUBCONTEXT('Body','Model',*,*,*,*,#4,$,.MODEL_VIEW.,$);
                #4=IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,0.01,#5,#7);
                #5=IFCAXIS2PLACEMENT3D(#6,$,$);
                #6=IFCCARTESIANPOINT((0.,0.,0.));
                #7=IFCDIRECTION((-1.,0.));
                """);

        assertThat(model.precision()).hasValue(0.01);
        assertThat(model.trueNorth().orElseThrow()).isCloseTo(-Math.PI / 2, within(1e-15));
    }

    @Test
    void notesAWorldThatIsNotAtTheOrigin() {
        IfcModel model = ModelText.model("IFC4", """
                #1=IFCPROJECT('0',$,$,$,$,$,$,(#4),$);
                #4=IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,$,#5,$);
                #5=IFCAXIS2PLACEMENT3D(#6,$,$);
                #6=IFCCARTESIANPOINT((100.,0.,0.));
                """);

        assertThat(model.trueNorth()).isEmpty();
        assertThat(model.notes()).anySatisfy(note -> assertThat(note).contains("world coordinate system of #4"));
    }

    @Test
    void listsAClassWithItsSubtypesByNumber() {
        IfcModel model = ModelText.model("IFC4", """
                #9=IFCBEAM('a',$,$,$,$,$,$,$,$);
                #3=IFCBEAMSTANDARDCASE('b',$,$,$,$,$,$,$,$);
                #5=IFCMEMBER('c',$,$,$,$,$,$,$,$);
                """);

        assertThat(model.all("IfcBeam")).extracting(IfcEntity::id).containsExactly(3, 9);
        assertThat(model.all("IfcBuildingElement")).extracting(IfcEntity::id).containsExactly(3, 5, 9);
        assertThat(model.all("IfcRoof")).isEmpty();
    }

    @Test
    void findsBuildingElementsUnderTheirLaterName() {
        IfcModel model = ModelText.model("IFC4X3", "#9=IFCBEAM('a',$,$,$,$,$,$,$,$);");

        assertThat(model.all("IfcBuildingElement")).hasSize(1);
        assertThat(model.entity(9).isA("IfcBuildingElement")).isTrue();
        assertThat(model.entity(9).isA("IfcBuiltElement")).isTrue();
    }

    @Test
    void followsPartsBothWays() {
        IfcModel model = ModelText.model("IFC4", """
                #1=IFCROOF('a',$,$,$,$,$,$,$,$);
                #2=IFCSLAB('b',$,$,$,$,$,$,$,$);
                #3=IFCSLAB('c',$,$,$,$,$,$,$,$);
                #4=IFCCOVERING('d',$,$,$,$,$,$,$,$);
                #5=IFCDISTRIBUTIONPORT('e',$,$,$,$,$,$,$,$,$);
                #6=IFCRELAGGREGATES('r',$,$,$,#1,(#3,#2));
                #7=IFCRELNESTS('n',$,$,$,#1,(#4,#5));
                """);

        assertThat(model.parts(model.entity(1))).extracting(IfcEntity::id).containsExactly(3, 2, 4);
        assertThat(model.whole(model.entity(2))).isEqualTo(model.entity(1));
        assertThat(model.whole(model.entity(4))).isEqualTo(model.entity(1));
        assertThat(model.whole(model.entity(1))).isNull();
    }

    @Test
    void findsOpeningsAndWhatFillsThem() {
        IfcModel model = ModelText.model("IFC2X3", """
                #1=IFCSLAB('a',$,$,$,$,$,$,$,.ROOF.);
                #2=IFCOPENINGELEMENT('b',$,$,$,$,$,$,$);
                #3=IFCWINDOW('c',$,$,$,$,$,$,$,$,$);
                #4=IFCRELVOIDSELEMENT('r',$,$,$,#1,#2);
                #5=IFCRELFILLSELEMENT('f',$,$,$,#2,#3);
                """);

        assertThat(model.openings(model.entity(1))).extracting(IfcEntity::id).containsExactly(2);
        assertThat(model.fillings(model.entity(2))).extracting(IfcEntity::id).containsExactly(3);
        assertThat(model.openings(model.entity(2))).isEmpty();
    }

    @Test
    void passesOverRelationsToMissingInstancesWithANote() {
        IfcModel model = ModelText.model("IFC4", """
                #1=IFCROOF('a',$,$,$,$,$,$,$,$);
                #2=IFCSLAB('b',$,$,$,$,$,$,$,$);
                #6=IFCRELAGGREGATES('r',$,$,$,#1,(#77,#2));
                """);

        assertThat(model.parts(model.entity(1))).extracting(IfcEntity::id).containsExactly(2);
        assertThat(model.notes()).anySatisfy(note -> assertThat(note).contains("#6", "#77", "not in the file"));
    }

    @Test
    void notesElementsThatShareAGlobalId() {
        IfcModel model = ModelText.model("IFC4", """
                #1=IFCROOF('same',$,$,$,$,$,$,$,$);
                #2=IFCSLAB('same',$,$,$,$,$,$,$,$);
                #3=IFCSLAB('other',$,$,$,$,$,$,$,$);
                """);

        assertThat(model.notes()).contains("GlobalId same is shared by #1 (IfcRoof), #2 (IfcSlab).");
    }

    @Test
    void notesClassesThatTheSchemaLacks() {
        IfcModel model = ModelText.model("IFC4", "#1=IFCNOSUCHTHING('x');#2=IFCSLAB('b',$,$,$,$,$,$,$,$);");

        assertThat(model.all("IfcSlab")).hasSize(1);
        assertThat(model.entity(1).has("GlobalId")).isFalse();
        assertThat(model.notes())
                .contains("Class IFCNOSUCHTHING is not in schema IFC4; its instances are passed over.");
    }

    @Test
    void namesAnInstanceThatIsNotThere() {
        IfcModel model = ModelText.model("IFC4", "");

        assertThatThrownBy(() -> model.entity(5))
                .isInstanceOf(IfcException.class)
                .hasMessage("test.ifc: #5 is not in the file");
    }

    @Test
    void notesContextsThatCannotBeReadAndGoesOn() {
        IfcModel model = ModelText.model("IFC4", """
                #1=IFCPROJECT('0',$,$,$,$,$,$,(#4),$);
                #4=IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,1.E-5,#5,#7);
                #7=IFCDIRECTION((0.,0.));
                """);

        assertThat(model.precision()).hasValue(1e-5);
        assertThat(model.trueNorth()).isEmpty();
        assertThat(model.notes())
                .anySatisfy(note -> assertThat(note).contains("#7", "without length"))
                .anySatisfy(note -> assertThat(note).contains("#5", "not in the file"));
    }

    @Test
    void notesSetsAndMaterialsThatCannotBeReadAndDescribesTheRest() {
        IfcModel model = ModelText.model("IFC4", """
                #11=IFCSLAB('s',$,'Plane',$,$,$,$,$,$);
                #20=IFCRELDEFINESBYPROPERTIES('r',$,$,$,(#11),#21);
                #21=IFCPROPERTYSET('p',$,'Set',$,(#22,#99));
                #22=IFCPROPERTYSINGLEVALUE('P',$,IFCLABEL('1'),$);
                #30=IFCRELASSOCIATESMATERIAL('m',$,$,$,(#11),#31);
                #31=IFCMATERIALLAYERSETUSAGE(#98,.AXIS3.,.POSITIVE.,0.,$);
                """);

        Element slab = model.describe(model.entity(11));

        assertThat(slab.name()).isEqualTo("Plane");
        assertThat(slab.layers()).isEmpty();
        assertThat(model.notes())
                .anySatisfy(note -> assertThat(note).contains("#21 (IfcPropertySet)", "#99"))
                .anySatisfy(note -> assertThat(note).contains("Material of #11 (IfcSlab)", "#98"));
    }

    @Test
    void answersManyThreadsAlike() {
        StringBuilder data = new StringBuilder("#1=IFCROOF('roof',$,$,$,$,$,$,$,$);");
        StringBuilder parts = new StringBuilder();
        for (int id = 10; id < 3010; id++) {
            data.append("#" + id + "=IFCSLAB('s" + id + "',$,'n" + id + "',$,$,#5,$,$,.ROOF.);\n");
            parts.append(parts.isEmpty() ? "#" : ",#").append(id);
        }
        data.append("#5=IFCLOCALPLACEMENT($,#6);#6=IFCAXIS2PLACEMENT3D(#7,$,$);#7=IFCCARTESIANPOINT((1.,2.,3.));");
        data.append("#8=IFCRELAGGREGATES('r',$,$,$,#1,(" + parts + "));");
        IfcModel model = ModelText.model("IFC4", data.toString());

        java.util.stream.IntStream.range(10, 3010).parallel().forEach(id -> {
            IfcEntity slab = model.entity(id);
            assertThat(model.describe(slab).name()).isEqualTo("n" + id);
            assertThat(model.describe(slab).parent()).isEqualTo("roof");
            assertThat(model.placement(slab)
                            .apply(org.apache.commons.geometry.euclidean.threed.Vector3D.ZERO)
                            .getZ())
                    .isEqualTo(3);
        });
    }
}

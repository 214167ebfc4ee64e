package runtrue.ifc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Identity, containment, types, materials and classification of elements. */
class DescribeTest {
    private static final String SITE = """
            #1=IFCSITE('site',$,'Site',$,$,$,$,$,.ELEMENT.,$,$,$,$,$);
            #2=IFCBUILDING('building',$,'Mill',$,$,$,$,$,.ELEMENT.,$,$,$);
            #3=IFCBUILDINGSTOREY('storey',$,'Roof level',$,$,$,$,$,.ELEMENT.,$);
            #4=IFCRELAGGREGATES('r1',$,$,$,#1,(#2));
            #5=IFCRELAGGREGATES('r2',$,$,$,#2,(#3));
            #10=IFCROOF('roof',$,'Main roof',$,$,$,$,$,.GABLE_ROOF.);
            #11=IFCSLAB('slab',$,'Plane 1',$,'Own type','','','T-1',$);
            #12=IFCRELAGGREGATES('r3',$,$,$,#10,(#11));
            #13=IFCRELCONTAINEDINSPATIALSTRUCTURE('r4',$,$,$,(#10),#3);
            """;

    @Test
    void tellsWhoAnElementIs() {
        Element slab = describe("IFC4", SITE, 11);

        assertThat(slab.globalId()).isEqualTo("slab");
        assertThat(slab.file()).isEqualTo("test.ifc");
        assertThat(slab.stepId()).isEqualTo(11);
        assertThat(slab.ifcClass()).isEqualTo("IfcSlab");
        assertThat(slab.name()).isEqualTo("Plane 1");
        assertThat(slab.objectType()).isEqualTo("Own type");
        assertThat(slab.tag()).isEqualTo("T-1");
    }

    @Test
    void findsStoreyAndBuildingOfAPartByWayOfItsWhole() {
        Element slab = describe("IFC4", SITE, 11);

        assertThat(slab.storey()).isEqualTo("Roof level");
        assertThat(slab.building()).isEqualTo("Mill");
        assertThat(slab.parent()).isEqualTo("roof");
        assertThat(slab.parentClass()).isEqualTo("IfcRoof");
    }

    @Test
    void isNoPartOfTheStoreyItIsContainedIn() {
        Element roof = describe("IFC4", SITE, 10);

        assertThat(roof.parent()).isEmpty();
        assertThat(roof.storey()).isEqualTo("Roof level");
    }

    @Test
    void namesFacilityAndPartOfInfrastructure() {
        Element slab = describe("IFC4X3_ADD2", """
                #2=IFCBRIDGE('bridge',$,'Footbridge',$,$,$,$,$,.ELEMENT.,$);
                #3=IFCBRIDGEPART('part',$,'Deck',$,$,$,$,$,.ELEMENT.,.LONGITUDINAL.,$);
                #5=IFCRELAGGREGATES('r2',$,$,$,#2,(#3));
                #11=IFCSLAB('slab',$,$,$,$,$,$,$,$);
                #13=IFCRELCONTAINEDINSPATIALSTRUCTURE('r4',$,$,$,(#11),#3);
                """, 11);

        assertThat(slab.building()).isEqualTo("Footbridge");
        assertThat(slab.storey()).isEqualTo("Deck");
    }

    @Test
    void survivesAStructureThatContainsItself() {
        Element slab = describe("IFC4", """
                #3=IFCBUILDINGSTOREY('storey',$,'Loop',$,$,$,$,$,.ELEMENT.,$);
                #5=IFCRELAGGREGATES('r2',$,$,$,#3,(#3));
                #11=IFCSLAB('slab',$,$,$,$,$,$,$,$);
                #13=IFCRELCONTAINEDINSPATIALSTRUCTURE('r4',$,$,$,(#11),#3);
                """, 11);

        assertThat(slab.storey()).isEqualTo("Loop");
    }

    @Test
    void takesThePredefinedTypeOfTheTypeObjectWhereItsOwnSaysNothing() {
        String type =
                "#20=IFCSLABTYPE('t',$,'Sandwich',$,$,$,$,$,$,.ROOF.);#21=IFCRELDEFINESBYTYPE('r',$,$,$,(#11),#20);";

        Element silent = describe("IFC4", "#11=IFCSLAB('s',$,$,$,$,$,$,$,$);" + type, 11);
        Element notDefined = describe("IFC4", "#11=IFCSLAB('s',$,$,$,$,$,$,$,.NOTDEFINED.);" + type, 11);
        Element floor = describe("IFC4", "#11=IFCSLAB('s',$,$,$,$,$,$,$,.FLOOR.);" + type, 11);

        assertThat(silent.predefinedType()).isEqualTo("ROOF");
        assertThat(silent.typeName()).isEqualTo("Sandwich");
        assertThat(notDefined.predefinedType()).isEqualTo("ROOF");
        assertThat(floor.predefinedType()).isEqualTo("FLOOR");
    }

    @Test
    void readsTheShapeTypeOfAnEarlyRoofAsItsPredefinedType() {
        assertThat(describe("IFC2X3", "#1=IFCROOF('r',$,$,$,$,$,$,$,.HIP_ROOF.);", 1)
                        .predefinedType())
                .isEqualTo("HIP_ROOF");
    }

    @Test
    void listsLayersOfASetInMetres() {
        Element slab = describe("IFC4", """
                #1=IFCPROJECT('0',$,$,$,$,$,$,(),#2);
                #2=IFCUNITASSIGNMENT((#3));
                #3=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);
                #11=IFCSLAB('s',$,$,$,$,$,$,$,$);
                #20=IFCRELASSOCIATESMATERIAL('r',$,$,$,(#11),#21);
                #21=IFCMATERIALLAYERSETUSAGE(#22,.AXIS3.,.POSITIVE.,0.,$);
                #22=IFCMATERIALLAYERSET((#23,#24),'Roof',$);
                #23=IFCMATERIALLAYER(#25,0.7,$,$,$,$,$);
                #24=IFCMATERIALLAYER($,120.,$,'Mineral wool',$,$,$);
                #25=IFCMATERIAL('Steel',$,$);
                """, 11);

        assertThat(slab.layers()).containsExactly(layer("Steel", 0.7 * 0.001), layer("Mineral wool", 120 * 0.001));
    }

    @Test
    void readsListsConstituentsAndProfilesAsPlainMaterials() {
        String materials = "#25=IFCMATERIAL('Steel',$,$);#26=IFCMATERIAL('Zinc',$,$);";
        String use = "#11=IFCBEAM('s',$,$,$,$,$,$,$,$);#20=IFCRELASSOCIATESMATERIAL('r',$,$,$,(#11),#21);" + materials;

        assertThat(describe("IFC4", use + "#21=IFCMATERIALLIST((#25,#26));", 11).layers())
                .containsExactly(plain("Steel"), plain("Zinc"));
        assertThat(describe(
                                "IFC4",
                                use + "#21=IFCMATERIALCONSTITUENTSET($,$,(#22));"
                                        + "#22=IFCMATERIALCONSTITUENT('web',$,#26,$,$);",
                                11)
                        .layers())
                .containsExactly(plain("Zinc"));
        assertThat(describe(
                                "IFC4",
                                use + "#21=IFCMATERIALPROFILESETUSAGE(#22,$,$);"
                                        + "#22=IFCMATERIALPROFILESET($,$,(#23),$);#23=IFCMATERIALPROFILE($,$,#25,#99,$,$);",
                                11)
                        .layers())
                .containsExactly(plain("Steel"));
        assertThat(describe("IFC4", use + "#21=IFCMATERIALPROFILE($,$,#25,#99,$,$);", 11)
                        .layers())
                .containsExactly(plain("Steel"));
    }

    @Test
    void takesMaterialsOfTheTypeWhereItHasNoneItself() {
        String type = "#11=IFCSLAB('s',$,$,$,$,$,$,$,$);#20=IFCSLABTYPE('t',$,$,$,$,$,$,$,$,.ROOF.);"
                + "#21=IFCRELDEFINESBYTYPE('r',$,$,$,(#11),#20);#25=IFCMATERIAL('Steel',$,$);"
                + "#26=IFCRELASSOCIATESMATERIAL('r',$,$,$,(#20),#25);";
        String own = "#27=IFCMATERIAL('Zinc',$,$);#28=IFCRELASSOCIATESMATERIAL('r',$,$,$,(#11),#27);";

        assertThat(describe("IFC4", type, 11).layers()).containsExactly(plain("Steel"));
        assertThat(describe("IFC4", type + own, 11).layers()).containsExactly(plain("Zinc"));
    }

    @Test
    void listsCodesAndNamesOfClassifications() {
        Element later = describe(
                "IFC4",
                "#11=IFCSLAB('s',$,$,$,$,$,$,$,$);"
                        + "#20=IFCRELASSOCIATESCLASSIFICATION('r',$,$,$,(#11),#21);"
                        + "#21=IFCCLASSIFICATIONREFERENCE($,'27.12','Pitched roofs',$,$,$);",
                11);
        Element earlier = describe(
                "IFC2X3",
                "#11=IFCSLAB('s',$,$,$,$,$,$,$,$);"
                        + "#20=IFCRELASSOCIATESCLASSIFICATION('r',$,$,$,(#11),#21);"
                        + "#21=IFCCLASSIFICATIONREFERENCE($,'27.12','Pitched roofs',$);",
                11);

        assertThat(later.classifications()).containsExactly("27.12", "Pitched roofs");
        assertThat(earlier.classifications()).containsExactly("27.12", "Pitched roofs");
    }

    @Test
    void keepsPropertiesInTheOrderOfTheFile() {
        Element slab = describe(
                "IFC4",
                "#11=IFCSLAB('s',$,$,$,$,$,$,$,$);"
                        + "#20=IFCRELDEFINESBYPROPERTIES('r',$,$,$,(#11),#21);"
                        + "#21=IFCPROPERTYSET('p',$,'Set',$,(#22,#23,#24));"
                        + "#22=IFCPROPERTYSINGLEVALUE('Z',$,IFCLABEL('1'),$);"
                        + "#23=IFCPROPERTYSINGLEVALUE('A',$,IFCLABEL('2'),$);"
                        + "#24=IFCPROPERTYSINGLEVALUE('M',$,IFCLABEL('3'),$);",
                11);

        assertThat(List.copyOf(slab.properties().keySet())).isEqualTo(List.of("Set.Z", "Set.A", "Set.M"));
        assertThat(Map.copyOf(slab.properties())).hasSize(3);
    }

    private static Element describe(String schema, String data, int id) {
        IfcModel model = ModelText.model(schema, data);
        return model.describe(model.entity(id));
    }

    private static MaterialLayer layer(String material, double metres) {
        return new MaterialLayer(material, OptionalDouble.of(metres));
    }

    private static MaterialLayer plain(String material) {
        return new MaterialLayer(material, OptionalDouble.empty());
    }
}

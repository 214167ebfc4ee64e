package runtrue.ifc.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Facts of the published schemas: ISO 16739 and the IFC2X3 TC1 specification of buildingSMART, from memory. */
class SchemaTest {
    @ParameterizedTest
    @CsvSource({"IFC2X3,653", "IFC4,776", "IFC4X3,876"})
    void hasAsManyEntitiesAsThePublishedSchema(String name, int entities) {
        assertThat(schema(name).size()).isEqualTo(entities);
    }

    @ParameterizedTest
    @CsvSource({
        "IFC2X3,IfcSlab,9",
        "IFC4,IfcSlab,9",
        "IFC4X3,IfcSlab,9",
        "IFC2X3,IfcMember,8",
        "IFC4,IfcMember,9",
        "IFC2X3,IfcSlabType,10",
        "IFC4,IfcSlabType,10",
        "IFC4,IfcPolygonalFaceSet,4",
        "IFC4X3,IfcIndexedPolygonalFaceWithVoids,2",
        "IFC2X3,IfcMaterialLayer,3",
        "IFC4,IfcMaterialLayer,7",
        "IFC2X3,IfcTrimmedCurve,5",
        "IFC2X3,IfcWindow,10",
        "IFC4,IfcWindow,13",
        "IFC2X3,IfcSIUnit,4",
        "IFC2X3,IfcExtrudedAreaSolid,4",
        "IFC4X3,IfcLocalPlacement,2",
        "IFC2X3,IfcGeometricRepresentationSubContext,10"
    })
    void countsAttributesWithInheritedAndDerivedOnes(String name, String entity, int attributes) {
        assertThat(find(name, entity).attributes()).hasSize(attributes);
    }

    @ParameterizedTest
    @CsvSource({
        "IFC2X3,IfcSlab,GlobalId,0",
        "IFC2X3,IfcSlab,ObjectPlacement,5",
        "IFC2X3,IfcSlab,PredefinedType,8",
        "IFC2X3,IfcRoof,ShapeType,8",
        "IFC4,IfcRoof,PredefinedType,8",
        "IFC2X3,IfcMember,PredefinedType,-1",
        "IFC4,IfcMember,PredefinedType,8",
        "IFC2X3,IfcRelDefinesByProperties,RelatingPropertyDefinition,5",
        "IFC4,IfcRelAggregates,RelatedObjects,5",
        "IFC4X3,IfcLocalPlacement,PlacementRelTo,0",
        "IFC2X3,IfcConversionBasedUnit,ConversionFactor,3",
        "IFC4,IfcCartesianTransformationOperator3DnonUniform,Scale3,6"
    })
    void placesAttributesAsTheStandardDoes(String name, String entity, String attribute, int index) {
        assertThat(find(name, entity).indexOf(attribute)).isEqualTo(index);
    }

    @Test
    void keepsThePlaceOfAnAttributeThatASubtypeDerives() {
        // Dimensions is derived for SI units, yet a file writes a * in its place.
        assertThat(find("IFC4", "IfcSIUnit").attributes()).containsExactly("Dimensions", "UnitType", "Prefix", "Name");
    }

    @ParameterizedTest
    @CsvSource({
        "IFC2X3,IfcBeam,IfcBuildingElement,true",
        "IFC4,IfcBeamStandardCase,IfcBeam,true",
        "IFC4X3,IfcSlab,IfcProduct,true",
        "IFC4,IfcSlab,IfcRoof,false",
        "IFC4,IfcElement,IfcSlab,false"
    })
    void knowsSubtypes(String name, String entity, String supertype, boolean expected) {
        assertThat(find(name, entity).isA(supertype)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "IFC2X_FINAL,IFC2X3",
        "IFC2X2_FINAL,IFC2X3",
        "ifc2x3,IFC2X3",
        "IFC4,IFC4",
        "IFC4X1,IFC4",
        "IFC4X2,IFC4",
        "IFC4X3,IFC4X3",
        "IFC4X3_RC2,IFC4X3",
        "IFC4X3_ADD2,IFC4X3",
        "IFC4X3_TC1,IFC4X3"
    })
    void mapsOtherReleasesToTheOneTheyCanBeReadWith(String stated, String read) {
        assertThat(schema(stated).name()).isEqualTo(read);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "IFC5", "IFC151", "IFC4X9", "CIS2", "CONFIG_CONTROL_DESIGN"})
    void knowsNoOtherSchema(String stated) {
        assertThat(Schema.of(stated)).isEmpty();
    }

    @Test
    void findsClassesInAnyCaseAndNoOthers() {
        Schema schema = schema("IFC4");

        assertThat(schema.find("IFCSLAB")).isSameAs(schema.find("IFCSLAB"));
        assertThat(find("IFC4", "ifcslab").name()).isEqualTo("IfcSlab");
        assertThat(schema.find("IFCNOSUCHTHING")).isNull();
    }

    @ParameterizedTest
    @CsvSource({
        "IFC4X3,IfcBuildingElement,IfcBuiltElement",
        "IFC4,IfcBuildingElement,IfcBuildingElement",
        "IFC4,IfcBuiltElement,IfcBuildingElement",
        "IFC2X3,IfcSpatialElement,IfcSpatialStructureElement",
        "IFC4,IfcNoSuchThing,IfcNoSuchThing"
    })
    void answersToTheNamesOfOtherReleases(String schema, String asked, String here) {
        assertThat(schema(schema).nameHere(asked)).isEqualTo(here);
    }

    private static Schema schema(String name) {
        return Schema.of(name).orElseThrow();
    }

    private static SchemaClass find(String schema, String keyword) {
        return Objects.requireNonNull(schema(schema).find(keyword));
    }
}

package runtrue.ifc.schema;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class ExpressReaderTest {
    @Test
    void readsNameSupertypeAndOwnAttributes() {
        assertThat(ExpressReader.read("""
                ENTITY IfcRoof
                 SUBTYPE OF (IfcBuildingElement);
                \tPredefinedType : OPTIONAL IfcRoofTypeEnum;
                \tA, B : IfcLabel;
                 WHERE
                \tWR1 : TRUE;
                END_ENTITY;
                """))
                .containsExactly(
                        new ExpressEntity("IfcRoof", "IfcBuildingElement", List.of("PredefinedType", "A", "B")));
    }

    @Test
    void leavesOutRedeclaredDerivedAndInverseAttributes() {
        assertThat(ExpressReader.read("""
                ENTITY IfcSIUnit SUBTYPE OF (IfcNamedUnit);
                  SELF\\IfcNamedUnit.UnitType : IfcUnitEnum;
                  Name : IfcSIUnitName;
                 DERIVE
                  SELF\\IfcNamedUnit.Dimensions : IfcDimensionalExponents := f(Name);
                 INVERSE
                  Users : SET OF IfcThing FOR Unit;
                END_ENTITY;
                """))
                .containsExactly(new ExpressEntity("IfcSIUnit", "IfcNamedUnit", List.of("Name")));
    }

    @Test
    void readsOnAfterAListOfUniqueItems() {
        assertThat(ExpressReader.read("""
                ENTITY IfcTypeProduct SUBTYPE OF (IfcTypeObject);
                  RepresentationMaps : OPTIONAL LIST [1:?] OF UNIQUE IfcRepresentationMap;
                  Tag : OPTIONAL IfcLabel;
                 UNIQUE
                  UR1 : Tag;
                END_ENTITY;
                """))
                .containsExactly(
                        new ExpressEntity("IfcTypeProduct", "IfcTypeObject", List.of("RepresentationMaps", "Tag")));
    }

    @Test
    void passesOverCommentsAndSupertypeLists() {
        assertThat(ExpressReader.read("""
                (* ENTITY IfcNothing; END_ENTITY; *)
                ENTITY IfcRoot -- ENTITY IfcNever; END_ENTITY;
                 ABSTRACT SUPERTYPE OF (ONEOF (IfcA, IfcB));
                  GlobalId : IfcGloballyUniqueId;
                END_ENTITY;
                """)).containsExactly(new ExpressEntity("IfcRoot", "", List.of("GlobalId")));
    }

    @Test
    void refusesWhatTheIfcSchemasDoNotUse() {
        assertThatThrownBy(() -> ExpressReader.read("ENTITY A SUBTYPE OF (B, C); END_ENTITY;"))
                .hasMessageContaining("several supertypes");
        assertThatThrownBy(() -> ExpressReader.read("ENTITY A SUBTYPE OF (B); SELF\\B.X RENAMED Y : Z; END_ENTITY;"))
                .hasMessageContaining("renamed");
        assertThatThrownBy(() -> ExpressReader.read("SCHEMA EMPTY;")).hasMessageContaining("no ENTITY");
    }

    @Test
    void writesOneSortedLineForEachEntity() {
        List<ExpressEntity> entities = List.of(
                new ExpressEntity("IfcSlab", "IfcElement", List.of("X", "Y")),
                new ExpressEntity("IfcElement", "", List.of()));

        assertThat(SchemaTables.table("some.exp", entities).lines().skip(1))
                .containsExactly("IfcElement -", "IfcSlab IfcElement X Y");
    }
}

package runtrue.ids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.xmlunit.builder.DiffBuilder;
import org.xmlunit.builder.Input;
import org.xmlunit.diff.ComparisonResult;
import org.xmlunit.diff.Diff;
import org.xmlunit.xpath.JAXPXPathEngine;
import runtrue.ids.Requirement.Attribute;
import runtrue.ids.Requirement.Cardinality;
import runtrue.ids.Requirement.Material;
import runtrue.ids.Requirement.Property;

/**
 * The expected document was written by hand by the published schema of the standard (ids.xsd in repository
 * buildingSMART/IDS, folder Schema): names and order of elements, which attributes there are, enumerations as
 * restrictions of XML Schema. The schema itself is not in this repository; {@link IdsStructure} has its order of elements.
 */
class IdsFileTest {
    private static final Specification SLABS = new Specification(
            "Roof slabs",
            List.of("IFC2X3", "IFC4", "IFC4X3_ADD2"),
            "Pitch < 3 degrees & more",
            "State what you know.",
            List.of("IfcSlab", "IfcRoof"),
            List.of("ROOF"),
            true,
            List.of(
                    new Requirement(new Material(), Cardinality.OPTIONAL, ""),
                    new Requirement(
                            new Property("Pset_SlabCommon", "PitchAngle", "IfcPlaneAngleMeasure"),
                            Cardinality.OPTIONAL,
                            "With a unit."),
                    new Requirement(new Attribute("Name"), Cardinality.REQUIRED, "")));

    private static final IdsDocument DOCUMENT = new IdsDocument(
            "Roof models", "1.0.0", "", Optional.of(LocalDate.of(2026, 3, 31)), "Checks", List.of(SLABS));

    static final String EXPECTED = """
            <?xml version="1.0" encoding="UTF-8"?>
            <ids xmlns="http://standards.buildingsmart.org/IDS" xmlns:xs="http://www.w3.org/2001/XMLSchema"
                xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"
                xsi:schemaLocation="http://standards.buildingsmart.org/IDS http://standards.buildingsmart.org/IDS/1.0/ids.xsd">
              <info>
                <title>Roof models</title>
                <version>1.0.0</version>
                <date>2026-03-31</date>
                <purpose>Checks</purpose>
              </info>
              <specifications>
                <specification name="Roof slabs" ifcVersion="IFC2X3 IFC4 IFC4X3_ADD2"
                    description="Pitch &lt; 3 degrees &amp; more" instructions="State what you know.">
                  <applicability minOccurs="1" maxOccurs="unbounded">
                    <entity>
                      <name>
                        <xs:restriction base="xs:string">
                          <xs:enumeration value="IFCSLAB"/>
                          <xs:enumeration value="IFCROOF"/>
                        </xs:restriction>
                      </name>
                      <predefinedType><simpleValue>ROOF</simpleValue></predefinedType>
                    </entity>
                  </applicability>
                  <requirements>
                    <attribute cardinality="required"><name><simpleValue>Name</simpleValue></name></attribute>
                    <property cardinality="optional" instructions="With a unit." dataType="IFCPLANEANGLEMEASURE">
                      <propertySet><simpleValue>Pset_SlabCommon</simpleValue></propertySet>
                      <baseName><simpleValue>PitchAngle</simpleValue></baseName>
                    </property>
                    <material cardinality="optional"/>
                  </requirements>
                </specification>
              </specifications>
            </ids>
            """;

    private static String written(IdsDocument document) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        IdsFile.write(document, out);
        return out.toString(StandardCharsets.UTF_8);
    }

    @Test
    void the_document_is_as_the_published_schema_has_it() throws IOException {
        Diff diff = DiffBuilder.compare(Input.fromString(EXPECTED))
                .withTest(Input.fromString(written(DOCUMENT)))
                .ignoreWhitespace()
                .checkForIdentical()
                .withDifferenceEvaluator((comparison, outcome) -> switch (comparison.getType()) {
                    case XML_STANDALONE, NAMESPACE_PREFIX -> ComparisonResult.EQUAL;
                    default -> outcome;
                })
                .build();
        assertThat(diff.hasDifferences()).as(diff.toString()).isFalse();
    }

    @Test
    void its_elements_stand_in_the_order_of_the_schema() throws IOException {
        assertThat(IdsStructure.faults(written(DOCUMENT))).isEmpty();
    }

    /** Else the check above would prove nothing. */
    @Test
    void another_order_is_a_fault_and_so_is_an_element_that_the_schema_does_not_know() throws IOException {
        String turned = written(DOCUMENT)
                .replaceAll("<title>(.*)</title><version>(.*)</version>", "<version>$2</version><title>$1</title>");
        assertThat(IdsStructure.faults(turned)).isNotEmpty();
        assertThat(IdsStructure.faults(written(DOCUMENT).replace("purpose", "reason")))
                .isNotEmpty();
        assertThat(IdsStructure.faults(written(DOCUMENT).replace("cardinality=\"required\"", "cardinality=\"wanted\"")))
                .isNotEmpty();
    }

    @Test
    void what_is_not_needed_may_be_missing_from_a_model() throws IOException {
        Specification any =
                new Specification("Grid", List.of("IFC4"), "", "", List.of("IfcGrid"), List.of(), false, List.of());
        String xml = written(new IdsDocument("t", "", "", Optional.empty(), "", List.of(any)));
        assertThat(new JAXPXPathEngine()
                        .evaluate(
                                "//*[local-name()='applicability']/@minOccurs",
                                Input.fromString(xml).build()))
                .isEqualTo("0");
        assertThat(IdsStructure.faults(xml)).isEmpty();
    }

    @Test
    void control_characters_do_not_spoil_the_file() throws IOException {
        String xml = written(new IdsDocument("a\u0001b", "", "", Optional.empty(), "", List.of(SLABS)));
        assertThat(xml).contains("<title>a\uFFFDb</title>");
    }

    @Test
    void versions_and_classes_that_the_standard_does_not_know_are_refused() {
        assertThatThrownBy(() ->
                        new Specification("x", List.of("IFC5"), "", "", List.of("IfcSlab"), List.of(), true, List.of()))
                .hasMessageContaining("IDS 1.0 knows IFC2X3, IFC4, IFC4X3_ADD2");
        assertThatThrownBy(() ->
                        new Specification("x", List.of("IFC4"), "", "", List.of("Slab"), List.of(), true, List.of()))
                .hasMessageContaining("are no IFC classes");
    }
}

package runtrue.ids;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import runtrue.ids.Requirement.Attribute;
import runtrue.ids.Requirement.Facet;
import runtrue.ids.Requirement.Material;
import runtrue.ids.Requirement.Property;

/**
 * Writes an IDS 1.0 file. Elements stand in the order of the standard's schema, whatever the order of the records: the
 * facets of a requirement are attribute, property, material.
 */
public final class IdsFile {
    /** Namespace of the standard. */
    public static final String NAMESPACE = "http://standards.buildingsmart.org/IDS";

    private static final String SCHEMA = NAMESPACE + " http://standards.buildingsmart.org/IDS/1.0/ids.xsd";
    private static final String XS = "http://www.w3.org/2001/XMLSchema";
    private static final String XSI = "http://www.w3.org/2001/XMLSchema-instance";
    private static final Pattern ILLEGAL =
            Pattern.compile("[^\\t\\n\\r\\x20-\\uD7FF\\uE000-\\uFFFD\\x{10000}-\\x{10FFFF}]");

    private final XMLStreamWriter xml;

    private IdsFile(XMLStreamWriter xml) {
        this.xml = xml;
    }

    /** Writes the file in UTF-8 and leaves the stream open. */
    public static void write(IdsDocument document, OutputStream out) throws IOException {
        try {
            XMLStreamWriter xml =
                    XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out, StandardCharsets.UTF_8.name());
            new IdsFile(xml).document(document);
            xml.flush();
        } catch (XMLStreamException e) {
            throw new IOException("the IDS could not be written: " + e.getMessage(), e);
        }
    }

    private void document(IdsDocument document) throws XMLStreamException {
        xml.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0");
        xml.setDefaultNamespace(NAMESPACE);
        xml.setPrefix("xs", XS);
        xml.setPrefix("xsi", XSI);
        start("ids");
        xml.writeDefaultNamespace(NAMESPACE);
        xml.writeNamespace("xs", XS);
        xml.writeNamespace("xsi", XSI);
        xml.writeAttribute("xsi", XSI, "schemaLocation", SCHEMA);
        start("info");
        text("title", document.title());
        text("version", document.version());
        text("description", document.description());
        text("date", document.date().map(Object::toString).orElse(""));
        text("purpose", document.purpose());
        xml.writeEndElement();
        start("specifications");
        for (Specification specification : document.specifications()) {
            specification(specification);
        }
        xml.writeEndElement();
        xml.writeEndElement();
        xml.writeEndDocument();
    }

    private void specification(Specification specification) throws XMLStreamException {
        start("specification");
        attribute("name", specification.name());
        attribute("ifcVersion", String.join(" ", specification.ifcVersions()));
        attribute("description", specification.description());
        attribute("instructions", specification.instructions());
        start("applicability");
        attribute("minOccurs", specification.needed() ? "1" : "0");
        attribute("maxOccurs", "unbounded");
        start("entity");
        choice("name", specification.entities().stream().map(IdsFile::upper).toList());
        if (!specification.predefinedTypes().isEmpty()) {
            choice("predefinedType", specification.predefinedTypes());
        }
        xml.writeEndElement();
        xml.writeEndElement();
        List<Requirement> requirements = specification.requirements().stream()
                .sorted(Comparator.comparingInt(r -> order(r.facet())))
                .toList();
        if (!requirements.isEmpty()) {
            start("requirements");
            for (Requirement requirement : requirements) {
                requirement(requirement);
            }
            xml.writeEndElement();
        }
        xml.writeEndElement();
    }

    private static int order(Facet facet) {
        return facet instanceof Attribute ? 0 : facet instanceof Property ? 1 : 2;
    }

    private void requirement(Requirement requirement) throws XMLStreamException {
        Facet facet = requirement.facet();
        if (facet instanceof Attribute attribute) {
            facet("attribute", requirement);
            choice("name", List.of(attribute.name()));
        } else if (facet instanceof Property property) {
            facet("property", requirement);
            if (!property.dataType().isEmpty()) {
                attribute("dataType", upper(property.dataType()));
            }
            choice("propertySet", List.of(property.set()));
            choice("baseName", List.of(property.baseName()));
        } else if (facet instanceof Material) {
            facet("material", requirement);
        }
        xml.writeEndElement();
    }

    private void facet(String name, Requirement requirement) throws XMLStreamException {
        start(name);
        attribute("cardinality", requirement.cardinality().word());
        attribute("instructions", requirement.instructions());
    }

    /** One value as it is, several as an enumeration of XML Schema. */
    private void choice(String name, List<String> values) throws XMLStreamException {
        start(name);
        if (values.size() == 1) {
            text("simpleValue", values.get(0));
        } else {
            xml.writeStartElement("xs", "restriction", XS);
            xml.writeAttribute("base", "xs:string");
            for (String value : values) {
                xml.writeEmptyElement("xs", "enumeration", XS);
                xml.writeAttribute("value", legal(value));
            }
            xml.writeEndElement();
        }
        xml.writeEndElement();
    }

    private void start(String name) throws XMLStreamException {
        xml.writeStartElement(NAMESPACE, name);
    }

    private void text(String name, String text) throws XMLStreamException {
        if (!text.isEmpty()) {
            start(name);
            xml.writeCharacters(legal(text));
            xml.writeEndElement();
        }
    }

    private void attribute(String name, String value) throws XMLStreamException {
        if (!value.isEmpty()) {
            xml.writeAttribute(name, legal(value));
        }
    }

    private static String upper(String name) {
        return name.toUpperCase(Locale.ROOT);
    }

    /** XML 1.0 has no way to write some control characters. */
    private static String legal(String text) {
        return ILLEGAL.matcher(text).replaceAll("\uFFFD");
    }
}

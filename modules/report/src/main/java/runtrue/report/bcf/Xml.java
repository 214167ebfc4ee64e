package runtrue.report.bcf;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import runtrue.report.xml.LegalText;

/** Writes one small XML document into memory; texts are cleaned of what XML 1.0 cannot hold. */
final class Xml {
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final XMLStreamWriter xml;

    /** Starts a document with its root element, which {@link #bytes()} ends. */
    Xml(String root) {
        try {
            xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(bytes, StandardCharsets.UTF_8.name());
            xml.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0");
            xml.writeStartElement(root);
        } catch (XMLStreamException e) {
            throw inMemory(e);
        }
    }

    /** What stands in an element. */
    @FunctionalInterface
    interface Content {
        void write();
    }

    Xml attribute(String name, String value) {
        try {
            xml.writeAttribute(name, LegalText.of(value));
            return this;
        } catch (XMLStreamException e) {
            throw inMemory(e);
        }
    }

    void element(String name, Content content) {
        try {
            xml.writeStartElement(name);
            content.write();
            xml.writeEndElement();
        } catch (XMLStreamException e) {
            throw inMemory(e);
        }
    }

    void text(String name, String value) {
        element(name, () -> characters(value));
    }

    private void characters(String value) {
        try {
            xml.writeCharacters(LegalText.of(value));
        } catch (XMLStreamException e) {
            throw inMemory(e);
        }
    }

    /** Ends the document. */
    byte[] bytes() {
        try {
            xml.writeEndElement();
            xml.writeEndDocument();
            xml.flush();
            return bytes.toByteArray();
        } catch (XMLStreamException e) {
            throw inMemory(e);
        }
    }

    private static IllegalStateException inMemory(XMLStreamException e) {
        return new IllegalStateException("a document in memory could not be written", e);
    }
}

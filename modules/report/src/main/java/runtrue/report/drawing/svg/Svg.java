package runtrue.report.drawing.svg;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import runtrue.report.drawing.place.Vec;
import runtrue.report.xml.LegalText;

/**
 * Writes one drawing as SVG 1.1, millimetres for units, Y down. Looks are attributes of each mark, not a style sheet, so that
 * several drawings can stand in one page without changing each other. Fails with {@link UncheckedIOException}.
 */
public final class Svg {
    private static final String NAMESPACE = "http://www.w3.org/2000/svg";
    private static final String FACES = "Arial, 'Liberation Sans', 'DejaVu Sans', Helvetica, sans-serif";

    private final XMLStreamWriter xml;
    private final Set<String> ids = new HashSet<>();

    private Svg(Writer out) throws XMLStreamException {
        xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out);
    }

    /** What is drawn on an open page. */
    @FunctionalInterface
    public interface Content {
        void on(Svg svg);
    }

    /** Writes a page and leaves the stream open. */
    public static void write(OutputStream out, double width, double height, String title, Content content)
            throws IOException {
        Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        try {
            Svg svg = new Svg(writer);
            svg.page(width, height, title, content);
            writer.flush();
        } catch (UncheckedIOException e) {
            throw new IOException("The drawing could not be written: " + e.getMessage(), e);
        } catch (XMLStreamException e) {
            throw new IOException("The drawing could not be written: " + e.getMessage(), e);
        }
    }

    private void page(double width, double height, String title, Content content) throws XMLStreamException {
        xml.writeStartDocument("UTF-8", "1.0");
        xml.writeCharacters("\n");
        xml.writeStartElement("svg");
        xml.writeDefaultNamespace(NAMESPACE);
        attribute("version", "1.1");
        attribute("width", Figures.position(width) + "mm");
        attribute("height", Figures.position(height) + "mm");
        attribute("viewBox", "0 0 " + Figures.position(width) + " " + Figures.position(height));
        attribute("font-family", FACES);
        attribute("fill", "none");
        attribute("stroke-linecap", "butt");
        attribute("stroke-linejoin", "round");
        content("title", title);
        content.on(this);
        xml.writeEndElement();
        xml.writeEndDocument();
        xml.flush();
    }

    /** Opens a group; {@link #end()} closes it. */
    public void group(String kind) {
        start("g");
        attribute("class", kind);
    }

    /** Opens a group with a name of its own. */
    public void group(String kind, String id) {
        group(kind);
        id(id);
    }

    /** Opens a group of lines that look alike. */
    public void group(String kind, Pen pen) {
        group(kind);
        pen(pen);
    }

    /** Closes the last group. */
    public void end() {
        guarded(xml::writeEndElement);
    }

    /** A path in the look of its group. */
    public void path(String kind, String id, Path path) {
        start("path");
        attribute("class", kind);
        id(id);
        attribute("d", path.toString());
        end();
    }

    /** A line, with no fill. */
    public void line(Path path, Pen pen) {
        start("path");
        pen(pen);
        attribute("d", path.toString());
        end();
    }

    /** A filled shape with an edge; holes by the even-odd rule. */
    public void shape(Path path, String fill, Pen edge) {
        start("path");
        attribute("fill", fill);
        attribute("fill-rule", "evenodd");
        pen(edge);
        attribute("d", path.toString());
        end();
    }

    /** The same with a name of its own. */
    public void shape(String kind, String id, Path path, String fill, Pen edge) {
        start("path");
        attribute("class", kind);
        id(id);
        attribute("fill", fill);
        attribute("fill-rule", "evenodd");
        pen(edge);
        attribute("d", path.toString());
        end();
    }

    public void circle(Vec centre, double radius, String fill, Pen edge) {
        start("circle");
        attribute("cx", Figures.position(centre.x()));
        attribute("cy", Figures.position(centre.y()));
        attribute("r", Figures.position(radius));
        attribute("fill", fill);
        pen(edge);
        end();
    }

    /** One line of text whose letters stand on {@code at}. */
    public void text(Vec at, Anchor anchor, Type type, String text) {
        text(at, anchor, 0, type, text);
    }

    /**
     * One line of text, turned about {@code at}.
     *
     * @param degrees clockwise as seen on the page
     */
    public void text(Vec at, Anchor anchor, double degrees, Type type, String text) {
        start("text");
        attribute("x", Figures.position(at.x()));
        attribute("y", Figures.position(at.y()));
        if (anchor != Anchor.START) {
            attribute("text-anchor", anchor.word());
        }
        if (degrees != 0) {
            attribute(
                    "transform",
                    "rotate(" + Figures.position(degrees) + " " + Figures.position(at.x()) + " "
                            + Figures.position(at.y()) + ")");
        }
        attribute("font-size", Figures.position(type.size()));
        if (type.bold()) {
            attribute("font-weight", "bold");
        }
        attribute("fill", type.colour());
        guarded(() -> xml.writeCharacters(LegalText.of(text)));
        end();
    }

    /** Lines of at most the given width, one below the other; gives the height that they took. */
    public double lines(Vec at, double width, int most, Type type, String text) {
        List<String> lines = TextWidth.wrap(text, width / type.width("0") * TextWidth.of("0"));
        int shown = Math.min(most, lines.size());
        for (int i = 0; i < shown; i++) {
            String line = i == most - 1 && lines.size() > most ? lines.get(i) + " …" : lines.get(i);
            text(at.plus(new Vec(0, i * type.lineHeight())), Anchor.START, type, line);
        }
        return shown * type.lineHeight();
    }

    /** The text cut to a width. */
    public static String cut(String text, double width, Type type) {
        return TextWidth.cut(text, width / type.width("0") * TextWidth.of("0"));
    }

    /** A pattern of slanting lines to fill with; gives what to name as fill. */
    public String hatch(String id, String colour) {
        start("pattern");
        id(id);
        attribute("patternUnits", "userSpaceOnUse");
        attribute("width", "2.2");
        attribute("height", "2.2");
        attribute("patternTransform", "rotate(45)");
        line(Path.line(new Vec(0.4, 0), new Vec(0.4, 2.2)), Pen.of(colour, 0.25));
        end();
        return "url(#" + name(id) + ")";
    }

    private void content(String element, String text) {
        start(element);
        guarded(() -> xml.writeCharacters(LegalText.of(text)));
        end();
    }

    private void start(String element) {
        guarded(() -> {
            xml.writeCharacters("\n");
            xml.writeStartElement(element);
        });
    }

    private void pen(Pen pen) {
        if (pen.width() <= 0) {
            return;
        }
        attribute("stroke", pen.colour());
        attribute("stroke-width", Figures.position(pen.width()));
        if (!pen.dashes().isEmpty()) {
            attribute("stroke-dasharray", pen.dashes());
        }
    }

    /** Names in a drawing are unique and plain, whatever the ids of the result are; an empty one is left out. */
    private void id(String id) {
        if (!id.isEmpty() && ids.add(name(id))) {
            attribute("id", name(id));
        }
    }

    private static String name(String id) {
        String plain = id.replaceAll("[^A-Za-z0-9_.-]", "_");
        return Character.isLetter(plain.charAt(0)) ? plain : "x" + plain;
    }

    private void attribute(String name, String value) {
        guarded(() -> xml.writeAttribute(name, LegalText.of(value)));
    }

    /** What writes a piece of XML. */
    @FunctionalInterface
    private interface Piece {
        void write() throws XMLStreamException;
    }

    private static void guarded(Piece piece) {
        try {
            piece.write();
        } catch (XMLStreamException e) {
            throw new UncheckedIOException(new IOException(e));
        }
    }
}

package runtrue.ids;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * The structure of the published schema ids.xsd, as far as the writer uses it: which elements an element may hold, in which
 * order and how often (as a pattern over their names, each followed by a blank), and which attributes with which values.
 */
final class IdsStructure {
    private static final String VALUE = "(simpleValue |restriction )";

    /** By element; where one name stands for two things, by the parent's name and its own. */
    private static final Map<String, String> CHILDREN = Map.ofEntries(
            Map.entry("ids", "info specifications "),
            Map.entry(
                    "info", "title (copyright )?(version )?(description )?(author )?(date )?(purpose )?(milestone )?"),
            Map.entry("specifications", "(specification )+"),
            Map.entry("specification", "applicability (requirements )?"),
            Map.entry("applicability", "(entity )?(partOf )*(classification )*(attribute )*(property )*(material )*"),
            Map.entry("requirements", "((entity )?(partOf )*(classification )*(attribute )*(property )*(material )*)+"),
            Map.entry("entity", "name (predefinedType )?"),
            Map.entry("attribute", "name (value )?"),
            Map.entry("property", "propertySet baseName (value )?"),
            Map.entry("material", "(value )?"),
            Map.entry("name", VALUE),
            Map.entry("predefinedType", VALUE),
            Map.entry("propertySet", VALUE),
            Map.entry("baseName", VALUE),
            Map.entry("restriction", "(enumeration )+"));

    private static final Map<String, Map<String, String>> ATTRIBUTES = Map.of(
            "specification",
            Map.of(
                    "name", ".+",
                    "ifcVersion", "(IFC2X3|IFC4|IFC4X3_ADD2)( (IFC2X3|IFC4|IFC4X3_ADD2))*",
                    "identifier", ".*",
                    "description", "(?s).*",
                    "instructions", "(?s).*"),
            "applicability",
            Map.of("minOccurs", "0|1", "maxOccurs", "0|unbounded"),
            "requirements",
            Map.of("description", ".*"),
            "attribute",
            Map.of("cardinality", "required|prohibited|optional", "instructions", "(?s).*"),
            "property",
            Map.of(
                    "cardinality", "required|prohibited|optional",
                    "instructions", "(?s).*",
                    "dataType", "[A-Z]+",
                    "uri", ".*"),
            "material",
            Map.of("cardinality", "required|prohibited|optional", "instructions", "(?s).*", "uri", ".*"),
            "restriction",
            Map.of("base", "xs:string"),
            "enumeration",
            Map.of("value", ".+"));

    private static final Set<String> TEXT = Set.of(
            "title",
            "copyright",
            "version",
            "description",
            "author",
            "date",
            "purpose",
            "milestone",
            "simpleValue",
            "enumeration");

    private IdsStructure() {}

    /** What is not as the schema has it, with the element's name. */
    static List<String> faults(String xml) throws IOException {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setNamespaceAware(true);
            List<String> faults = new ArrayList<>();
            check(
                    factory.newDocumentBuilder()
                            .parse(new InputSource(new StringReader(xml)))
                            .getDocumentElement(),
                    faults);
            return faults;
        } catch (ParserConfigurationException | SAXException e) {
            throw new IOException(e);
        }
    }

    private static void check(Element element, List<String> faults) {
        String name = element.getLocalName();
        boolean ofSchema = Set.of("restriction", "enumeration").contains(name);
        String space = ofSchema ? "http://www.w3.org/2001/XMLSchema" : IdsFile.NAMESPACE;
        if (!space.equals(element.getNamespaceURI())) {
            faults.add(name + " is in namespace " + element.getNamespaceURI());
        }
        StringBuilder children = new StringBuilder();
        for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element child) {
                children.append(child.getLocalName()).append(' ');
                check(child, faults);
            }
        }
        String allowed = TEXT.contains(name) ? "" : CHILDREN.get(name);
        if (allowed == null || !Pattern.matches(allowed, children)) {
            faults.add(name + " holds: " + children);
        }
        attributes(element, name, faults);
    }

    private static void attributes(Element element, String name, List<String> faults) {
        for (int i = 0; i < element.getAttributes().getLength(); i++) {
            Attr attribute = (Attr) element.getAttributes().item(i);
            String value = ATTRIBUTES.getOrDefault(name, Map.of()).get(attribute.getName());
            boolean ofRoot = name.equals("ids");
            if (!ofRoot && (value == null || !Pattern.matches(value, attribute.getValue()))) {
                faults.add(name + " has " + attribute.getName() + "=\"" + attribute.getValue() + "\"");
            }
        }
        if (name.equals("specification") && (!element.hasAttribute("name") || !element.hasAttribute("ifcVersion"))) {
            faults.add("a specification has a name and versions");
        }
    }
}

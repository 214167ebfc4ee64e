package runtrue.ifc.schema;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Picks the entity declarations out of an EXPRESS schema (ISO 10303-11). Only what the IFC schemas use is understood:
 * single inheritance, explicit attributes, redeclarations with {@code SELF\}.
 */
final class ExpressReader {
    private static final Pattern COMMENT = Pattern.compile("\\(\\*.*?\\*\\)|--[^\n]*", Pattern.DOTALL);
    private static final Pattern ENTITY =
            Pattern.compile("\\bENTITY\\s+(\\w+)([^;]*);(.*?)\\bEND_ENTITY\\s*;", Pattern.DOTALL);
    private static final Pattern SUPERTYPE = Pattern.compile("\\bSUBTYPE\\s+OF\\s*\\(\\s*(\\w+)\\s*(,?)");
    /** At the start of a statement: UNIQUE also stands within types, as in LIST OF UNIQUE. */
    private static final Pattern LATER_SECTION = Pattern.compile("(?<=^|;)\\s*(INVERSE|DERIVE|UNIQUE|WHERE)\\b");

    private ExpressReader() {}

    /** All entities in the order of the schema. */
    static List<ExpressEntity> read(String express) {
        List<ExpressEntity> entities = new ArrayList<>();
        Matcher entity = ENTITY.matcher(COMMENT.matcher(express).replaceAll(" "));
        while (entity.find()) {
            entities.add(new ExpressEntity(entity.group(1), supertype(entity.group(2)), attributes(entity.group(3))));
        }
        if (entities.isEmpty()) {
            throw new IllegalArgumentException("no ENTITY in the EXPRESS schema");
        }
        return entities;
    }

    private static String supertype(String head) {
        Matcher supertype = SUPERTYPE.matcher(head);
        if (!supertype.find()) {
            return "";
        }
        if (!supertype.group(2).isEmpty()) {
            throw new IllegalArgumentException("several supertypes in:" + head);
        }
        return supertype.group(1);
    }

    /** A redeclared attribute ({@code SELF\IfcX.Y}), explicit or derived, keeps the place it was first declared in. */
    private static List<String> attributes(String body) {
        Matcher later = LATER_SECTION.matcher(body);
        String explicit = later.find() ? body.substring(0, later.start()) : body;
        List<String> names = new ArrayList<>();
        for (String declaration : explicit.split(";", -1)) {
            int colon = declaration.indexOf(':');
            if (colon < 0) {
                continue;
            }
            String declared = declaration.substring(0, colon).strip();
            if (declared.contains("RENAMED")) {
                throw new IllegalArgumentException("renamed attribute: " + declared);
            }
            if (!declared.startsWith("SELF\\")) {
                for (String name : declared.split(",", -1)) {
                    names.add(name.strip());
                }
            }
        }
        return names;
    }
}

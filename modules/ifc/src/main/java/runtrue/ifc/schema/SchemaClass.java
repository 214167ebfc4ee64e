package runtrue.ifc.schema;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An entity of a schema.
 *
 * @param name as in the schema, for example {@code IfcSlab}
 * @param supertype null for a root
 * @param attributes all attributes in file order: inherited ones first
 */
public record SchemaClass(String name, @Nullable SchemaClass supertype, List<String> attributes) {
    public SchemaClass {
        attributes = List.copyOf(attributes);
    }

    /** Position in the record of an instance, 0-based; -1 when the class has no such attribute. */
    public int indexOf(String attribute) {
        return attributes.indexOf(attribute);
    }

    /** Whether this is the named class or one of its subtypes. */
    public boolean isA(String className) {
        for (SchemaClass c = this; c != null; c = c.supertype) {
            if (c.name.equals(className)) {
                return true;
            }
        }
        return false;
    }
}

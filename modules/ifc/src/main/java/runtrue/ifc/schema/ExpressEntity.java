package runtrue.ifc.schema;

import java.util.List;

/**
 * An entity as an EXPRESS schema declares it.
 *
 * @param supertype name of the one supertype, empty for a root
 * @param attributes its own explicit attributes in order, without inherited, inverse and derived ones
 */
record ExpressEntity(String name, String supertype, List<String> attributes) {
    ExpressEntity {
        attributes = List.copyOf(attributes);
    }
}

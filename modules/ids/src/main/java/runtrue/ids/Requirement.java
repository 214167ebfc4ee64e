package runtrue.ids;

import java.util.Locale;

/**
 * One thing that an entity has to have.
 *
 * @param instructions what whoever makes the model should do; may be empty
 */
public record Requirement(Facet facet, Cardinality cardinality, String instructions) {
    /** Whether it has to be there; the standard's words. */
    public enum Cardinality {
        REQUIRED,
        /** If it is there, it has to be as described. */
        OPTIONAL,
        PROHIBITED;

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** The standard's facets, as far as they are used here. */
    public sealed interface Facet {}

    /** An attribute of the entity, for example Name. */
    public record Attribute(String name) implements Facet {}

    /**
     * A property or quantity of a set.
     *
     * @param dataType defined type of its value, for example IfcPlaneAngleMeasure; empty for any
     */
    public record Property(String set, String baseName, String dataType) implements Facet {}

    /** A material, whichever. */
    public record Material() implements Facet {}
}

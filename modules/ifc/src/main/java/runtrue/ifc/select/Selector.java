package runtrue.ifc.select;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import runtrue.ifc.IfcEntity;

/**
 * Conditions on an element; all that are given must hold. Patterns are found anywhere in a text, not matched as a whole.
 *
 * @param classes class names; empty for any element
 * @param predefinedTypes literals in upper case, own or of the type object; the empty text stands for none stated;
 *     empty set for any
 * @param name looked for in Name, ObjectType, the type object's name and Tag, in this order
 * @param property on a property or quantity, own or of the type object
 * @param classification looked for in codes and names of classification references
 * @param exactly whether subtypes of the classes do not count
 */
public record Selector(
        Set<String> classes,
        Set<String> predefinedTypes,
        Optional<Pattern> name,
        Optional<PropertyMatch> property,
        Optional<Pattern> classification,
        boolean exactly) {
    public Selector {
        classes = Set.copyOf(classes);
        predefinedTypes = Set.copyOf(predefinedTypes);
    }

    /** One for which subtypes count. */
    public Selector(
            Set<String> classes,
            Set<String> predefinedTypes,
            Optional<Pattern> name,
            Optional<PropertyMatch> property,
            Optional<Pattern> classification) {
        this(classes, predefinedTypes, name, property, classification, false);
    }

    /** Whether an element is of the classes. */
    boolean admits(IfcEntity element) {
        return classes.isEmpty()
                || classes.stream().anyMatch(c -> exactly ? element.type().equals(c) : element.isA(c));
    }

    /** Any of these classes, whatever else the model says of the element. */
    public static Selector ofClass(String... classes) {
        return new Selector(Set.of(classes), Set.of(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** Elements of just these classes and none of their subtypes. */
    static Selector ofNoSubtypeOf(String... classes) {
        return new Selector(Set.of(classes), Set.of(), Optional.empty(), Optional.empty(), Optional.empty(), true);
    }

    public Selector withTypes(String... types) {
        return new Selector(classes, Set.of(types), name, property, classification, exactly);
    }

    public Selector withName(Pattern pattern) {
        return new Selector(classes, predefinedTypes, Optional.of(pattern), property, classification, exactly);
    }

    public Selector withProperty(String setAndName, Pattern pattern) {
        PropertyMatch match = new PropertyMatch(setAndName, pattern);
        return new Selector(classes, predefinedTypes, name, Optional.of(match), classification, exactly);
    }

    public Selector withClassification(Pattern pattern) {
        return new Selector(classes, predefinedTypes, name, property, Optional.of(pattern), exactly);
    }
}

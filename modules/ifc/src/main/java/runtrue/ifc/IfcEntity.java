package runtrue.ifc;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import runtrue.step.StepValue;

/**
 * One instance seen through its schema: attributes by name. Decoded once, immutable. Asking for an attribute that the
 * class does not have in this file's schema gives an empty answer, so that callers can ask across schema versions.
 */
public interface IfcEntity {
    int id();

    /** Class name as in the schema, for example {@code IfcSlab}. */
    String type();

    /** Whether the class is the named one or a subtype of it. */
    boolean isA(String className);

    IfcModel model();

    /** The raw value; {@link StepValue.Omitted} when the class has no such attribute. */
    StepValue value(String attribute);

    /** Whether the attribute has a value that is neither {@code $} nor {@code *}. */
    boolean has(String attribute);

    /** The entity referred to; throws {@link IfcException} when it is missing. */
    IfcEntity ref(String attribute);

    /** Empty when the attribute is omitted; throws when it refers to an instance that is not in the file. */
    Optional<IfcEntity> optionalRef(String attribute);

    /** All entities that a list (nested lists are flattened) or a single reference names; empty when omitted. */
    List<IfcEntity> refs(String attribute);

    /** A number in file units, typed values unwrapped; throws {@link IfcException} when there is none or it is not finite. */
    double real(String attribute);

    OptionalDouble optionalReal(String attribute);

    /** Flat list of numbers, typed values unwrapped; empty when omitted. */
    double[] reals(String attribute);

    /** Text, typed values unwrapped; empty when omitted. */
    String text(String attribute);

    /** Enumeration literal or logical in upper case without dots; empty when omitted. */
    String enumeration(String attribute);

    /** {@code #12 (IfcSlab)} for messages. */
    String label();
}

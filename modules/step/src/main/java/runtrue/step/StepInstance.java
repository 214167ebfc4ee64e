package runtrue.step;

import java.util.List;

/**
 * One decoded record.
 *
 * @param id instance number, without the {@code #}
 * @param keyword entity name in upper case, for example {@code IFCSLAB}
 * @param attributes in the order of the schema, supertypes first
 */
public record StepInstance(int id, String keyword, List<StepValue> attributes) {
    public StepInstance {
        attributes = List.copyOf(attributes);
    }
}

package runtrue.ids;

import java.util.List;
import java.util.regex.Pattern;

/**
 * What is wanted of the entities of some classes.
 *
 * @param ifcVersions schemas that it is for: IFC2X3, IFC4, IFC4X3_ADD2
 * @param description what for, for people
 * @param instructions what whoever makes the model should do
 * @param entities classes that it applies to, as in the schema; upper case is made of them
 * @param predefinedTypes of these entities; empty for any
 * @param needed whether there has to be one at all; otherwise it only says how those are that there are
 */
public record Specification(
        String name,
        List<String> ifcVersions,
        String description,
        String instructions,
        List<String> entities,
        List<String> predefinedTypes,
        boolean needed,
        List<Requirement> requirements) {
    private static final List<String> VERSIONS = List.of("IFC2X3", "IFC4", "IFC4X3_ADD2");
    private static final Pattern ENTITY = Pattern.compile("Ifc[A-Za-z0-9]+|IFC[A-Z0-9]+");

    public Specification {
        ifcVersions = List.copyOf(ifcVersions);
        entities = List.copyOf(entities);
        predefinedTypes = List.copyOf(predefinedTypes);
        requirements = List.copyOf(requirements);
        if (ifcVersions.isEmpty() || !VERSIONS.containsAll(ifcVersions)) {
            throw new IllegalArgumentException(
                    name + ": IFC versions " + ifcVersions + "; IDS 1.0 knows " + String.join(", ", VERSIONS));
        }
        if (entities.isEmpty()
                || !entities.stream().allMatch(e -> ENTITY.matcher(e).matches())) {
            throw new IllegalArgumentException(name + ": entities " + entities + " are no IFC classes");
        }
    }
}

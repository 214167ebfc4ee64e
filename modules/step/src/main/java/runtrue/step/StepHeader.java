package runtrue.step;

import java.util.List;

/**
 * The HEADER section.
 *
 * @param originatingSystem the authoring program, as the file states it
 * @param schemas FILE_SCHEMA, upper case, for example {@code IFC2X3}
 */
public record StepHeader(
        List<String> description,
        String implementationLevel,
        String name,
        String timeStamp,
        List<String> authors,
        List<String> organizations,
        String preprocessorVersion,
        String originatingSystem,
        String authorization,
        List<String> schemas) {
    public StepHeader {
        description = List.copyOf(description);
        authors = List.copyOf(authors);
        organizations = List.copyOf(organizations);
        schemas = List.copyOf(schemas);
    }
}

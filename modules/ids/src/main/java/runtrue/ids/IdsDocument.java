package runtrue.ids;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * An IDS file's content.
 *
 * @param title required, as everything that is no Optional; empty texts are left out
 * @param specifications at least one
 */
public record IdsDocument(
        String title,
        String version,
        String description,
        Optional<LocalDate> date,
        String purpose,
        List<Specification> specifications) {
    public IdsDocument {
        if (title.isEmpty() || specifications.isEmpty()) {
            throw new IllegalArgumentException("an IDS has a title and at least one specification");
        }
        specifications = List.copyOf(specifications);
    }
}

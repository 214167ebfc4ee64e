package runtrue.rules.buildup;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import runtrue.rules.Quantity;

/**
 * A build-up that passed every check. Immutable; threads may share it.
 *
 * @param source who published the figures, or that they are invented for the demo
 * @param values by name, for expressions: {@code build_up.name}
 * @param items from the support up
 */
public record BuildUp(
        String name, String title, String source, String file, Map<String, Quantity> values, List<BuildUpItem> items) {
    public BuildUp {
        values = Map.copyOf(values);
        items = List.copyOf(items);
    }

    /** The same build-up under a name for its file that does not depend on the machine. */
    public BuildUp shownAs(String shownFile) {
        return new BuildUp(name, title, source, shownFile, values, items);
    }

    public Optional<BuildUpItem> item(String id) {
        return items.stream().filter(item -> item.id().equals(id)).findFirst();
    }
}

package runtrue.shape.sweep;

import java.util.function.Consumer;
import java.util.function.LongConsumer;
import runtrue.shape.Tolerances;

/**
 * What bodies are built with.
 *
 * @param remarks takes sentences on what was changed or assumed
 * @param budget is told of faces before they are made, and throws when there are too many
 */
public record Workshop(Tolerances tolerances, Consumer<String> remarks, LongConsumer budget) {
    void take(long faces) {
        budget.accept(faces);
    }
}

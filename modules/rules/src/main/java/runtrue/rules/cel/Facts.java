package runtrue.rules.cel;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The facts known of one subject, in layers: what holds for the drop, then the building, the plane and so on.
 * Every fact offered is either known, with evidence, or missing, with a reason.
 */
public final class Facts {
    private final @Nullable Facts outer;
    private final Map<String, Fact> own = new HashMap<>();

    /** A fact's state. */
    public sealed interface Fact {}

    /**
     * A known fact.
     *
     * @param value a Double in SI, a String or a Boolean
     * @param evidence where it comes from, for people
     */
    public record Known(Object value, String evidence) implements Fact {}

    /** A fact that is not known. */
    public record Missing(String reason) implements Fact {}

    private Facts(@Nullable Facts outer) {
        this.outer = outer;
    }

    public static Facts empty() {
        return new Facts(null);
    }

    /** A further layer upon these. */
    public Facts inner() {
        return new Facts(this);
    }

    public Facts know(String name, double value, String evidence) {
        own.put(name, Double.isFinite(value) ? new Known(value, evidence) : new Missing("is no number in the model"));
        return this;
    }

    public Facts know(String name, String value, String evidence) {
        own.put(name, new Known(value, evidence));
        return this;
    }

    public Facts know(String name, boolean value, String evidence) {
        own.put(name, new Known(value, evidence));
        return this;
    }

    public Facts miss(String name, String reason) {
        own.put(name, new Missing(reason));
        return this;
    }

    public Optional<Fact> find(String name) {
        for (Facts at = this; at != null; at = at.outer) {
            Fact fact = at.own.get(name);
            if (fact != null) {
                return Optional.of(fact);
            }
        }
        return Optional.empty();
    }
}

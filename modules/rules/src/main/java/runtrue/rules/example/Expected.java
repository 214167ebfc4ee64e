package runtrue.rules.example;

import java.util.Locale;
import java.util.Optional;
import runtrue.rules.Outcome;

/** What a rule has to say of the facts of an example. */
public enum Expected {
    CONFORMS(Optional.of(Outcome.CONFORMS)),
    DOES_NOT_CONFORM(Optional.of(Outcome.DOES_NOT_CONFORM)),
    NOT_ASSESSED(Optional.of(Outcome.NOT_ASSESSED)),
    /** The rule is not for a subject of that kind. */
    DOES_NOT_APPLY(Optional.empty());

    @SuppressWarnings("ImmutableEnumChecker") // an Optional of an enum never changes
    private final Optional<Outcome> outcome;

    Expected(Optional<Outcome> outcome) {
        this.outcome = outcome;
    }

    /** Empty where the rule says nothing. */
    public Optional<Outcome> outcome() {
        return outcome;
    }

    /** As rule files say it. */
    public String label() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}

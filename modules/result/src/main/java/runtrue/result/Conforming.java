package runtrue.result;

import java.util.Optional;

/** A judgement that conforms, in short; the fields are those of {@link Finding}. */
public record Conforming(
        String id,
        String rule,
        String subject,
        String plane,
        String planeName,
        Optional<Measure> measured,
        Optional<Measure> limit,
        Optional<Measure> margin,
        String comparison) {}

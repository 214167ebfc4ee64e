package runtrue.rules.concede;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import runtrue.rules.Judgement;
import runtrue.rules.Outcome;
import runtrue.rules.Quantity;
import runtrue.rules.concede.ConcessionUse.State;
import runtrue.rules.units.Quantities;
import runtrue.rules.units.Unit;
import runtrue.rules.yaml.YamlFile;

/** Applies concessions to judgements. */
public final class Concessions {
    /** Past the accepted value by less than this, relative and absolute in SI, is rounding: as for limits. */
    private static final double TOLERANCE = 1e-6;

    private Concessions() {}

    /**
     * The concessions of a drop in the order of its file.
     *
     * @throws runtrue.rules.RuleException with one line per error, each with file, line and column
     */
    public static List<Concession> load(Path file) {
        return ConcessionReader.read(YamlFile.read(file));
    }

    /**
     * Judgements with the accepted ones as conceded, in the same order, and what became of each concession.
     *
     * @param today day of the run, given from outside so that the same input gives the same result
     */
    public static Applied apply(List<Judgement> judgements, List<Concession> concessions, LocalDate today) {
        Map<String, Judgement> byId = new HashMap<>();
        judgements.forEach(j -> byId.put(j.id(), j));
        Map<String, Concession> holding = new HashMap<>();
        List<ConcessionUse> uses = new ArrayList<>();
        for (Concession concession : concessions) {
            ConcessionUse use = use(concession, byId.get(concession.finding()), today);
            uses.add(use);
            if (use.state() == State.HOLDS) {
                holding.put(concession.finding(), concession);
            }
        }
        List<Judgement> applied = judgements.stream()
                .map(j -> Optional.ofNullable(holding.get(j.id()))
                        .map(c -> conceded(j, c))
                        .orElse(j))
                .toList();
        return new Applied(applied, uses);
    }

    /** What {@link #apply} gives. */
    public record Applied(List<Judgement> judgements, List<ConcessionUse> uses) {
        public Applied {
            judgements = List.copyOf(judgements);
            uses = List.copyOf(uses);
        }
    }

    private static ConcessionUse use(Concession concession, @Nullable Judgement finding, LocalDate today) {
        if (finding == null) {
            return new ConcessionUse(
                    concession,
                    State.UNKNOWN,
                    "No finding of this drop has the id " + concession.finding()
                            + ": what it was for has been changed or cured, or the id is mistyped. Take it out or correct it.");
        }
        return switch (finding.outcome()) {
            case CONFORMS, CONCEDED ->
                new ConcessionUse(concession, State.CURED, "This conforms now. Take the concession out.");
            case NOT_ASSESSED ->
                new ConcessionUse(
                        concession,
                        State.NOT_ASSESSED,
                        "This could not be assessed in this drop (" + finding.reason()
                                + "); only a known non-conformance can be accepted.");
            case DOES_NOT_CONFORM -> ofBreach(concession, finding, today);
        };
    }

    private static ConcessionUse ofBreach(Concession concession, Judgement finding, LocalDate today) {
        Optional<LocalDate> until = concession.until();
        if (until.isPresent() && today.isAfter(until.get())) {
            return new ConcessionUse(
                    concession, State.EXPIRED, "Expired on " + until.get() + ". Cure the finding or ask for it anew.");
        }
        if (finding.measured().isEmpty()) {
            return concession
                    .upTo()
                    .map(upTo -> new ConcessionUse(
                            concession,
                            State.UNCLEAR,
                            "It accepts " + Quantities.text(upTo)
                                    + ", but the finding measures nothing. Leave out up_to."))
                    .orElse(holds(concession));
        }
        return ofMeasure(concession, finding, finding.measured().get());
    }

    private static ConcessionUse ofMeasure(Concession concession, Judgement finding, Quantity measured) {
        if (concession.upTo().isEmpty()) {
            return new ConcessionUse(
                    concession,
                    State.UNCLEAR,
                    "It does not say up to which value. Add up_to, for example " + Quantities.text(measured) + ".");
        }
        Quantity upTo = concession.upTo().get();
        if (!Unit.of(upTo.unit()).dimension().equals(Unit.of(measured.unit()).dimension())) {
            return new ConcessionUse(
                    concession,
                    State.UNCLEAR,
                    "It accepts " + Quantities.text(upTo) + ", but the finding measures " + Quantities.text(measured)
                            + ".");
        }
        double beyond = finding.comparison().equals("at least") ? upTo.si() - measured.si() : measured.si() - upTo.si();
        return beyond > Math.abs(upTo.si()) * TOLERANCE + TOLERANCE
                ? new ConcessionUse(
                        concession,
                        State.EXCEEDED,
                        "Accepted up to " + Quantities.text(upTo) + ", but it measures "
                                + Quantities.text(measured, upTo) + " now. Cure the finding or ask for it anew.")
                : holds(concession);
    }

    private static ConcessionUse holds(Concession concession) {
        String until = concession.until().map(day -> "until " + day).orElse("until withdrawn");
        return new ConcessionUse(concession, State.HOLDS, "Holds " + until + ".");
    }

    private static Judgement conceded(Judgement j, Concession c) {
        String reason = c.by() + ": " + c.why()
                + c.until().map(day -> " (until " + day + ")").orElse("")
                + c.upTo()
                        .map(value -> " (up to " + Quantities.text(value) + ")")
                        .orElse("");
        return new Judgement(
                j.id(),
                j.rule(),
                j.title(),
                j.severity(),
                Outcome.CONCEDED,
                j.subject(),
                j.plane(),
                j.elements(),
                j.place(),
                j.measured(),
                j.limit(),
                j.margin(),
                j.comparison(),
                j.limitSource(),
                j.message(),
                j.cure(),
                reason,
                j.facts());
    }
}

package runtrue.rules.judge;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import runtrue.roof.Roof;
import runtrue.roof.RoofBody;
import runtrue.roof.Roofs;
import runtrue.roof.Zone;
import runtrue.rules.DropSettings;
import runtrue.rules.Judgement;
import runtrue.rules.RoofSystem;
import runtrue.rules.Rule;
import runtrue.rules.RuleSet;
import runtrue.rules.cel.Evaluator;
import runtrue.rules.cel.FactCatalogue;
import runtrue.rules.cel.Facts;
import runtrue.rules.judge.subject.Grounds;
import runtrue.rules.judge.subject.Subject;
import runtrue.rules.wind.BodyZones;
import runtrue.rules.wind.RoofZones;
import runtrue.rules.wind.WindSetting;

/** Says of every rule and every subject whether it conforms. */
public final class Judge {
    private final RuleSet rules;
    private final RoofSystem system;
    private final FactCatalogue catalogue = FactCatalogue.standard();
    private final Evaluator evaluator;
    private final Words words;

    private Judge(RuleSet rules, RoofSystem system) {
        this.rules = rules;
        this.system = system;
        evaluator = Evaluators.of(rules, system);
        words = new Words(catalogue, rules);
    }

    /**
     * A judge by these rules for this system. Making one starts the expression library, which can run beside the
     * reading of models; threads may share it.
     */
    public static Judge of(RuleSet rules, RoofSystem system) {
        return new Judge(rules, system);
    }

    /**
     * All judgements of one drop, sorted by rule (in the rule set's order), plane and place. Deterministic.
     *
     * @param roof as laid out with the system's cover width
     */
    public static List<Judgement> judge(
            RuleSet rules, RoofSystem system, DropSettings settings, Roof roof, DropFacts drop) {
        return of(rules, system).judge(settings, roof, drop);
    }

    /** As {@link #judge(RuleSet, RoofSystem, DropSettings, Roof, DropFacts)}. */
    public List<Judgement> judge(DropSettings settings, Roof roof, DropFacts drop) {
        return judge(settings, roof, drop, zones(settings, WindSetting.of(settings), roof, drop));
    }

    /**
     * Zones of all bodies with what lifts on them: by the engineer, by a standard, or as the rule set declares.
     *
     * @param wind of these settings
     */
    public List<BodyZones> zones(DropSettings settings, WindSetting wind, Roof roof, DropFacts drop) {
        return zones(settings, wind, roof, drop, (body, width) -> Roofs.zones(roof, body, width));
    }

    /** The same with zones by place made by the caller. */
    List<BodyZones> zones(
            DropSettings settings,
            WindSetting wind,
            Roof roof,
            DropFacts drop,
            BiFunction<RoofBody, Double, List<Zone>> byPlace) {
        Facts base = BaseFacts.of(catalogue, system, settings, roof, drop);
        RoofZones zones = new RoofZones(roof, system, wind, byPlace);
        return roof.bodies().stream()
                .map(body -> zones.of(body, () -> zoneWidth(Subjects.building(body, settings, base))))
                .toList();
    }

    /** The same with zones that were made before, by {@link #zones}. */
    public List<Judgement> judge(DropSettings settings, Roof roof, DropFacts drop, List<BodyZones> zones) {
        return grounds(settings, roof, drop, zones).stream()
                .map(Grounds::judgement)
                .toList();
    }

    /** The same judgements, each with what it was made of. */
    public List<Grounds> grounds(DropSettings settings, Roof roof, DropFacts drop, List<BodyZones> zones) {
        Subjects subjects = new Subjects(
                roof, drop, system, settings, BaseFacts.of(catalogue, system, settings, roof, drop), zones);
        RuleRun run = new RuleRun(evaluator, words);
        Causes causes = new Causes();
        Laps laps = new Laps(roof, system);
        List<Subject> all = subjects.all();
        List<Grounds> grounds = new ArrayList<>();
        Map<String, Integer> ids = new HashMap<>();
        for (Rule rule : rules.rules()) {
            List<Judged> judged = new ArrayList<>();
            for (Subject subject : all) {
                if (subject.kind() == rule.kind()) {
                    run.apply(rule, subject).ifPresent(verdict -> judged.add(new Judged(subject, verdict)));
                }
            }
            Groups.of(causes.keep(rule, judged)).stream()
                    .sorted(Group.ORDER)
                    .forEach(group -> grounds.add(grounds(rule, group, laps, ids)));
        }
        return grounds.stream()
                .map(g -> g.judged(causes.complete(g.judgement())))
                .toList();
    }

    private Grounds grounds(Rule rule, Group group, Laps laps, Map<String, Integer> ids) {
        List<Grounds.Member> members = group.members().stream()
                .map(m -> new Grounds.Member(m.subject().name(), m.verdict().measured()))
                .toList();
        return new Grounds(
                judgement(rule, group, laps, ids), rule, group.worst().subject(), members);
    }

    private RoofZones.Width zoneWidth(Facts building) {
        Evaluator.Value width = rules.edgeZoneWidth()
                .map(declared -> evaluator.evaluate(declared, building))
                .orElse(new Evaluator.Unknown(List.of("the rule set declares no edge_zone")));
        return width instanceof Evaluator.Of of
                ? new RoofZones.Width(OptionalDouble.of((Double) of.value()), "")
                : new RoofZones.Width(
                        OptionalDouble.empty(),
                        "the width of the edge zone is not known: "
                                + String.join("; ", ((Evaluator.Unknown) width).reasons()));
    }

    private Judgement judgement(Rule rule, Group group, Laps laps, Map<String, Integer> ids) {
        Subject subject = group.worst().subject();
        Verdict verdict = group.worst().verdict();
        return new Judgement(
                id(rule, subject, ids),
                rule.id(),
                rule.title(),
                rule.severity(),
                verdict.outcome(),
                group.name(),
                subject.plane(),
                group.elements(),
                group.place(),
                verdict.measured(),
                verdict.limit(),
                verdict.margin(),
                rule.require().isPresent() ? "" : rule.comparison().label(),
                source(verdict),
                words.message(rule, group),
                words.cure(rule, group, laps),
                verdict.reason(),
                words.facts(rule, subject));
    }

    /** Names the system's own source only where the limit that governs rests on the system. */
    private String source(Verdict verdict) {
        boolean ofSystem = verdict.governing().flatMap(Rule.Limit::expression).stream()
                .anyMatch(e -> e.text().contains("system.") || e.text().contains("tables."));
        if (verdict.limitSource().isEmpty() || !ofSystem) {
            return verdict.limitSource();
        }
        return verdict.limitSource() + ". " + system.title() + ": " + firstClause(system.source());
    }

    /** What the source says first; the cover says the rest. */
    private static String firstClause(String source) {
        return source.split("[;.](\\s|$)", 2)[0].strip();
    }

    /** From the rule, the plane and the place, not from order; told apart by a number where two would be the same. */
    private static String id(Rule rule, Subject subject, Map<String, Integer> ids) {
        String text = rule.id() + "|" + subject.plane() + "|" + subject.key();
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            String id = rule.id() + "-" + HexFormat.of().formatHex(hash).substring(0, 10);
            int count = ids.merge(id, 1, Integer::sum);
            return count == 1 ? id : id + "-" + count;
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}

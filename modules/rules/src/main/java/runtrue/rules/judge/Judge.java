package runtrue.rules.judge;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import runtrue.roof.Roof;
import runtrue.roof.RoofBody;
import runtrue.roof.Roofs;
import runtrue.roof.Zone;
import runtrue.rules.DropSettings;
import runtrue.rules.Judgement;
import runtrue.rules.RoofSystem;
import runtrue.rules.Rule;
import runtrue.rules.RuleSet;
import runtrue.rules.Table;
import runtrue.rules.cel.Evaluator;
import runtrue.rules.cel.Evaluator.Lookup;
import runtrue.rules.cel.Evaluator.NoAnswerException;
import runtrue.rules.cel.Expression;
import runtrue.rules.cel.FactCatalogue;
import runtrue.rules.cel.TableSpec;

/** Says of every rule and every subject whether it conforms. */
public final class Judge {
    private Judge() {}

    /**
     * All judgements of one drop, sorted by rule (in the rule set's order), plane and place. Deterministic.
     *
     * @param roof as laid out with the system's cover width
     */
    public static List<Judgement> judge(
            RuleSet rules, RoofSystem system, DropSettings settings, Roof roof, DropFacts drop) {
        return judge(rules, system, settings, roof, drop, (body, width) -> Roofs.zones(roof, body, width));
    }

    /** The same with zones made by the caller, who thereby sees them: called once for each body with its zone width. */
    public static List<Judgement> judge(
            RuleSet rules,
            RoofSystem system,
            DropSettings settings,
            Roof roof,
            DropFacts drop,
            BiFunction<RoofBody, Double, List<Zone>> zoneMaker) {
        FactCatalogue catalogue = FactCatalogue.standard();
        Evaluator evaluator = evaluator(rules, system);
        Subjects subjects = new Subjects(
                roof,
                drop,
                system,
                settings,
                BaseFacts.of(catalogue, system, settings, roof, drop),
                zoneMaker,
                (kind, facts) -> rules.edgeZoneWidth()
                        .map(width -> evaluator.evaluate(width, facts))
                        .orElse(new Evaluator.Unknown(List.of("the rule set declares no edge_zone"))));
        Words words = new Words(catalogue, rules);
        RuleRun run = new RuleRun(evaluator, words);
        List<Subject> all = subjects.all();
        List<Judgement> judgements = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (Rule rule : rules.rules()) {
            List<Judged> judged = new ArrayList<>();
            for (Subject subject : all) {
                if (subject.kind() == rule.kind()) {
                    run.apply(rule, subject).ifPresent(verdict -> judged.add(new Judged(subject, verdict)));
                }
            }
            Groups.of(judged).stream()
                    .sorted(Group.ORDER)
                    .forEach(group -> judgements.add(judgement(rule, group, words, ids, system)));
        }
        return judgements;
    }

    private static Evaluator evaluator(RuleSet rules, RoofSystem system) {
        List<Expression> expressions = new ArrayList<>();
        rules.edgeZoneWidth().ifPresent(expressions::add);
        for (Rule rule : rules.rules()) {
            Stream.of(rule.when(), rule.require(), rule.measure()).forEach(e -> e.ifPresent(expressions::add));
            rule.unassessable().forEach(u -> expressions.add(u.when()));
            rule.limits().forEach(limit -> limit.expression().ifPresent(expressions::add));
        }
        Map<TableSpec, Lookup> lookups = new HashMap<>();
        for (TableSpec spec : rules.tables()) {
            Table table =
                    rules.ownTables().getOrDefault(spec.name(), system.tables().get(spec.name()));
            lookups.put(spec, lookup(spec, table, system));
        }
        return new Evaluator(expressions, rules.definitions(), lookups);
    }

    private static Lookup lookup(TableSpec spec, @Nullable Table table, RoofSystem system) {
        if (table == null) {
            return arguments -> {
                throw new NoAnswerException("roof system " + system.name() + " has no table " + spec.name());
            };
        } else if (!table.spec().answers(spec)) {
            return arguments -> {
                throw new NoAnswerException("table " + spec.name() + " of roof system " + system.name()
                        + " has other axes or another unit" + " than the rule set declares");
            };
        }
        return table::at;
    }

    private static Judgement judgement(Rule rule, Group group, Words words, Set<String> ids, RoofSystem system) {
        Subject subject = group.worst().subject();
        Verdict verdict = group.worst().verdict();
        return new Judgement(
                id(rule, group.first().subject(), ids),
                rule.id(),
                rule.title(),
                rule.severity(),
                verdict.outcome(),
                group.name(),
                subject.plane(),
                subject.elements(),
                group.place(),
                verdict.measured(),
                verdict.limit(),
                verdict.margin(),
                rule.require().isPresent() ? "" : rule.comparison().label(),
                source(verdict, rule, system),
                words.message(rule, subject, group.name(), verdict),
                words.cure(rule, subject, group.name(), verdict),
                verdict.reason(),
                words.facts(rule, subject));
    }

    private static String source(Verdict verdict, Rule rule, RoofSystem system) {
        boolean ofSystem = rule.limits().stream()
                .flatMap(limit -> limit.expression().stream())
                .anyMatch(e -> e.text().contains("system.") || e.text().contains("tables."));
        if (verdict.limitSource().isEmpty() || !ofSystem) {
            return verdict.limitSource();
        }
        return verdict.limitSource() + ". " + system.title() + ": " + system.source();
    }

    /** From the rule, the plane and the place, not from order; told apart by a number where two would be the same. */
    private static String id(Rule rule, Subject subject, Set<String> ids) {
        String text = rule.id() + "|" + subject.plane() + "|" + subject.key();
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            String id = rule.id() + "-" + HexFormat.of().formatHex(hash).substring(0, 10);
            String free = id;
            for (int i = 2; !ids.add(free); i++) {
                free = id + "-" + i;
            }
            return free;
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}

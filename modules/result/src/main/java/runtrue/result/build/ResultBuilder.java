package runtrue.result.build;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import runtrue.ifc.Element;
import runtrue.ifc.GridAxis;
import runtrue.result.CheckResult;
import runtrue.result.ConcessionResult;
import runtrue.result.EdgeResult;
import runtrue.result.FileInfo;
import runtrue.result.GridLine;
import runtrue.result.Outcome;
import runtrue.result.RoofSystemInfo;
import runtrue.result.UnreadElement;
import runtrue.roof.PlaneLayout;
import runtrue.roof.Roof;
import runtrue.roof.RoofEdge;
import runtrue.roof.RoofPlane;
import runtrue.roof.health.Importance;
import runtrue.rules.Judgement;
import runtrue.rules.RoofSystem;
import runtrue.rules.concede.Concession;
import runtrue.rules.concede.ConcessionUse;
import runtrue.rules.units.Quantities;
import runtrue.rules.wind.BodyWind;

/**
 * Makes the result of one check: rounds, turns radians to degrees and SI to the units that people read, and moves every
 * coordinate back from the drop origin to the world. Keeps the order of what it is given, apart from maps and findings.
 */
public final class ResultBuilder {
    private final CheckInput input;
    private final World world;
    private final Map<String, RoofPlane> planes;

    private ResultBuilder(CheckInput input) {
        this.input = input;
        world = new World(input.roof().settings().origin());
        planes = input.roof().planes().stream()
                .map(PlaneLayout::plane)
                .collect(Collectors.toMap(RoofPlane::id, Function.identity(), (a, b) -> a));
    }

    /**
     * The result of one check.
     *
     * @throws IllegalArgumentException for a quantity in a unit that is not known
     * @throws ArithmeticException for a number that is not finite
     */
    public static CheckResult build(CheckInput input) {
        return new ResultBuilder(input).result();
    }

    private CheckResult result() {
        Roof roof = input.roof();
        PlaneMapping mapping = new PlaneMapping(world, input.axes(), roof, input.system());
        FindingMapping findings = new FindingMapping(List.copyOf(planes.values()), input.axes());
        List<Judgement> judgements = sorted(input.judgements());
        return new CheckResult(
                CheckResult.FORMAT,
                input.toolVersion(),
                input.runStamp(),
                input.drop(),
                input.files(),
                input.ruleSet(),
                system(input.system()),
                input.settings(),
                ToleranceReasons.of(roof.settings().tolerances()),
                FindingMapping.counts(input.ruleSet(), judgements),
                roof.planes().stream().map(mapping::map).toList(),
                roof.edges().stream().map(this::edge).toList(),
                roof.bodies().stream()
                        .map(new BodyMapping(world, planes, input.zones())::map)
                        .toList(),
                input.axes().stream().map(ResultBuilder::gridLine).toList(),
                judgements.stream()
                        .filter(j -> FindingMapping.outcome(j) != Outcome.CONFORMS)
                        .map(findings::finding)
                        .toList(),
                judgements.stream()
                        .filter(j -> FindingMapping.outcome(j) == Outcome.CONFORMS)
                        .map(findings::conforming)
                        .toList(),
                input.concessions().stream().map(ResultBuilder::concession).toList(),
                BillMapping.of(input.bill()),
                input.unread(),
                roof.unplaced().stream().map(ResultBuilder::unplaced).toList(),
                TrustMapping.methods(roof, input.trust().members()),
                input.trust().stated().stream().map(TrustMapping::stated).toList(),
                HealthMapping.of(input.files(), input.trust().health()),
                cautions(),
                Optional.empty());
    }

    /** What does not conform first, then by weight, rule and id: the order in which a person should read them. */
    private List<Judgement> sorted(List<Judgement> judgements) {
        List<String> rules = input.ruleSet().rules().stream().map(r -> r.id()).toList();
        return judgements.stream()
                .sorted(Comparator.comparingInt((Judgement j) -> reading(FindingMapping.outcome(j)))
                        .thenComparing(Judgement::severity)
                        .thenComparingInt(j -> rules.indexOf(j.rule()))
                        .thenComparing(Judgement::rule)
                        .thenComparing(Judgement::plane)
                        .thenComparing(Judgement::id))
                .toList();
    }

    private static int reading(Outcome outcome) {
        return switch (outcome) {
            case DOES_NOT_CONFORM -> 0;
            case NOT_ASSESSED -> 1;
            case CONCEDED -> 2;
            case CONFORMS -> 3;
        };
    }

    private EdgeResult edge(RoofEdge edge) {
        return new EdgeResult(
                edge.id(),
                edge.kind().label(),
                edge.planes(),
                world.point(edge.from()),
                world.point(edge.to()),
                Rounded.of(edge.length()),
                Rounded.degrees(edge.angle()),
                Rounded.of(edge.step()));
    }

    private static GridLine gridLine(GridAxis axis) {
        return new GridLine(
                axis.grid(),
                axis.name(),
                axis.points().stream().map(World::place).toList());
    }

    private static RoofSystemInfo system(RoofSystem system) {
        return new RoofSystemInfo(
                system.name(),
                system.title(),
                system.source(),
                system.file(),
                system.values().entrySet().stream()
                        .sorted(Map.Entry.comparingByKey())
                        .map(e -> new RoofSystemInfo.Value(e.getKey(), Measures.of(e.getValue())))
                        .toList(),
                system.texts().entrySet().stream()
                        .sorted(Map.Entry.comparingByKey())
                        .map(e -> new RoofSystemInfo.Text(e.getKey(), e.getValue()))
                        .toList());
    }

    private static ConcessionResult concession(ConcessionUse use) {
        Concession concession = use.concession();
        return new ConcessionResult(
                concession.finding(),
                use.state().label(),
                concession.by(),
                concession.why(),
                concession.until().map(LocalDate::toString).orElse(""),
                concession.upTo().map(Quantities::text).orElse(""),
                use.remark(),
                concession.from());
    }

    private static UnreadElement unplaced(Roof.Unplaced unplaced) {
        Element element = unplaced.element().element();
        return new UnreadElement(
                element.globalId(),
                element.name(),
                element.ifcClass(),
                element.file(),
                element.stepId(),
                element.storey(),
                "roof",
                unplaced.element().body().representation(),
                unplaced.reason());
    }

    /** The standing ones, before them what this drop adds. */
    private List<String> cautions() {
        List<String> cautions = new ArrayList<>();
        int unread = input.unread().size();
        if (unread > 0) {
            cautions.add(unread + (unread == 1 ? " element was" : " elements were")
                    + " not read: areas, runs and supports may be incomplete.");
        }
        if (input.files().stream().anyMatch(ResultBuilder::unopened)) {
            cautions.add("At least one file of the drop could not be opened: the result covers the others only.");
        }
        long high = input.trust().health().stream()
                .filter(l -> l.kind().importance() == Importance.HIGH)
                .count();
        if (high > 0) {
            cautions.add(
                    "The models have faults that bear on these results: sheet Model health of non-conformances.xlsx"
                            + " says which and what to do.");
        }
        input.zones().stream()
                .flatMap(z -> z.winds().stream())
                .map(BodyWind::caution)
                .distinct()
                .forEach(cautions::add);
        cautions.addAll(Cautions.standing());
        return cautions;
    }

    private static boolean unopened(FileInfo file) {
        return !file.opened();
    }
}

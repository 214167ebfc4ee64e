package runtrue.result.build;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import runtrue.ifc.Element;
import runtrue.ifc.GridAxis;
import runtrue.result.Conforming;
import runtrue.result.Counts;
import runtrue.result.Finding;
import runtrue.result.Outcome;
import runtrue.result.RuleSetInfo;
import runtrue.result.Severity;
import runtrue.roof.GridPlace;
import runtrue.roof.RoofPlane;
import runtrue.rules.Judgement;

/** Judgements with what the model says of where they are. */
final class FindingMapping {
    private final Map<String, RoofPlane> planes;
    private final List<GridAxis> axes;

    FindingMapping(List<RoofPlane> planes, List<GridAxis> axes) {
        this.planes = planes.stream().collect(Collectors.toMap(RoofPlane::id, Function.identity(), (a, b) -> a));
        this.axes = axes;
    }

    static Outcome outcome(Judgement judgement) {
        return Outcome.valueOf(judgement.outcome().name());
    }

    Finding finding(Judgement judgement) {
        return new Finding(
                judgement.id(),
                judgement.rule(),
                judgement.title(),
                Severity.valueOf(judgement.severity().name()),
                outcome(judgement),
                judgement.subject(),
                judgement.plane(),
                planeName(judgement),
                storey(judgement),
                files(judgement),
                judgement.elements().stream()
                        .map(e -> PlaneMapping.element(e, ""))
                        .toList(),
                judgement.place().map(p -> GridPlace.of(axes, p)).orElse(""),
                judgement.place().map(World::place),
                Measures.of(judgement.measured()),
                Measures.of(judgement.limit()),
                Measures.of(judgement.margin()),
                judgement.comparison(),
                judgement.limitSource(),
                judgement.message(),
                judgement.cure(),
                judgement.reason(),
                judgement.facts());
    }

    Conforming conforming(Judgement judgement) {
        return new Conforming(
                judgement.id(),
                judgement.rule(),
                judgement.subject(),
                judgement.plane(),
                planeName(judgement),
                Measures.of(judgement.measured()),
                Measures.of(judgement.limit()),
                Measures.of(judgement.margin()),
                judgement.comparison());
    }

    /** Rules of the set first, in its order, so that a rule without any subject shows as such. */
    static Counts counts(RuleSetInfo rules, List<Judgement> judgements) {
        Map<String, List<Judgement>> byRule = judgements.stream().collect(Collectors.groupingBy(Judgement::rule));
        return new Counts(
                outcomes(judgements),
                rules.rules().stream()
                        .map(r -> new Counts.RuleOutcomes(r.id(), outcomes(byRule.getOrDefault(r.id(), List.of()))))
                        .toList());
    }

    private static Counts.Outcomes outcomes(List<Judgement> judgements) {
        return new Counts.Outcomes(
                count(judgements, Outcome.CONFORMS),
                count(judgements, Outcome.DOES_NOT_CONFORM),
                count(judgements, Outcome.NOT_ASSESSED),
                count(judgements, Outcome.CONCEDED));
    }

    private static int count(List<Judgement> judgements, Outcome outcome) {
        return (int) judgements.stream().filter(j -> outcome(j) == outcome).count();
    }

    private String planeName(Judgement judgement) {
        RoofPlane plane = planes.get(judgement.plane());
        return plane == null ? "" : plane.name();
    }

    private String storey(Judgement judgement) {
        String ofElements = judgement.elements().stream()
                .map(Element::storey)
                .filter(s -> !s.isEmpty())
                .distinct()
                .collect(Collectors.joining(", "));
        RoofPlane plane = planes.get(judgement.plane());
        return ofElements.isEmpty() && plane != null ? plane.storey() : ofElements;
    }

    /** Files of the elements, or else of the plane's elements. */
    private List<String> files(Judgement judgement) {
        RoofPlane plane = planes.get(judgement.plane());
        List<Element> elements = judgement.elements().isEmpty() && plane != null
                ? plane.elements().stream().map(e -> e.element()).toList()
                : judgement.elements();
        return elements.stream().map(Element::file).distinct().sorted().toList();
    }
}

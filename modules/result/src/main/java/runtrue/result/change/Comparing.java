package runtrue.result.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import runtrue.result.BillResult;
import runtrue.result.CheckResult;
import runtrue.result.Conforming;
import runtrue.result.Finding;
import runtrue.result.Outcome;
import runtrue.result.PlaneResult;
import runtrue.result.change.Changes.ChangedFigure;
import runtrue.result.change.Changes.OfFinding;
import runtrue.result.change.Changes.OfOrder;
import runtrue.result.change.Changes.OfPlane;

/** Compares two results of one drop by the ids that findings, planes and lines of the bill keep from drop to drop. */
public final class Comparing {
    private final CheckResult before;
    private final CheckResult now;

    private Comparing(CheckResult before, CheckResult now) {
        this.before = before;
        this.now = now;
    }

    /** What is different now. */
    public static Changes of(CheckResult before, CheckResult now) {
        Comparing both = new Comparing(before, now);
        List<OfFinding> findings = both.findings();
        long known = findings.stream().filter(f -> f.kind() == ChangeKind.NEW).count();
        long changed =
                findings.stream().filter(f -> f.kind() == ChangeKind.CHANGED).count();
        return new Changes(
                before.drop(),
                before.runStamp(),
                Basis.of(before, now),
                findings,
                (int) (now.findings().size() - known - changed),
                both.planes(),
                both.orders());
    }

    private List<OfFinding> findings() {
        Map<String, Finding> earlier = byId(before.findings(), Finding::id);
        Map<String, Finding> present = byId(now.findings(), Finding::id);
        Map<String, Conforming> conformed = byId(before.conforming(), Conforming::id);
        Map<String, Conforming> conforms = byId(now.conforming(), Conforming::id);
        List<OfFinding> found = new ArrayList<>();
        for (Finding finding : now.findings()) {
            Finding old = earlier.get(finding.id());
            if (old == null) {
                Optional<Outcome> was =
                        conformed.containsKey(finding.id()) ? Optional.of(Outcome.CONFORMS) : Optional.empty();
                found.add(of(
                        ChangeKind.NEW,
                        finding,
                        was,
                        Optional.of(finding.outcome()),
                        Wording.appeared(finding, Optional.ofNullable(conformed.get(finding.id())))));
            } else {
                Wording.changed(old, finding)
                        .ifPresent(words -> found.add(of(
                                ChangeKind.CHANGED,
                                finding,
                                Optional.of(old.outcome()),
                                Optional.of(finding.outcome()),
                                words)));
            }
        }
        for (Finding old : before.findings()) {
            if (!present.containsKey(old.id())) {
                Optional<Conforming> cured = Optional.ofNullable(conforms.get(old.id()));
                found.add(of(
                        ChangeKind.GONE,
                        old,
                        Optional.of(old.outcome()),
                        cured.map(c -> Outcome.CONFORMS),
                        Wording.gone(old, cured)));
            }
        }
        found.sort(Comparator.comparing(OfFinding::kind));
        return found;
    }

    private static OfFinding of(
            ChangeKind kind, Finding finding, Optional<Outcome> before, Optional<Outcome> now, String words) {
        return new OfFinding(
                kind,
                finding.id(),
                finding.rule(),
                finding.title(),
                finding.severity(),
                finding.subject(),
                finding.plane(),
                before,
                now,
                words);
    }

    private List<OfPlane> planes() {
        Map<String, PlaneResult> earlier = byId(before.planes(), PlaneResult::id);
        Map<String, PlaneResult> present = byId(now.planes(), PlaneResult::id);
        List<OfPlane> found = new ArrayList<>();
        for (PlaneResult plane : now.planes()) {
            PlaneResult old = earlier.get(plane.id());
            List<ChangedFigure> figures = old == null ? List.of() : figures(old, plane);
            if (old == null || !figures.isEmpty()) {
                found.add(new OfPlane(
                        old == null ? ChangeKind.NEW : ChangeKind.CHANGED, plane.id(), plane.name(), figures));
            }
        }
        before.planes().stream()
                .filter(p -> !present.containsKey(p.id()))
                .forEach(p -> found.add(new OfPlane(ChangeKind.GONE, p.id(), p.name(), List.of())));
        return found;
    }

    private static List<ChangedFigure> figures(PlaneResult before, PlaneResult now) {
        return Stream.of(
                        new ChangedFigure("pitch", before.pitchDegrees(), now.pitchDegrees(), "deg"),
                        new ChangedFigure("area", before.areaSquareMetres(), now.areaSquareMetres(), "m2"),
                        new ChangedFigure("longest run", before.longestRunMetres(), now.longestRunMetres(), "m"),
                        new ChangedFigure(
                                "sheets", before.sheets().size(), now.sheets().size(), "pcs"),
                        new ChangedFigure(
                                "support lines",
                                before.supports().size(),
                                now.supports().size(),
                                "pcs"),
                        new ChangedFigure(
                                "penetrations",
                                before.penetrations().size(),
                                now.penetrations().size(),
                                "pcs"))
                .filter(f -> Wording.differ(f.before(), f.now()))
                .toList();
    }

    private List<OfOrder> orders() {
        Map<String, BillResult.Line> earlier = byId(before.bill().lines(), BillResult.Line::id);
        Map<String, BillResult.Line> present = byId(now.bill().lines(), BillResult.Line::id);
        List<OfOrder> found = new ArrayList<>();
        for (BillResult.Line line : now.bill().lines()) {
            BillResult.Line old = earlier.get(line.id());
            if (old == null || Wording.differ(old.ordered(), line.ordered())) {
                OptionalDouble was = old == null ? OptionalDouble.empty() : OptionalDouble.of(old.ordered());
                found.add(of(line, was, OptionalDouble.of(line.ordered())));
            }
        }
        before.bill().lines().stream()
                .filter(line -> !present.containsKey(line.id()))
                .forEach(line -> found.add(of(line, OptionalDouble.of(line.ordered()), OptionalDouble.empty())));
        return found;
    }

    private static OfOrder of(BillResult.Line line, OptionalDouble before, OptionalDouble now) {
        return new OfOrder(line.id(), line.description(), line.variant(), line.unit(), before, now);
    }

    private static <T> Map<String, T> byId(List<T> things, Function<T, String> id) {
        Map<String, T> found = new LinkedHashMap<>();
        things.forEach(thing -> found.putIfAbsent(id.apply(thing), thing));
        return found;
    }
}

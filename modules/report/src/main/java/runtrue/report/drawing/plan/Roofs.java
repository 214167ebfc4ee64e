package runtrue.report.drawing.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import runtrue.report.drawing.place.Box;
import runtrue.report.drawing.place.Vec;
import runtrue.result.BodyResult;
import runtrue.result.CheckResult;
import runtrue.result.PlaneResult;

/** Shares the planes of a drop out to drawings: what lies together is drawn together. */
public final class Roofs {
    /** Metres in plan; roofs nearer than this are one place for those who work on them. */
    private static final double TOGETHER = 2;

    /** Drawings of one drop; what is left over shares the last. */
    private static final int MOST = 24;

    private Roofs() {}

    /** Largest roof first. Every plane is on exactly one. */
    public static List<Roof> of(CheckResult result) {
        List<Cluster> clusters = joined(bodies(result));
        List<Roof> roofs = clusters.stream()
                .map(c -> Roof.of(result, c.planes))
                .sorted(Comparator.comparingDouble(Roof::grossArea)
                        .reversed()
                        .thenComparing(r -> r.planes().get(0).id()))
                .toList();
        if (roofs.size() <= MOST) {
            return roofs;
        }
        List<Roof> kept = new ArrayList<>(roofs.subList(0, MOST - 1));
        kept.add(Roof.of(
                result,
                roofs.subList(MOST - 1, roofs.size()).stream()
                        .flatMap(r -> r.planes().stream())
                        .toList()));
        return kept;
    }

    private record Cluster(Box plan, List<PlaneResult> planes) {
        Cluster with(Cluster other) {
            List<PlaneResult> all = new ArrayList<>(planes);
            all.addAll(other.planes);
            return new Cluster(
                    new Box(
                            Math.min(plan.left(), other.plan.left()),
                            Math.min(plan.top(), other.plan.top()),
                            Math.max(plan.right(), other.plan.right()),
                            Math.max(plan.bottom(), other.plan.bottom())),
                    all);
        }
    }

    /** One for each body, and one for each plane that belongs to none. */
    private static List<Cluster> bodies(CheckResult result) {
        Map<String, PlaneResult> left = new LinkedHashMap<>();
        result.planes().stream().filter(p -> !p.outline().isEmpty()).forEach(p -> left.put(p.id(), p));
        List<Cluster> clusters = new ArrayList<>();
        for (BodyResult body : result.bodies()) {
            List<PlaneResult> planes = body.planes().stream()
                    .map(left::remove)
                    .filter(Objects::nonNull)
                    .toList();
            if (!planes.isEmpty()) {
                clusters.add(cluster(planes));
            }
        }
        left.values().forEach(p -> clusters.add(cluster(List.of(p))));
        return clusters;
    }

    private static Cluster cluster(List<PlaneResult> planes) {
        return new Cluster(
                Box.around(planes.stream()
                        .flatMap(p -> p.outline().stream())
                        .map(p -> new Vec(p.xMetres(), p.yMetres()))
                        .toList()),
                planes);
    }

    private static List<Cluster> joined(List<Cluster> bodies) {
        List<Cluster> clusters = new ArrayList<>();
        for (Cluster body : bodies) {
            Cluster grown = body;
            boolean more = true;
            while (more) {
                more = false;
                for (int i = clusters.size() - 1; i >= 0; i--) {
                    if (clusters.get(i).plan.grown(TOGETHER).touches(grown.plan)) {
                        grown = clusters.remove(i).with(grown);
                        more = true;
                    }
                }
            }
            clusters.add(grown);
        }
        return clusters;
    }
}

package runtrue.roof.edge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.algorithm.MinimumAreaRectangle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.distance.DistanceOp;
import runtrue.roof.Ids;
import runtrue.roof.RoofBody;
import runtrue.roof.RoofEdge;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofTolerance;
import runtrue.roof.plane.Outlines;

/** Planes that make up one roof: they share an edge, or adjoin in plan at about the same level. */
public final class BodyFinder {

    /** Planes that adjoin in plan with a step up to this are one roof to the wind and to the roofer. */
    private static final double STEP = RoofTolerance.BODY_STEP.si();

    /** So do planes with a gutter between them. */
    private static final double GAP = RoofTolerance.GUTTER.si();

    private BodyFinder() {}

    /** Bodies by id. */
    public static List<RoofBody> bodies(List<RoofPlane> planes, List<RoofEdge> edges) {
        Map<String, Integer> index = new HashMap<>();
        int[] group = new int[planes.size()];
        List<Geometry> plans = new ArrayList<>();
        for (int i = 0; i < group.length; i++) {
            index.put(planes.get(i).id(), i);
            group[i] = i;
            plans.add(PlanViews.plan(planes.get(i)));
        }
        for (RoofEdge edge : edges) {
            if (edge.planes().size() == 2) {
                merge(group, index(index, edge, 0), index(index, edge, 1));
            }
        }
        for (int i = 0; i < group.length; i++) {
            for (int k = i + 1; k < group.length; k++) {
                if (group[i] != group[k] && adjoin(planes.get(i), plans.get(i), planes.get(k), plans.get(k))) {
                    merge(group, i, k);
                }
            }
        }
        List<RoofBody> bodies = new ArrayList<>();
        for (int g = 0; g < group.length; g++) {
            List<Integer> members = new ArrayList<>();
            for (int i = 0; i < group.length; i++) {
                if (group[i] == g) {
                    members.add(i);
                }
            }
            if (!members.isEmpty()) {
                bodies.add(body(
                        members.stream().map(planes::get).toList(),
                        members.stream().map(plans::get).toList()));
            }
        }
        bodies.sort(Comparator.comparing(RoofBody::id));
        return bodies;
    }

    private static int index(Map<String, Integer> index, RoofEdge edge, int i) {
        Integer found = index.get(edge.planes().get(i));
        if (found == null) {
            throw new IllegalArgumentException("edge of a plane that is not listed: " + edge.id());
        }
        return found;
    }

    private static void merge(int[] group, int a, int b) {
        int from = Math.max(group[a], group[b]);
        int to = Math.min(group[a], group[b]);
        for (int i = 0; i < group.length; i++) {
            if (group[i] == from) {
                group[i] = to;
            }
        }
    }

    private static boolean adjoin(RoofPlane a, Geometry planA, RoofPlane b, Geometry planB) {
        if (planA.getEnvelopeInternal().distance(planB.getEnvelopeInternal()) > GAP) {
            return false;
        }
        DistanceOp nearest = new DistanceOp(planA, planB);
        if (nearest.distance() > GAP) {
            return false;
        }
        Coordinate[] points = nearest.nearestPoints();
        return Math.abs(PlanViews.height(a, points[0]) - PlanViews.height(b, points[1])) < STEP;
    }

    private static RoofBody body(List<RoofPlane> planes, List<Geometry> plans) {
        Geometry plan = Outlines.bridged(plans, GAP);
        Coordinate[] box = MinimumAreaRectangle.getMinimumRectangle(plan).getCoordinates();
        double a = box[0].distance(box[1]);
        double b = box[1].distance(box[2]);
        List<String> ids = planes.stream().map(RoofPlane::id).sorted().toList();
        return new RoofBody(
                Ids.of("R", String.join("/", ids)),
                ids,
                plan,
                Math.min(a, b),
                Math.max(a, b),
                planes.stream().mapToDouble(RoofPlane::eaveLevel).min().orElseThrow(),
                planes.stream().mapToDouble(RoofPlane::ridgeLevel).max().orElseThrow());
    }
}

package runtrue.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import runtrue.result.BearingResult;
import runtrue.result.BodyResult;
import runtrue.result.CheckResult;
import runtrue.result.Direction;
import runtrue.result.EdgeResult;
import runtrue.result.ElementRef;
import runtrue.result.Finding;
import runtrue.result.GridLine;
import runtrue.result.Measure;
import runtrue.result.Outcome;
import runtrue.result.PlaneResult;
import runtrue.result.PlaneResult.Range;
import runtrue.result.Point;
import runtrue.result.Severity;

/**
 * Invented gables of 12 m by 4.8 m a side, 36.87 degrees steep (3 in 4), one north of the other 40 m apart, far from the
 * origin. The first has a hole and a span of 3 m where 2 m is allowed.
 */
final class InventedGable {
    private static final double WIDTH = 12;
    private static final double RUN = 6;
    private static final double X = 430_000;
    private static final double Y = 5_300_000;

    private InventedGable() {}

    static CheckResult drop(int gables) {
        return drop(gables, "Hall / south plane");
    }

    static CheckResult drop(int gables, String firstName) {
        return drop(gables, firstName, List.of(finding("P-s0"), open("P-n0")));
    }

    /** One gable that nothing was found about. */
    static CheckResult sound() {
        return drop(1, "Hall / south plane", List.of());
    }

    private static CheckResult drop(int gables, String firstName, List<Finding> findings) {
        List<PlaneResult> planes = new ArrayList<>();
        List<EdgeResult> edges = new ArrayList<>();
        List<BodyResult> bodies = new ArrayList<>();
        for (int i = 0; i < gables; i++) {
            PlaneResult south = plane("P-s" + i, i == 0 ? firstName : "Hall / south plane", i, true);
            PlaneResult north = plane("P-n" + i, "Hall / north plane", i, false);
            planes.addAll(List.of(south, north));
            edges.addAll(edges(i, south, north));
            bodies.add(
                    new BodyResult("R-" + i, List.of(south.id(), north.id()), 9.6, 12, 5, 8.6, List.of(), List.of()));
        }
        return with(planes, edges, bodies, findings);
    }

    private static CheckResult with(
            List<PlaneResult> planes, List<EdgeResult> edges, List<BodyResult> bodies, List<Finding> findings) {
        CheckResult other = MillLane.result();
        return new CheckResult(
                other.format(),
                other.toolVersion(),
                other.runStamp(),
                other.drop(),
                other.files(),
                other.ruleSet(),
                other.roofSystem(),
                other.settings(),
                other.tolerances(),
                other.counts(),
                planes,
                edges,
                bodies,
                List.of(
                        new GridLine("G", "A", List.of(at(0, -1, 0), at(0, 10, 0))),
                        new GridLine("G", "B", List.of(at(6, -1, 0), at(6, 10, 0))),
                        new GridLine("G", "1", List.of(at(-1, 0, 0), at(13, 0, 0)))),
                findings,
                List.of(),
                List.of(),
                other.bill(),
                other.unread(),
                other.unplaced(),
                other.methods(),
                other.stated(),
                other.health(),
                other.cautions(),
                Optional.empty());
    }

    /** South planes rise to the north from the eave; north planes rise to the south. */
    private static PlaneResult plane(String id, String name, int gable, boolean south) {
        double y = 40.0 * gable;
        PlaneResult.Frame frame = south
                ? new PlaneResult.Frame(
                        at(0, y, 5), new Direction(1, 0, 0), new Direction(0, 0.8, 0.6), new Direction(0, -0.6, 0.8))
                : new PlaneResult.Frame(
                        at(12, y + 9.6, 5),
                        new Direction(-1, 0, 0),
                        new Direction(0, -0.8, 0.6),
                        new Direction(0, 0.6, 0.8));
        boolean hole = south && gable == 0;
        return new PlaneResult(
                id,
                name,
                "Hall",
                "Roof",
                36.869898,
                OptionalDouble.of(south ? 180 : 0),
                OptionalDouble.of(south ? 170 : 350),
                hole ? 71 : 72,
                72,
                57.6,
                57.6,
                5,
                8.6,
                RUN,
                OptionalDouble.empty(),
                "",
                frame,
                ring(frame, 0, WIDTH, 0, RUN),
                hole ? List.of(new PlaneResult.Penetration(id + "/H1", 1, 1, 1, ring(frame, 8, 9, 3, 4))) : List.of(),
                List.of(),
                sheets(hole),
                List.of(),
                supports(id, frame),
                spans(id, hole),
                BearingResult.unknown(),
                List.of(),
                Optional.empty());
    }

    private static List<Point> ring(PlaneResult.Frame frame, double u0, double u1, double v0, double v1) {
        return List.of(on(frame, u0, v0), on(frame, u1, v0), on(frame, u1, v1), on(frame, u0, v1));
    }

    private static Point on(PlaneResult.Frame frame, double u, double v) {
        return new Point(
                frame.origin().xMetres()
                        + u * frame.across().x()
                        + v * frame.up().x(),
                frame.origin().yMetres()
                        + u * frame.across().y()
                        + v * frame.up().y(),
                frame.origin().zMetres()
                        + u * frame.across().z()
                        + v * frame.up().z());
    }

    private static Point at(double x, double y, double z) {
        return new Point(X + x, Y + y, z);
    }

    /** 24 strips of half a metre, ordered a little longer or shorter; two of them parted by the hole. */
    private static List<PlaneResult.Sheet> sheets(boolean hole) {
        List<PlaneResult.Sheet> sheets = new ArrayList<>();
        for (int n = 1; n <= 24; n++) {
            Range u = new Range((n - 1) * 0.5, n * 0.5);
            if (hole && (n == 17 || n == 18)) {
                sheets.add(new PlaneResult.Sheet(n, u, new Range(0, 3), 3, 3.05, 1.5, false, false, true));
                sheets.add(new PlaneResult.Sheet(n, u, new Range(4, RUN), 2, 1.98, 1, false, false, true));
            } else {
                sheets.add(new PlaneResult.Sheet(n, u, new Range(0, RUN), RUN, 6.03, 3, false, false, false));
            }
        }
        return sheets;
    }

    private static List<PlaneResult.SupportLine> supports(String id, PlaneResult.Frame frame) {
        ElementRef purlin = new ElementRef("3Purlin", "Purlin", "IfcMember", "steel.ifc", 9, "Roof", "by name");
        return IntStream.rangeClosed(1, 4)
                .mapToObj(n -> new PlaneResult.SupportLine(
                        id + "/L" + n,
                        n,
                        1.5 * n - 0.75,
                        List.of(new PlaneResult.Piece(
                                purlin,
                                on(frame, 0, 1.5 * n - 0.75),
                                on(frame, WIDTH, 1.5 * n - 0.75),
                                -0.1,
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                "",
                                0.06,
                                0.2,
                                OptionalDouble.empty())),
                        List.of(new Range(0, WIDTH))))
                .toList();
    }

    private static List<PlaneResult.Span> spans(String id, boolean stopped) {
        Range all = new Range(0, WIDTH);
        Range rest = stopped ? new Range(4, WIDTH) : all;
        List<PlaneResult.Span> spans = new ArrayList<>(List.of(
                new PlaneResult.Span("eave overhang", 0.75, 0.75, all, new Range(0, 0.75), "", id + "/L1"),
                new PlaneResult.Span("end span", 1.5, 1.5, rest, new Range(0.75, 2.25), id + "/L1", id + "/L2"),
                new PlaneResult.Span("internal span", 1.5, 1.5, rest, new Range(2.25, 3.75), id + "/L2", id + "/L3"),
                new PlaneResult.Span("end span", 1.5, 1.5, all, new Range(3.75, 5.25), id + "/L3", id + "/L4"),
                new PlaneResult.Span("ridge overhang", 0.75, 0.75, all, new Range(5.25, 6), id + "/L4", "")));
        if (stopped) {
            spans.add(new PlaneResult.Span(
                    "internal span", 3, 3, new Range(0, 4), new Range(0.75, 3.75), id + "/L1", id + "/L3"));
        }
        return spans;
    }

    private static List<EdgeResult> edges(int gable, PlaneResult south, PlaneResult north) {
        List<EdgeResult> edges = new ArrayList<>();
        for (PlaneResult plane : List.of(south, north)) {
            List<Point> ring = plane.outline();
            String[] kinds = {"eave", "verge", "", "verge"};
            for (int i = 0; i < 4; i++) {
                if (!kinds[i].isEmpty()) {
                    edges.add(new EdgeResult(
                            "E-" + plane.id() + i,
                            kinds[i],
                            List.of(plane.id()),
                            ring.get(i),
                            ring.get((i + 1) % 4),
                            i == 0 ? WIDTH : RUN,
                            OptionalDouble.empty(),
                            OptionalDouble.empty()));
                }
            }
        }
        edges.add(new EdgeResult(
                "E-ridge" + gable,
                "ridge",
                List.of(south.id(), north.id()),
                south.outline().get(3),
                south.outline().get(2),
                WIDTH,
                OptionalDouble.of(73.74),
                OptionalDouble.empty()));
        return edges;
    }

    private static Finding finding(String plane) {
        return finding(
                "internal-span-1",
                Outcome.DOES_NOT_CONFORM,
                plane,
                "the internal span between support lines 1 and 3",
                Optional.of(new Measure(3000, "mm")),
                Optional.of(new Measure(2000, "mm")));
    }

    private static Finding open(String plane) {
        return finding("internal-span-2", Outcome.NOT_ASSESSED, plane, "plane", Optional.empty(), Optional.empty());
    }

    private static Finding finding(
            String id,
            Outcome outcome,
            String plane,
            String subject,
            Optional<Measure> measured,
            Optional<Measure> limit) {
        return new Finding(
                id,
                "internal-span",
                "Internal span",
                Severity.MAJOR,
                outcome,
                subject,
                plane,
                "Hall / south plane",
                "Roof",
                List.of("mill-lane-structure.ifc"),
                List.of(MillLane.PURLIN),
                "between A and B",
                Optional.of(at(2, 2, 6.5)),
                measured,
                limit,
                Optional.empty(),
                "at most",
                "invented",
                "message",
                "",
                "",
                List.of());
    }
}

package runtrue.rules.judge.subject;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.Element;
import runtrue.roof.Interval;
import runtrue.roof.PlaneLayout;
import runtrue.roof.SupportPiece;
import runtrue.roof.bearing.NearThing;
import runtrue.roof.bearing.Standing;
import runtrue.roof.bearing.TruePlane;
import runtrue.roof.bearing.TruePlane.Deviation;
import runtrue.rules.cel.SubjectKind;

/** Supports of a plane, and what stands above them, as subjects. */
public final class BearingParts {
    private static final String OFF = "does not matter: no sheet reaches it";

    private final PlaneLayout layout;
    private final Subject plane;
    private final Vector3D origin;
    private final boolean somethingUnread;

    /**
     * For one plane.
     *
     * @param somethingUnread whether there are things in the drop that may be anywhere
     */
    public BearingParts(PlaneLayout layout, Subject plane, Vector3D origin, boolean somethingUnread) {
        this.somethingUnread = somethingUnread;
        this.layout = layout;
        this.plane = plane;
        this.origin = origin;
    }

    /** One for each piece of a support line; one that says what is lacking when there is none. */
    public List<Subject> supports() {
        Optional<TruePlane> truth = layout.bearing().truePlane();
        if (truth.isEmpty()) {
            return List.of(Subject.lacking(SubjectKind.SUPPORT, plane, "how its supports lie " + lack()));
        }
        List<Subject> subjects = new ArrayList<>();
        Map<Integer, Integer> numbers = new HashMap<>();
        for (Deviation deviation : truth.get().deviations()) {
            int number = numbers.merge(deviation.line(), 1, Integer::sum);
            subjects.add(support(deviation, number));
        }
        layout.bearing().near().stream()
                .filter(n -> n.standing() == Standing.OFF_LEVEL)
                .map(this::offLevel)
                .forEach(subjects::add);
        return subjects;
    }

    /**
     * A member across the fall that carries nothing because it lies a little off the level of the others: the worst case
     * of a support out of plane, since no sheet reaches it.
     */
    private Subject offLevel(NearThing thing) {
        Element element = thing.element();
        return new Subject(
                SubjectKind.SUPPORT,
                "a member beside the supports of " + plane.name(),
                plane.plane(),
                List.of(element),
                Optional.of(place(middle(thing.u()), middle(thing.v()))),
                "support|" + element.globalId(),
                plane.facts()
                        .inner()
                        .know("support.name", element.name(), "")
                        .miss("support.line", "does not exist: it is in no line, because no sheet reaches it")
                        .know("support.deviation", Math.abs(thing.above()), "contact face to contact plane")
                        .know("support.difference", difference(thing.above(), thing.above()), "between contact faces")
                        .know("support.side", thing.above() > 0 ? "high" : "low", "")
                        .know("support.carrying", false, "no sheet reaches it")
                        .miss("support.flange", OFF)
                        .miss("support.thickness", OFF)
                        .know("support.lap", 0, "it is in no line")
                        .know(
                                "support.metal",
                                Metals.of(element.layers(), plane.facts(), "settings.support_metal"),
                                "material in the model, or the settings"));
    }

    /**
     * From the contact face's ends to the farthest end of any read support, its own included: two that lie farther apart
     * than twice a limit cannot both keep it, wherever unread supports would put the contact plane.
     */
    private double difference(double atFrom, double atTo) {
        return layout.bearing().truePlane().orElseThrow().deviations().stream()
                .flatMapToDouble(d -> DoubleStream.of(d.atFrom(), d.atTo(), atFrom, atTo))
                .map(end -> Math.max(Math.abs(end - atFrom), Math.abs(end - atTo)))
                .max()
                .orElse(0);
    }

    private static double middle(Interval interval) {
        return (interval.from() + interval.to()) / 2;
    }

    private double lap(Deviation deviation) {
        return layout.supports().stream()
                .filter(line -> line.number() == deviation.line())
                .mapToDouble(line -> SupportPieces.lap(deviation.piece(), line))
                .max()
                .orElse(0);
    }

    private Subject support(Deviation deviation, int number) {
        SupportPiece piece = deviation.piece();
        Element element = piece.element();
        Subject subject = new Subject(
                SubjectKind.SUPPORT,
                "piece " + number + " of support line " + deviation.line() + " of " + plane.name(),
                plane.plane(),
                List.of(element),
                Optional.of(place((piece.uFrom() + piece.uTo()) / 2, (piece.vFrom() + piece.vTo()) / 2)),
                "support|" + element.globalId(),
                plane.facts()
                        .inner()
                        .know("support.name", element.name(), "")
                        .know("support.line", deviation.line(), "from the eave")
                        .know("support.deviation", Math.abs(deviation.greatest()), "contact face to contact plane")
                        .know(
                                "support.difference",
                                difference(deviation.atFrom(), deviation.atTo()),
                                "between contact faces")
                        .know("support.side", deviation.greatest() > 0 ? "high" : "low", "")
                        .know("support.carrying", true, "")
                        .know("support.flange", piece.flange(), "face that looks up, along the fall")
                        .know("support.lap", lap(deviation), "alongside the next one")
                        .know(
                                "support.metal",
                                Metals.of(element.layers(), plane.facts(), "settings.support_metal"),
                                "material in the model, or the settings"));
        piece.thickness()
                .ifPresentOrElse(
                        t -> subject.facts()
                                .know("support.thickness", t, "from the face that looks up to the next below"),
                        () -> subject.facts()
                                .miss(
                                        "support.thickness",
                                        "is not known: its body shows no thickness under its flange"));
        return subject.inSeries("piece", number);
    }

    /** One for each thing that stands proud; one of no height when nothing does, or when others were not read. */
    public List<Subject> obstacles() {
        if (layout.bearing().truePlane().isEmpty()) {
            return List.of(Subject.lacking(SubjectKind.OBSTACLE, plane, "what stands above its supports " + lack()));
        }
        List<Subject> subjects = new ArrayList<>();
        layout.bearing().proud().forEach(thing -> subjects.add(obstacle(thing)));
        if (subjects.isEmpty()) {
            subjects.add(nothing("nothing on "));
        } else if (somethingUnread || !layout.bearing().unread().isEmpty()) {
            subjects.add(nothing("nothing else on "));
        }
        return subjects;
    }

    private Subject nothing(String name) {
        return new Subject(
                SubjectKind.OBSTACLE,
                name + plane.name(),
                plane.plane(),
                plane.elements(),
                plane.place(),
                "obstacle",
                plane.facts()
                        .inner()
                        .know("obstacle.name", "", "")
                        .know("obstacle.class", "", "")
                        .know("obstacle.height", 0, "nothing stands above the contact plane")
                        .know("obstacle.through", false, ""));
    }

    private Subject obstacle(NearThing thing) {
        Element element = thing.element();
        return new Subject(
                SubjectKind.OBSTACLE,
                element.ifcClass() + " \"" + element.name() + "\" on " + plane.name(),
                plane.plane(),
                List.of(element),
                Optional.of(place(middle(thing.u()), middle(thing.v()))),
                "obstacle|" + element.globalId(),
                plane.facts()
                        .inner()
                        .know("obstacle.name", element.name(), "")
                        .know("obstacle.class", element.ifcClass(), "")
                        .know("obstacle.height", thing.above(), "highest point within the sheeted area")
                        .know("obstacle.through", thing.standing() == Standing.THROUGH, ""));
    }

    private String lack() {
        return BearingFacts.lack(layout);
    }

    private Vector3D place(double u, double v) {
        return layout.plane().at(u, v).add(origin);
    }
}

package runtrue.rules.judge;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.Element;
import runtrue.rules.Outcome;
import runtrue.rules.Quantity;
import runtrue.rules.cel.SubjectKind;
import runtrue.rules.judge.subject.Stretch;
import runtrue.rules.judge.subject.Subject;
import runtrue.rules.units.Dimension;
import runtrue.rules.units.Unit;

/** Subjects told of together; most groups have one. */
record Group(List<Judged> members) {
    /** By plane and place, then by key so that equal places keep one order. */
    static final Comparator<Group> ORDER = Comparator.comparing(
                    (Group group) -> group.first().subject().plane())
            .thenComparingDouble(group -> coordinate(group, 0))
            .thenComparingDouble(group -> coordinate(group, 1))
            .thenComparingDouble(group -> coordinate(group, 2))
            .thenComparing(group -> group.first().subject().key());

    Group {
        members = List.copyOf(members);
    }

    Judged first() {
        return members.get(0);
    }

    /** The one with the least margin, to the millimetre; among equals the same in every drop. */
    Judged worst() {
        return members.stream()
                .min(Comparator.<Judged>comparingLong(
                                judged -> thousandths(judged.verdict().margin()))
                        .thenComparing(judged -> judged.subject().key()))
                .orElseThrow();
    }

    /** Whether the members were measured differently, so that the worst stands for values up to it. */
    boolean varies() {
        return members.stream()
                        .map(judged -> thousandths(judged.verdict().measured()))
                        .distinct()
                        .count()
                > 1;
    }

    private static long thousandths(Optional<Quantity> quantity) {
        return quantity.map(Group::thousandths).orElse(0L);
    }

    /** In SI, but for water: of that a cubic metre a second is a river. */
    static long thousandths(Quantity quantity) {
        boolean flow = Unit.of(quantity.unit()).dimension().equals(Dimension.FLOW);
        return Math.round(quantity.si() * (flow ? 1e6 : 1000));
    }

    /** {@code sheets 3 to 9 of plane south}, {@code the ridge overhangs above support lines 1 to 4 of plane south}. */
    String name() {
        Subject first = first().subject();
        List<Stretch> stretches =
                members.stream().flatMap(m -> m.subject().stretch().stream()).toList();
        if (!stretches.isEmpty()) {
            String own = Stretch.name(List.of(stretches.get(0)));
            boolean tellApart = first().verdict().outcome() == Outcome.DOES_NOT_CONFORM;
            return Stretch.name(stretches)
                    + first.name().substring(own.length())
                    + (tellApart ? Stretch.across(stretches) : "");
        } else if (members.size() == 1) {
            return first.name();
        } else if (first.kind() == SubjectKind.STATED) {
            return first.series() + " of " + members.size() + " elements";
        }
        int last = members.get(members.size() - 1).subject().number();
        String start = first.series() + " " + first.number();
        String range = first.series() + "s " + first.number() + " to " + last;
        return first.name().startsWith(start) ? range + first.name().substring(start.length()) : first.name();
    }

    /** All that bound or carry a member, each once. */
    List<Element> elements() {
        return members.stream()
                .flatMap(m -> m.subject().elements().stream())
                .distinct()
                .toList();
    }

    /** Of the worst; in the middle where all are alike. */
    Optional<Vector3D> place() {
        return (varies() ? worst() : members.get(members.size() / 2)).subject().place();
    }

    private static double coordinate(Group group, int axis) {
        return group.place()
                .map(place -> axis == 0 ? place.getX() : axis == 1 ? place.getY() : place.getZ())
                .map(value -> Math.rint(value * 1000) / 1000)
                .orElse(0.0);
    }
}

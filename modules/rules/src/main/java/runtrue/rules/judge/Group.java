package runtrue.rules.judge;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.rules.Quantity;

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

    /** The one with the least margin. */
    Judged worst() {
        return members.stream()
                .min(Comparator.comparingDouble(
                        judged -> judged.verdict().margin().map(Quantity::si).orElse(0.0)))
                .orElseThrow();
    }

    /** {@code sheets 3 to 9 of south plane}. */
    String name() {
        Subject first = first().subject();
        if (members.size() == 1) {
            return first.name();
        }
        int last = members.get(members.size() - 1).subject().number();
        String start = first.series() + " " + first.number();
        String range = first.series() + "s " + first.number() + " to " + last;
        return first.name().startsWith(start) ? range + first.name().substring(start.length()) : first.name();
    }

    Optional<Vector3D> place() {
        return members.get(members.size() / 2).subject().place();
    }

    private static double coordinate(Group group, int axis) {
        return group.place()
                .map(place -> axis == 0 ? place.getX() : axis == 1 ? place.getY() : place.getZ())
                .map(value -> Math.rint(value * 1000) / 1000)
                .orElse(0.0);
    }
}

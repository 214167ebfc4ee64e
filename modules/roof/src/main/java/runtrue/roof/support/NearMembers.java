package runtrue.roof.support;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import runtrue.roof.Interval;
import runtrue.roof.ReadElement;
import runtrue.roof.RoofTolerance;
import runtrue.roof.bearing.NearThing;
import runtrue.roof.bearing.Obstacles;
import runtrue.roof.bearing.Standing;

/** Says of everything near a plane that is no support how it stands to the contact plane: nothing is left out in silence. */
final class NearMembers {
    private static final double OFF_LEVEL = RoofTolerance.OFF_LEVEL.si();

    private static final Comparator<NearThing> ORDER = Comparator.comparingDouble(NearThing::above)
            .reversed()
            .thenComparing(n -> n.element().globalId())
            .thenComparing(n -> n.element().file())
            .thenComparingInt(n -> n.element().stepId());

    private NearMembers() {}

    /** Where rafters carry: they, and the members below them. */
    static List<NearThing> under(List<Candidate> all, Set<Candidate> carrying, double level) {
        return all.stream()
                .map(c -> carrying.contains(c) ? thing(c, Standing.CARRYING, level) : thing(c, Standing.LOWER, level))
                .sorted(ORDER)
                .toList();
    }

    /**
     * Where members across the fall carry: what stands above the contact plane, then every other member near.
     *
     * @param things whatever might stand above the contact plane, members included
     * @param level w of the contact plane, metres
     */
    static List<NearThing> around(
            Obstacles obstacles, List<Candidate> all, Set<Candidate> carrying, List<ReadElement> things, double level) {
        Set<ReadElement> told = Collections.newSetFromMap(new IdentityHashMap<>());
        carrying.forEach(c -> told.add(c.member().element()));
        List<NearThing> near = new ArrayList<>();
        for (ReadElement thing : things) {
            Optional<NearThing> found = told.contains(thing) ? Optional.empty() : obstacles.find(thing);
            if (found.isPresent()) {
                told.add(thing);
                near.add(found.get());
            }
        }
        for (Candidate c : all) {
            if (told.add(c.member().element())) {
                boolean off = !c.along() && Math.abs(c.contact() - level) <= OFF_LEVEL;
                near.add(thing(c, off ? Standing.OFF_LEVEL : Standing.LOWER, level));
            }
        }
        near.sort(ORDER);
        return near;
    }

    private static NearThing thing(Candidate c, Standing standing, double level) {
        return new NearThing(
                c.member().element().element(),
                standing,
                c.contact() - level,
                new Interval(c.uFrom(), c.uTo()),
                new Interval(c.vFrom(), c.vTo()));
    }
}

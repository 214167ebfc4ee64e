package runtrue.rules.yaml;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import runtrue.rules.RuleException;

/** Errors of one load, collected so that a person sees all of them at once. */
public final class Problems {
    private static final int SHOWN = 50;

    private final SortedSet<Problem> found = new TreeSet<>();

    private record Problem(Place place, String message) implements Comparable<Problem> {
        @Override
        public int compareTo(Problem other) {
            int byPlace = place.compareTo(other.place);
            return byPlace == 0 ? message.compareTo(other.message) : byPlace;
        }
    }

    public void add(Place place, String message) {
        found.add(new Problem(place, message));
    }

    public boolean any() {
        return !found.isEmpty();
    }

    /** One line per error, in the order of the file. */
    List<String> lines() {
        return found.stream().map(p -> p.place() + ": " + p.message()).toList();
    }

    /**
     * Ends the load when anything was found.
     *
     * @throws RuleException with one line per error
     */
    public void throwIfAny() {
        if (!any()) {
            return;
        }
        String text = lines().stream().limit(SHOWN).collect(Collectors.joining("\n"));
        int more = found.size() - SHOWN;
        throw new RuleException(more > 0 ? text + "\nand " + more + " more errors" : text);
    }
}

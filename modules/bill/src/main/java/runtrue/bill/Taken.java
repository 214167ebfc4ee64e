package runtrue.bill;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import runtrue.bill.count.Subject;

/** Gathers what one line of the bill takes from each plane; a part is rounded to thousandths, and sums of parts are exact. */
final class Taken {
    private final Map<Place, OfPlane> planes = new LinkedHashMap<>();

    private record Place(String plane, String zone) {}

    private static final class OfPlane {
        private double net;
        private long count;
        private final Set<String> shared = new TreeSet<>();
        private final Set<String> from = new LinkedHashSet<>();
    }

    /** Takes a quantity, in the line's unit, from a subject. */
    void add(Subject subject, double quantity, long count) {
        OfPlane plane = planes.computeIfAbsent(new Place(subject.plane(), subject.zone()), p -> new OfPlane());
        plane.net += quantity;
        plane.count += count;
        plane.shared.addAll(subject.sharedWith());
        plane.from.addAll(subject.from());
    }

    long net() {
        return planes.values().stream().mapToLong(p -> Thousandths.of(p.net)).sum();
    }

    long count() {
        return planes.values().stream().mapToLong(p -> p.count).sum();
    }

    List<BillLine.Part> parts() {
        List<BillLine.Part> parts = new ArrayList<>();
        planes.forEach((place, p) -> parts.add(new BillLine.Part(
                place.plane(),
                place.zone(),
                List.copyOf(p.shared),
                Thousandths.quantity(Thousandths.of(p.net)),
                p.count,
                List.copyOf(p.from))));
        return parts;
    }
}

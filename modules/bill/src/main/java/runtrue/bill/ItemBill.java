package runtrue.bill;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import runtrue.bill.count.RoofSubjects;
import runtrue.bill.count.Subject;
import runtrue.roof.EdgeKind;
import runtrue.roof.ZoneKind;
import runtrue.rules.buildup.BuildUpItem;
import runtrue.rules.buildup.BuildUpItem.Packing;
import runtrue.rules.buildup.CountedOn;
import runtrue.rules.buildup.ItemKind;
import runtrue.rules.buildup.Zoning;
import runtrue.rules.units.Quantities;

/** Lines of one item that is not cut to length: one, or one for each zone. */
final class ItemBill {
    private static final String NO_ZONE = "zone not known";

    /** A quantity that is so nearly a multiple of the stretches is one. */
    private static final double SAME = 1e-6;

    private final BuildUpItem item;
    private final RoofSubjects roof;
    private final Amounts amounts;

    ItemBill(BuildUpItem item, RoofSubjects roof, Amounts amounts) {
        this.item = item;
        this.roof = roof;
        this.amounts = amounts;
    }

    /** What is 0 makes no line. */
    List<BillLine> lines() {
        Map<String, List<Subject>> byZone = new HashMap<>();
        for (Subject subject : roof.of(item)) {
            if (amounts.applies(item, subject)) {
                byZone.computeIfAbsent(item.zones() == Zoning.APART ? subject.zone() : "", z -> new ArrayList<>())
                        .add(subject);
            }
        }
        List<BillLine> lines = new ArrayList<>();
        for (String zone : zones()) {
            List<Subject> subjects = byZone.getOrDefault(zone, List.of());
            line(variant(zone), subjects).ifPresent(lines::add);
        }
        return lines;
    }

    /** Zones in the order of their gravity, then what lies in none. */
    private static List<String> zones() {
        List<String> zones = new ArrayList<>();
        for (ZoneKind kind : ZoneKind.values()) {
            zones.add(kind.label());
        }
        zones.add("");
        return zones;
    }

    private String variant(String zone) {
        if (item.zones() != Zoning.APART) {
            return "";
        }
        return zone.isEmpty() ? NO_ZONE : zone + " zone";
    }

    /** {@code corner 54, edge 538, interior 1176}. */
    private String byZone(Taken taken) {
        List<String> texts = new ArrayList<>();
        for (String zone : zones()) {
            double net = taken.parts().stream()
                    .filter(p -> p.zone().equals(zone))
                    .mapToDouble(BillLine.Part::net)
                    .sum();
            if (net > 0) {
                texts.add((zone.isEmpty() ? NO_ZONE : zone) + String.format(Locale.ROOT, " %.0f", net));
            }
        }
        return String.join(", ", texts);
    }

    private Optional<BillLine> line(String variant, List<Subject> subjects) {
        Taken taken = new Taken();
        Optional<StockRuns> stock = item.kind() == ItemKind.LENGTH
                ? item.packing().map(p -> new StockRuns(p, item.lap()))
                : Optional.empty();
        for (Subject subject : subjects) {
            Optional<Double> quantity = amounts.quantity(item, subject);
            if (quantity.isPresent() && quantity.get() > 0) {
                double total = quantity.get() * subject.times();
                long pieces = stock.map(s -> pieces(s, subject, total)).orElse(0L);
                Subject placed = item.zones() == Zoning.NONE ? subject.inNoZone() : subject;
                taken.add(placed, total / item.unit().inSi(), pieces);
            }
        }
        if (taken.net() == 0) {
            return Optional.empty();
        }
        Optional<RollCourses> courses = courses(subjects);
        Optional<StockPlan> plan = stock.map(s -> s.pieces().plan());
        Order.Needs needs = courses.map(c -> new Order.Needs(c.differences(taken.net()), c.rolls(), Optional.empty()))
                .orElseGet(() -> Order.Needs.laps(
                        item,
                        Thousandths.of(stock.map(StockRuns::laps).orElseGet(() -> rollLaps(taken))
                                / item.unit().inSi())));
        Order order = Order.of(item, taken.net(), plan.map(needs::cutBy).orElse(needs));
        return Optional.of(line(variant, taken, order, stock, plan, courses.map(RollCourses::method)));
    }

    /** Courses over the planes, where the build-up says how rolls are laid. */
    private Optional<RollCourses> courses(List<Subject> subjects) {
        if (item.on() != CountedOn.PLANE) {
            return Optional.empty();
        }
        Set<String> planes = subjects.stream().map(Subject::plane).collect(Collectors.toSet());
        return item.packing()
                .flatMap(roll -> roll.laid().map(laid -> new RollCourses(item, roll, laid)))
                .map(courses -> {
                    roof.planes().stream()
                            .map(p -> p.layout().plane())
                            .filter(p -> planes.contains(p.id()))
                            .forEach(p -> courses.lay(p.outline()));
                    return courses;
                });
    }

    /** The quantity goes over the subject's unbroken stretches by their lengths; a multiple of them lies in as many rows. */
    private static long pieces(StockRuns stock, Subject subject, double quantity) {
        double length = subject.runs().stream().mapToDouble(r -> r).sum();
        if (length <= 0) {
            return stock.add(quantity, subject);
        }
        double share = quantity / length;
        long rows = Math.max(1, Math.round(share));
        double each = Math.abs(share - rows) < SAME ? 1 : share;
        return LongStream.range(0, each == 1 ? rows : 1)
                .flatMap(row -> subject.runs().stream().mapToLong(run -> stock.add(run * each, subject)))
                .sum();
    }

    /** What rolls lose to laps, by area, where nothing says how they are laid. */
    private double rollLaps(Taken taken) {
        if (item.packing().filter(p -> p.width() > 0).isEmpty()) {
            return 0;
        }
        Packing roll = item.packing().get();
        double covers = (roll.width() - item.sideLap()) * (roll.length() - item.lap());
        return Thousandths.quantity(taken.net()) * item.unit().inSi() * (roll.holds() / covers - 1);
    }

    private BillLine line(
            String variant,
            Taken taken,
            Order order,
            Optional<StockRuns> stock,
            Optional<StockPlan> plan,
            Optional<String> courses) {
        Optional<Double> mass = amounts.mass(item, roof.drop());
        return new BillLine(
                variant.isEmpty() ? item.id() : item.id() + "/" + variant.split(" ", 2)[0],
                item.id(),
                item.section(),
                item.name(),
                item.zones() == Zoning.TOGETHER ? byZone(taken) : variant,
                item.unit().symbol(),
                Thousandths.quantity(taken.net()),
                order.gross(),
                order.ordered(),
                order.differences(),
                order.count(),
                order.each(),
                stock.isPresent() ? item.packing().map(Packing::length).orElse(0.0) : 0,
                mass.isPresent()
                        ? OptionalDouble.of(Thousandths.quantity(Thousandths.of(mass.get() * order.ordered())))
                        : OptionalDouble.empty(),
                stock.map(s -> s.pieces().pieces()).orElse(List.of()),
                plan,
                method(taken) + courses.map(c -> "; " + c).orElse(""),
                item.about(),
                item.source(),
                taken.parts());
    }

    private String method(Taken taken) {
        String quantity = item.quantity()
                .fixed()
                .map(Quantities::text)
                .orElseGet(() -> item.quantity().expression().map(e -> e.text()).orElse(""));
        String each = "for each " + item.on().label();
        if (item.on() == CountedOn.EDGE) {
            each += " (" + item.edges().stream().sorted().map(EdgeKind::label).collect(Collectors.joining(", ")) + ")";
        }
        boolean lost = item.zones() != Zoning.NONE
                && taken.parts().stream().anyMatch(p -> p.zone().isEmpty());
        String zones = lost ? "; where no edge zones were formed, all as one zone" : "";
        return each + ": " + quantity + zones + stock();
    }

    /** What is assumed of pieces cut from stock. */
    private String stock() {
        if (item.kind() != ItemKind.LENGTH || item.packing().isEmpty()) {
            return "";
        }
        double shortest = item.packing().get().shortest();
        return "; each run of whole stock lengths, lapped, and one closing piece"
                + (shortest > 0 ? " of at least " + Order.millimetres(shortest) : "")
                + ", rests serving other runs (common practice, no source)";
    }
}

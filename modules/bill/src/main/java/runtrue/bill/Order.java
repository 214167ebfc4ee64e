package runtrue.bill;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import runtrue.bill.BillLine.Difference;
import runtrue.rules.Quantity;
import runtrue.rules.buildup.BuildUpItem;
import runtrue.rules.buildup.BuildUpItem.Packing;
import runtrue.rules.buildup.ItemKind;
import runtrue.rules.units.Quantities;

/**
 * From a net quantity to what is ordered, each step with its reason. All in the item's unit.
 *
 * @param count of packs, rolls, stock lengths or pieces; 0 for what is ordered by measure
 */
record Order(double gross, double ordered, List<Difference> differences, long count, String each) {
    private static final double ROUNDING = 1e-9;

    /**
     * What is needed besides the net quantity.
     *
     * @param differences laps and the like, in the order in which they are told
     * @param least packs, rolls or stock lengths that are needed at any rate
     * @param left words for what is left of them; empty for the usual ones
     */
    record Needs(List<Difference> differences, long least, Optional<String> left) {
        static Needs laps(BuildUpItem item, long thousandths) {
            return new Needs(
                    thousandths > 0
                            ? List.of(new Difference(lapReason(item), Thousandths.quantity(thousandths)))
                            : List.of(),
                    0,
                    Optional.empty());
        }

        Needs cutBy(StockPlan plan) {
            return new Needs(differences, plan.count(), Optional.of("left of stock lengths; " + proof(plan)));
        }
    }

    /**
     * The order of what is not cut to length.
     *
     * @param net thousandths
     */
    static Order of(BuildUpItem item, long net, Needs needs) {
        List<Difference> differences = new ArrayList<>(needs.differences());
        long gross = net;
        for (Difference difference : differences) {
            gross += Thousandths.of(difference.quantity());
        }
        if (item.waste().isPresent() && item.waste().get().share() > 0) {
            BuildUpItem.Waste waste = item.waste().get();
            long lost = Thousandths.of(Thousandths.quantity(gross) * waste.share());
            differences.add(new Difference(
                    String.format(Locale.ROOT, "%s, %s", waste.reason(), percent(waste.share())),
                    Thousandths.quantity(lost)));
            gross += lost;
        }
        return rounded(item, gross, differences, needs);
    }

    private static Order rounded(BuildUpItem item, long gross, List<Difference> differences, Needs needs) {
        long leastCount = needs.least();
        double size = size(item);
        double needed = Thousandths.quantity(gross);
        long count = size > 0 ? Math.max(leastCount, (long) Math.ceil(needed / size - ROUNDING)) : 0;
        long ordered = size > 0 ? Thousandths.of(count * size) : gross;
        if (ordered != gross) {
            differences.add(new Difference(
                    needs.left().orElseGet(() -> roundingReason(item)), Thousandths.quantity(ordered - gross)));
        }
        boolean counted = item.packing().isPresent() || item.kind() == ItemKind.PIECE;
        return new Order(needed, Thousandths.quantity(ordered), differences, counted ? count : 0, each(item));
    }

    /** What the order comes in whole numbers of; 0 for any amount. */
    private static double size(BuildUpItem item) {
        double inSi = item.unit().inSi();
        if (item.packing().isPresent()) {
            return item.packing().get().holds() / inSi;
        } else if (item.step().isPresent()) {
            return item.step().get() / inSi;
        }
        return item.kind() == ItemKind.PIECE ? 1 : 0;
    }

    /** {@code box of 250 pcs}, {@code roll of 1.2 m x 15 m}. */
    static String each(BuildUpItem item) {
        if (item.packing().isEmpty()) {
            return item.kind() == ItemKind.PIECE ? "piece" : "";
        }
        Packing packing = item.packing().get();
        if (packing.width() > 0) {
            return packing.word() + " of " + metres(packing.width()) + " x " + metres(packing.length());
        }
        return packing.word() + " of "
                + Quantities.text(new Quantity(packing.holds(), item.unit().symbol()));
    }

    private static String lapReason(BuildUpItem item) {
        if (item.sideLap() > 0) {
            return String.format(
                    Locale.ROOT,
                    "laps of %s at sides, %s at ends",
                    millimetres(item.sideLap()),
                    millimetres(item.lap()));
        }
        return "laps of " + millimetres(item.lap());
    }

    private static String roundingReason(BuildUpItem item) {
        if (item.packing().isPresent()) {
            return "last " + item.packing().get().word() + " is not used up";
        }
        return item.step().isPresent() ? "rounded up to the step in which it is sold" : "whole pieces";
    }

    /** How good a plan is known to be. */
    static String proof(StockPlan plan) {
        if (plan.proved()) {
            return "no plan cuts fewer, by " + plan.bound();
        }
        return String.format(
                Locale.ROOT,
                "cut from %d, at least %d are needed by %s%s",
                plan.count(),
                plan.lowerBound(),
                plan.bound(),
                plan.cutShort() ? "; the search was ended by the clock" : "");
    }

    private static String percent(double share) {
        return Quantities.text(new Quantity(share, "%"));
    }

    private static String metres(double metres) {
        return Quantities.text(new Quantity(metres, "m"));
    }

    static String millimetres(double metres) {
        return Quantities.text(new Quantity(metres, "mm"));
    }
}

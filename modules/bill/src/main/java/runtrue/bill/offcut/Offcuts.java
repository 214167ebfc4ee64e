package runtrue.bill.offcut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;
import runtrue.bill.offcut.MayServe.Way;
import runtrue.roof.PlaneLayout;
import runtrue.roof.Roof;
import runtrue.roof.SetOut;
import runtrue.roof.Sheet;

/**
 * Finds trimmed and tapered sheets that one longer sheet gives two of. All sheets of a roof have the same profile and are laid
 * from the same side, so that a sheet keeps its hand: it is never turned end for end, which would swap its ribs, and a trimmed
 * one keeps the rib by which its neighbour joins it. (Common practice, no source.) Pairs are taken by what they save, greatest
 * first; that need not be the most that all together could save.
 */
public final class Offcuts {
    /** Less is not worth the marking out. */
    private static final double LEAST_SAVED = 0.3;

    private static final double ROUNDING = 1e-6;

    private final double coverWidth;
    private final SetOut setOut;
    private final Optional<Double> longest;
    private final List<Strip> strips = new ArrayList<>();

    private Offcuts(Roof roof, SetOut setOut, Optional<Double> longest) {
        coverWidth = roof.settings().coverWidth();
        this.setOut = setOut;
        this.longest = longest;
    }

    /** Length that a sheet is ordered in. */
    @FunctionalInterface
    public interface Orders {
        double of(PlaneLayout plane, Sheet sheet);
    }

    /**
     * Pairs that save something; each sheet is in one of them at most. Sheets of curved planes are left out.
     *
     * @param longest sheet that can be brought to the site, metres; empty where that is not stated
     */
    public static List<MayServe> of(Roof roof, SetOut setOut, Orders orders, Optional<Double> longest) {
        Offcuts offcuts = new Offcuts(roof, setOut, longest);
        for (PlaneLayout layout : roof.planes()) {
            if (layout.plane().curve().isEmpty()) {
                for (Sheet sheet : layout.sheets()) {
                    if (sheet.trimmed() || sheet.tapered()) {
                        Strip.of(layout.plane(), sheet, orders.of(layout, sheet), offcuts.left(layout, sheet))
                                .ifPresent(offcuts.strips::add);
                    }
                }
            }
        }
        return offcuts.pairs();
    }

    /** A trimmed sheet at the right side of a plane keeps its left rib, one at the left side its right rib. */
    private double left(PlaneLayout layout, Sheet sheet) {
        Envelope box = layout.plane().outline().getEnvelopeInternal();
        boolean atLeftSide = sheet.u().from() - box.getMinX() < ROUNDING;
        return sheet.trimmed() && atLeftSide && setOut != SetOut.LEFT
                ? coverWidth - sheet.u().length()
                : 0;
    }

    private List<MayServe> pairs() {
        List<Pair> all = new ArrayList<>();
        for (int i = 0; i < strips.size(); i++) {
            for (int j = 0; j < strips.size(); j++) {
                if (i != j) {
                    pair(i, j).ifPresent(all::add);
                }
            }
        }
        all.sort(Comparator.comparingLong((Pair p) -> -Math.round(p.serves().saved() * 1000))
                .thenComparingInt(Pair::first)
                .thenComparingInt(Pair::second));
        Set<Integer> used = new HashSet<>();
        List<MayServe> taken = new ArrayList<>();
        for (Pair pair : all) {
            if (!used.contains(pair.first()) && !used.contains(pair.second())) {
                used.add(pair.first());
                used.add(pair.second());
                taken.add(pair.serves());
            }
        }
        return taken;
    }

    private record Pair(int first, int second, MayServe serves) {}

    private Optional<Pair> pair(int i, int j) {
        Strip first = strips.get(i);
        Strip second = strips.get(j);
        boolean beside = !first.sharesWidthWith(second);
        if (beside && i > j) {
            return Optional.empty();
        }
        double length = beside ? Math.max(first.order(), second.order()) : stacked(first, second);
        double saved = first.order() + second.order() - length;
        return saved >= LEAST_SAVED - ROUNDING
                        && longest.map(most -> length <= most + ROUNDING).orElse(true)
                ? Optional.of(new Pair(
                        i,
                        j,
                        new MayServe(
                                first.plane(),
                                first.number(),
                                second.plane(),
                                second.number(),
                                length,
                                saved,
                                beside ? Way.SIDE_BY_SIDE : Way.ONE_ABOVE_THE_OTHER)))
                : Optional.empty();
    }

    /** What reaches past the geometry of either is kept in full. */
    private static double stacked(Strip below, Strip above) {
        double lift = below.liftOf(above);
        double low = Math.min(below.lowest(), above.lowest() + lift);
        double high = Math.max(below.highest(), above.highest() + lift);
        return high - low + below.order() - below.blank() + above.order() - above.blank();
    }
}

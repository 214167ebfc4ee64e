package runtrue.bill;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import runtrue.bill.StockPlan.Cut;
import runtrue.bill.StockPlan.Use;
import runtrue.bill.count.Subject;
import runtrue.cutting.Cutting;
import runtrue.cutting.CuttingPlan;
import runtrue.cutting.Pattern;
import runtrue.cutting.Piece;
import runtrue.cutting.Stock;
import runtrue.rules.buildup.BuildUpItem.Packing;

/** Pieces that are wanted of one kind of stock length, and what for; long before short. */
final class CutList {
    private final Packing stock;
    private final Map<Long, Map<Place, Long>> wanted = new TreeMap<>(Comparator.reverseOrder());

    private record Place(String from, String what) {}

    CutList(Packing stock) {
        this.stock = stock;
    }

    /** @param length of each, millimetres, at most the stock length */
    void add(long length, long count, Subject subject) {
        String from = subject.from().isEmpty() ? "" : subject.from().get(0);
        wanted.computeIfAbsent(Math.max(1, length), l -> new LinkedHashMap<>())
                .merge(new Place(from, subject.name()), count, Long::sum);
    }

    /** Wanted lengths, long before short. */
    List<BillLine.Pieces> pieces() {
        List<BillLine.Pieces> all = new ArrayList<>();
        wanted.forEach((length, places) -> all.add(new BillLine.Pieces(Thousandths.quantity(length), total(places))));
        return all;
    }

    /** Metres. */
    double length() {
        return pieces().stream().mapToDouble(p -> p.length() * p.count()).sum();
    }

    private static long total(Map<Place, Long> places) {
        return places.values().stream().mapToLong(c -> c).sum();
    }

    /** As few stock lengths as can be found; what is left of one run serves another. */
    StockPlan plan() {
        Stock bar = new Stock(millimetres(stock.length()), millimetres(stock.kerf()), 0);
        List<Piece> pieces = new ArrayList<>();
        wanted.forEach(
                (length, places) -> pieces.add(new Piece(Math.toIntExact(length), Math.toIntExact(total(places)))));
        CuttingPlan plan = Cutting.of(bar, pieces);
        Map<Long, Deque<Use>> left = new LinkedHashMap<>();
        wanted.forEach((length, places) -> {
            Deque<Use> uses = new ArrayDeque<>();
            places.forEach((place, count) -> uses.add(new Use(place.from(), place.what(), count)));
            left.put(length, uses);
        });
        return new StockPlan(
                stock.length(),
                stock.kerf(),
                plan.bars(),
                plan.lowerBound(),
                plan.bound().label(),
                plan.cutShort(),
                Thousandths.quantity(plan.patterns().stream()
                        .mapToLong(p -> (long) p.times() * p.rest())
                        .sum()),
                plan.patterns().stream().map(p -> pattern(p, left)).toList());
    }

    private static StockPlan.Pattern pattern(Pattern pattern, Map<Long, Deque<Use>> left) {
        List<Cut> cuts = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            long length = piece.length();
            long count = (long) piece.count() * pattern.times();
            cuts.add(new Cut(
                    Thousandths.quantity(length),
                    piece.count(),
                    take(left.getOrDefault(length, new ArrayDeque<>()), count)));
        }
        return new StockPlan.Pattern(pattern.times(), cuts, Thousandths.quantity(pattern.rest()));
    }

    private static List<Use> take(Deque<Use> left, long count) {
        List<Use> taken = new ArrayList<>();
        long open = count;
        while (open > 0) {
            Use use = left.removeFirst();
            long some = Math.min(open, use.count());
            taken.add(new Use(use.from(), use.what(), some));
            open -= some;
            if (use.count() > some) {
                left.addFirst(new Use(use.from(), use.what(), use.count() - some));
            }
        }
        return taken;
    }

    private static int millimetres(double metres) {
        return Math.toIntExact(Thousandths.of(metres));
    }
}

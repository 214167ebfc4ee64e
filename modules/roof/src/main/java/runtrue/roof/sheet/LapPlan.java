package runtrue.roof.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import runtrue.roof.Interval;
import runtrue.roof.SupportLine;

/**
 * Where a sheet that is too long for one length could be lapped: on support lines, in as few pieces as may be and as equal
 * as the lines allow. An end lap must lie on a support, or it opens under foot (common practice, no source).
 *
 * @param lines numbers of the lines that carry a lap, from the eave up
 * @param pieces lengths from the eave up, metres, each but the uppermost with its lap
 */
public record LapPlan(List<Integer> lines, List<Double> pieces) {
    public LapPlan {
        lines = List.copyOf(lines);
        pieces = List.copyOf(pieces);
    }

    /**
     * The plan, or empty when the supports leave no place for it.
     *
     * @param sheet from end to end along the fall, what reaches into the gutter included, metres
     * @param supports of the plane, from the eave up
     * @param most longest piece, metres
     * @param lap length that the pieces overlap by, metres
     */
    public static Optional<LapPlan> of(Interval sheet, List<SupportLine> supports, double most, double lap) {
        List<SupportLine> under = supports.stream()
                .filter(l -> l.v() > sheet.from() && l.v() < sheet.to())
                .toList();
        for (int pieces = 2; pieces <= under.size() + 1; pieces++) {
            Optional<LapPlan> plan = inPieces(sheet, under, most, lap, pieces);
            if (plan.isPresent()) {
                return plan;
            }
        }
        return Optional.empty();
    }

    private static Optional<LapPlan> inPieces(
            Interval sheet, List<SupportLine> under, double most, double lap, int pieces) {
        List<Integer> lines = new ArrayList<>();
        List<Double> lengths = new ArrayList<>();
        double start = sheet.from();
        for (int left = pieces; left > 1; left--) {
            double wanted = (sheet.to() - start) / left;
            double from = start;
            Optional<SupportLine> line = under.stream()
                    .filter(l -> l.v() > from && l.v() - from + lap <= most)
                    .min((a, b) -> Double.compare(Math.abs(a.v() - from - wanted), Math.abs(b.v() - from - wanted)));
            if (line.isEmpty()) {
                return Optional.empty();
            }
            lines.add(line.get().number());
            lengths.add(line.get().v() - start + lap);
            start = line.get().v();
        }
        lengths.add(sheet.to() - start);
        return lengths.get(lengths.size() - 1) <= most ? Optional.of(new LapPlan(lines, lengths)) : Optional.empty();
    }
}

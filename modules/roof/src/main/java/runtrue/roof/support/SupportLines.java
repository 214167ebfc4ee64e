package runtrue.roof.support;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import runtrue.roof.Interval;
import runtrue.roof.RoofTolerance;
import runtrue.roof.SupportLine;
import runtrue.roof.SupportPiece;

/** Chains supports of neighbouring bays to lines across the plane. */
final class SupportLines {
    /** Members lapped or sleeved at a frame stand a flange's width apart; purlins of one line never more. */
    private static final double SAME_LINE = RoofTolerance.SAME_LINE.si();

    private SupportLines() {}

    /** Lines from the eave up, numbered from 1. */
    static List<SupportLine> chained(List<Candidate> supports, String plane, double joint) {
        List<List<Candidate>> chains = new ArrayList<>();
        List<Candidate> byPosition = new ArrayList<>(supports);
        byPosition.sort(Comparator.comparingDouble((Candidate c) -> c.v((c.uFrom() + c.uTo()) / 2))
                .thenComparingDouble(Candidate::uFrom)
                .thenComparing(c -> c.member().element().element().globalId()));
        for (Candidate support : byPosition) {
            List<Candidate> merged = new ArrayList<>(List.of(support));
            chains.removeIf(chain -> {
                boolean same = chain.stream().anyMatch(c -> isSameLine(c, support));
                if (same) {
                    merged.addAll(chain);
                }
                return same;
            });
            chains.add(merged);
        }
        chains.sort(Comparator.comparingDouble(SupportLines::position));
        List<SupportLine> lines = new ArrayList<>();
        for (List<Candidate> chain : chains) {
            int number = lines.size() + 1;
            lines.add(line(chain, plane + "/L" + number, number, joint));
        }
        return lines;
    }

    /** Whether one carries on where the other ends: compared half-way between their near ends. */
    private static boolean isSameLine(Candidate a, Candidate b) {
        double u = a.uTo() <= b.uFrom()
                ? (a.uTo() + b.uFrom()) / 2
                : (Math.max(a.uFrom(), b.uFrom()) + Math.min(a.uTo(), b.uTo())) / 2;
        if (b.uTo() <= a.uFrom()) {
            u = (b.uTo() + a.uFrom()) / 2;
        }
        return Math.abs(a.v(u) - b.v(u)) <= SAME_LINE;
    }

    private static double position(List<Candidate> chain) {
        double sum = 0;
        double length = 0;
        for (Candidate c : chain) {
            sum += c.v((c.uFrom() + c.uTo()) / 2) * (c.uTo() - c.uFrom());
            length += c.uTo() - c.uFrom();
        }
        return sum / length;
    }

    private static SupportLine line(List<Candidate> chain, String id, int number, double joint) {
        List<SupportPiece> pieces = chain.stream()
                .map(SupportLines::piece)
                .sorted(Comparator.comparingDouble(SupportPiece::uFrom)
                        .thenComparingDouble(SupportPiece::uTo)
                        .thenComparing(p -> p.element().globalId()))
                .toList();
        return new SupportLine(id, number, position(chain), pieces, extents(pieces, joint));
    }

    private static SupportPiece piece(Candidate c) {
        return new SupportPiece(
                c.member().element().element(),
                c.evidence(),
                c.uFrom(),
                c.v(c.uFrom()),
                c.uTo(),
                c.v(c.uTo()),
                c.contactFrom(),
                c.contactTo(),
                c.flange().width(),
                c.depth(),
                c.flange().thickness());
    }

    private static List<Interval> extents(List<SupportPiece> pieces, double joint) {
        List<Interval> extents = new ArrayList<>();
        for (SupportPiece piece : pieces) {
            Interval last = extents.isEmpty() ? null : extents.get(extents.size() - 1);
            if (last != null && piece.uFrom() - last.to() <= joint) {
                extents.set(extents.size() - 1, new Interval(last.from(), Math.max(last.to(), piece.uTo())));
            } else {
                extents.add(new Interval(piece.uFrom(), piece.uTo()));
            }
        }
        return extents;
    }
}

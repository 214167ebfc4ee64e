package runtrue.cutting;

import java.util.List;

/**
 * Bars that are cut alike.
 *
 * @param pieces of one bar, long before short
 * @param times number of bars
 * @param rest of each bar, millimetres, behind the last cut
 */
public record Pattern(List<Piece> pieces, int times, int rest) {
    public Pattern {
        pieces = List.copyOf(pieces);
    }
}

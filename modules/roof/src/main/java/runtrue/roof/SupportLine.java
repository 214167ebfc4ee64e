package runtrue.roof;

import java.util.List;

/**
 * Supports in one line across bays.
 *
 * @param id stable, for example {@code P-3f2a/L4}
 * @param number from the eave, starting with 1
 * @param v mean position along the fall, metres
 * @param pieces by u
 * @param extents covered stretches of u, joints bridged, metres, as pairs of from and to
 */
public record SupportLine(String id, int number, double v, List<SupportPiece> pieces, List<Interval> extents) {
    public SupportLine {
        pieces = List.copyOf(pieces);
        extents = List.copyOf(extents);
    }
}

package runtrue.bill.count;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import runtrue.roof.Interval;
import runtrue.roof.SetOut;
import runtrue.roof.sheet.SheetLayout;

/** Positions of the ribs across the fall. */
final class RibLines {
    private static final double MILLIMETRE = 1e-3;

    private RibLines() {}

    /**
     * From the least u to the greatest: one at either edge of the plane, and one at every spacing from the set-out edge
     * of the first full sheet.
     *
     * @param extent of the plane in u, v, metres
     * @param spacing of the ribs that take a clip, metres
     */
    static List<Double> of(Envelope extent, double coverWidth, double spacing, SetOut setOut) {
        double from = extent.getMinX();
        double to = extent.getMaxX();
        double start = start(SheetLayout.strips(extent, coverWidth, setOut), extent, coverWidth, setOut);
        List<Double> ribs = new ArrayList<>();
        ribs.add(from);
        long first = (long) Math.ceil((from + MILLIMETRE - start) / spacing);
        for (long i = first; start + i * spacing < to - MILLIMETRE; i++) {
            ribs.add(start + i * spacing);
        }
        ribs.add(to);
        return ribs;
    }

    private static double start(List<Interval> strips, Envelope extent, double coverWidth, SetOut setOut) {
        if (setOut == SetOut.RIGHT) {
            return extent.getMaxX();
        }
        return strips.stream()
                .filter(strip -> strip.length() > coverWidth - MILLIMETRE)
                .map(Interval::from)
                .findFirst()
                .orElse(extent.getMinX());
    }
}

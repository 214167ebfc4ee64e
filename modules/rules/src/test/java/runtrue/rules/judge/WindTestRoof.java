package runtrue.rules.judge;

import java.util.ArrayList;
import java.util.List;
import runtrue.roof.Interval;
import runtrue.roof.PlaneLayout;
import runtrue.roof.Roof;
import runtrue.roof.Stretch;
import runtrue.roof.SupportLine;

/** The roof of {@link TestRoofs} with evenly spaced supports, and how its sheets lie on them. */
final class WindTestRoof {
    private WindTestRoof() {}

    /** Every support carries the same length of sheet, but for those at the ends. */
    static Roof gentle(double tributary) {
        return falling(5, tributary);
    }

    /** The same at another pitch, degrees. */
    static Roof falling(double degrees, double tributary) {
        List<Double> lines = new ArrayList<>();
        for (double v = tributary / 2; v < 6; v += tributary) {
            lines.add(v);
        }
        Roof roof = TestRoofs.gentle()
                .pitched(degrees)
                .supportedAt(lines.toArray(new Double[0]))
                .roof();
        PlaneLayout l = roof.planes().get(0);
        List<Stretch.Crossing> crossings =
                l.supports().stream().map(WindTestRoof::crossing).toList();
        Stretch stretch = new Stretch(new Interval(0, 10), new Stretch.Ends(0, 0), new Stretch.Ends(6, 6), crossings);
        PlaneLayout laidOut = new PlaneLayout(
                l.plane(), l.sheets(), l.supports(), List.of(stretch), l.spans(), l.bearing(), l.remarks());
        return new Roof(List.of(laidOut), roof.edges(), roof.bodies(), roof.unplaced(), roof.settings());
    }

    private static Stretch.Crossing crossing(SupportLine line) {
        return new Stretch.Crossing(line.id(), new Stretch.Ends(line.v(), line.v()));
    }
}

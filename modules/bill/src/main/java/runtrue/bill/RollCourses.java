package runtrue.bill;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import runtrue.bill.BillLine.Difference;
import runtrue.rules.buildup.BuildUpItem;
import runtrue.rules.buildup.BuildUpItem.Packing;
import runtrue.rules.buildup.RollRun;

/**
 * Rolls laid in courses over whole planes: each course in the roll's full width, the next one lapped onto it, from one side of
 * the plane to the other and over openings, which are cut out when these are built. What is left of a roll begins the next
 * course; each roll after the first costs one end lap. (Common practice, no source.)
 */
final class RollCourses {
    private static final double ROUNDING = 1e-9;

    private final BuildUpItem item;
    private final Packing roll;
    private final RollRun laid;
    private long courses;
    private double length;
    private double lapped;

    RollCourses(BuildUpItem item, Packing roll, RollRun laid) {
        this.item = item;
        this.roll = roll;
        this.laid = laid;
    }

    /** Lays one plane, outline in u and v, metres. */
    void lay(Polygon outline) {
        Geometry whole =
                outline.getFactory().createPolygon(outline.getExteriorRing().getCoordinateSequence());
        Envelope box = outline.getEnvelopeInternal();
        double across = laid == RollRun.ACROSS ? box.getHeight() : box.getWidth();
        double step = roll.width() - item.sideLap();
        long count = Math.max(1, (long) Math.ceil((across - item.sideLap()) / step - ROUNDING));
        double before = 0;
        for (int i = 0; i < count; i++) {
            double course = course(whole, box, i * step);
            lapped += i > 0 ? Math.min(before, course) * item.sideLap() : 0;
            length += course;
            before = course;
        }
        courses += count;
    }

    /** Length of one course, each unbroken stretch from its first to its last point. */
    private double course(Geometry whole, Envelope box, double from) {
        Envelope band = laid == RollRun.ACROSS
                ? new Envelope(box.getMinX(), box.getMaxX(), box.getMinY() + from, box.getMinY() + from + roll.width())
                : new Envelope(box.getMinX() + from, box.getMinX() + from + roll.width(), box.getMinY(), box.getMaxY());
        Geometry under = whole.getFactory().toGeometry(band).intersection(whole);
        double total = 0;
        for (int i = 0; i < under.getNumGeometries(); i++) {
            Envelope part = under.getGeometryN(i).getEnvelopeInternal();
            total += laid == RollRun.ACROSS ? part.getWidth() : part.getHeight();
        }
        return total;
    }

    long rolls() {
        return (long) Math.ceil((length - item.lap()) / (roll.length() - item.lap()) - ROUNDING);
    }

    /** Why more is laid than the net quantity, thousandths, in the item's unit. */
    List<Difference> differences(long net) {
        double inSi = item.unit().inSi();
        long all = Thousandths.of(length * roll.width() / inSi);
        long sides = Thousandths.of(lapped / inSi);
        long ends = Thousandths.of(Math.max(0, rolls() - 1) * item.lap() * roll.width() / inSi);
        List<Difference> differences = new ArrayList<>();
        add(differences, "courses in the roll's full width, over openings too", all - sides - net);
        add(differences, "laps of " + Order.millimetres(item.sideLap()) + " at sides", sides);
        add(differences, "laps of " + Order.millimetres(item.lap()) + " at ends, one a roll", ends);
        return differences;
    }

    private static void add(List<Difference> differences, String reason, long quantity) {
        if (quantity != 0) {
            differences.add(new Difference(reason, Thousandths.quantity(quantity)));
        }
    }

    /** {@code 36 courses along the fall, 931.174 m of roll}. */
    String method() {
        return String.format(
                Locale.ROOT,
                "%d courses %s the fall, %.3f m of roll",
                courses,
                laid == RollRun.ACROSS ? "across" : "along",
                length);
    }
}

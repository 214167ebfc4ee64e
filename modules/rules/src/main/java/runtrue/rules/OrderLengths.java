package runtrue.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import runtrue.roof.EdgeKind;
import runtrue.roof.Interval;
import runtrue.roof.PlaneLayout;
import runtrue.roof.RoofEdge;
import runtrue.roof.RoofPlane;
import runtrue.roof.Sheet;

/**
 * Lengths that the sheets of a plane are ordered in: the square-cut strip that a sheet is cut from, with what reaches past
 * the eave into the gutter, less what stops short of the ridge, rounded up to the step in which sheets are cut. What the
 * system does not state is nothing.
 */
public final class OrderLengths {
    private static final double MILLIMETRE = 1e-3;
    private static final Set<EdgeKind> LOW = Set.of(EdgeKind.EAVE, EdgeKind.BOX_GUTTER);
    private static final Set<EdgeKind> HIGH = Set.of(EdgeKind.RIDGE, EdgeKind.HEAD, EdgeKind.ABUTMENT, EdgeKind.STEP);

    private final List<End> eaves = new ArrayList<>();
    private final List<End> heads = new ArrayList<>();
    private final double overhang;
    private final double setBack;
    private final Optional<Double> step;
    private final boolean curved;

    /** An edge in the plane's u, v. */
    private record End(double uFrom, double vFrom, double uTo, double vTo) {
        static End of(RoofEdge edge, RoofPlane plane) {
            double a = plane.u(edge.from());
            double b = plane.u(edge.to());
            double va = plane.v(edge.from());
            double vb = plane.v(edge.to());
            return a <= b ? new End(a, va, b, vb) : new End(b, vb, a, va);
        }

        /** Whether a sheet ends on it at this v. */
        boolean ends(Sheet sheet, double v) {
            double from = Math.max(uFrom, sheet.u().from());
            double to = Math.min(uTo, sheet.u().to());
            return to - from > MILLIMETRE && (Math.abs(at(from) - v) < MILLIMETRE || Math.abs(at(to) - v) < MILLIMETRE);
        }

        private double at(double u) {
            return vFrom + (vTo - vFrom) * (u - uFrom) / (uTo - uFrom);
        }
    }

    /**
     * For one plane.
     *
     * @param edges of the roof, of which those of the plane are looked at
     */
    public OrderLengths(PlaneLayout layout, List<RoofEdge> edges, RoofSystem system) {
        overhang = system.si("gutter_overhang").orElse(0.0);
        setBack = system.si("ridge_set_back").orElse(0.0);
        step = system.si("cutting_step");
        curved = layout.plane().curve().isPresent();
        for (RoofEdge edge : edges) {
            if (edge.planes().contains(layout.plane().id())) {
                End end = End.of(edge, layout.plane());
                if (LOW.contains(edge.kind())) {
                    eaves.add(end);
                } else if (HIGH.contains(edge.kind())) {
                    heads.add(end);
                }
            }
        }
    }

    /** From end to end along the fall as the sheet lies, metres: into the gutter, and short of the ridge. */
    public Interval extent(Sheet sheet) {
        double from = sheet.v().from();
        double to = sheet.v().to();
        if (ends(eaves, sheet, from)) {
            from -= overhang;
        }
        if (ends(heads, sheet, to)) {
            to -= setBack;
        } else if (curved && ends(eaves, sheet, to)) {
            // Over a barrel a sheet runs from one eave to the other.
            to += overhang;
        }
        return new Interval(from, to);
    }

    /** Metres, to the millimetre or to the cutting step. */
    public double of(Sheet sheet) {
        double millimetres = Math.round(extent(sheet).length() * 1000);
        double steps = step.map(s -> s * 1000).orElse(1.0);
        // A length that is a whole number of steps but for rounding needs no further one.
        return Math.ceil(millimetres / steps - 1e-6) * steps / 1000;
    }

    private static boolean ends(List<End> edges, Sheet sheet, double v) {
        return edges.stream().anyMatch(e -> e.ends(sheet, v));
    }

    /** For people: what was added and taken off. */
    public String method() {
        StringBuilder text = new StringBuilder("square-cut strip that each sheet is cut from");
        if (overhang > 0) {
            text.append(String.format(Locale.ROOT, ", %.0f mm into the gutter", overhang * 1000));
        }
        if (setBack > 0) {
            text.append(String.format(Locale.ROOT, ", %.0f mm short of the ridge", setBack * 1000));
        }
        text.append(step.map(s -> String.format(Locale.ROOT, ", rounded up to %.0f mm", s * 1000))
                .orElse(", to the millimetre"));
        return text.toString();
    }
}

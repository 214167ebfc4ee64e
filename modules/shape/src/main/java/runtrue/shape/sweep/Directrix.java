package runtrue.shape.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.Chain;
import runtrue.shape.curve.Conic;
import runtrue.shape.curve.CurveReader;
import runtrue.shape.curve.Fineness;
import runtrue.shape.curve.Piece;
import runtrue.step.StepValue;

/**
 * The part of a curve that a profile is swept along, from StartParam to EndParam. These are parameters of the curve, but
 * files are known to count from 0 to 1 or in lengths instead, whatever the curve; both are understood.
 */
final class Directrix {
    private static final double SAME = 1e-6;

    /** Lengths that files state for a whole curve agree with it within a thousandth: exporters measure chords. */
    private static final double SAME_LENGTH = 1e-3;

    private final IfcEntity item;
    private final Fineness fineness;
    private final Consumer<String> remarks;
    private final Chain chain;

    Directrix(IfcEntity item, Fineness fineness, Consumer<String> remarks) {
        this.item = item;
        this.fineness = fineness;
        this.remarks = remarks;
        this.chain = read();
    }

    Chain chain() {
        return chain;
    }

    private Chain read() {
        IfcEntity curve = item.ref("Directrix");
        CurveReader curves = new CurveReader(fineness);
        OptionalDouble start = parameter("StartParam");
        OptionalDouble end = parameter("EndParam");
        if (curve.isA("IfcLine")) {
            if (start.isEmpty() || end.isEmpty()) {
                throw new ShapeException("The directrix of " + item.label() + " is a line without end.");
            }
            return curves.partOfLine(curve, start.getAsDouble(), end.getAsDouble());
        }
        Chain whole = curves.read(curve);
        if (isLength("StartParam") || isLength("EndParam")) {
            return ways(whole).part(start.orElse(0), end.orElse(Double.MAX_VALUE));
        }
        double first = CurveReader.firstParameter(curve);
        double from = start.isPresent() ? start.getAsDouble() - first : 0;
        double to = end.isPresent() ? end.getAsDouble() - first : whole.span();
        return part(whole, from, to);
    }

    private Chain part(Chain whole, double from, double to) {
        double span = whole.span();
        boolean fromStart = Math.abs(from) <= SAME * span;
        if (fromStart && Math.abs(to - span) <= SAME * span) {
            return whole;
        }
        if (fromStart && to == 1 && span > 1) {
            remarks.accept(
                    "The directrix of " + item.label() + " is stated from 0 to 1, which was taken for the whole of it");
            return whole;
        }
        if (from >= -SAME * span && to > from && to <= span * (1 + SAME)) {
            return whole.part(from, to);
        }
        if (whole.pieces().size() == 1 && whole.pieces().get(0).curve() instanceof Conic && to != from) {
            return onCircle(whole.pieces().get(0), from, to);
        }
        double length = ways(whole).span();
        if (!fromStart || Math.abs(to - length) > SAME_LENGTH * length) {
            remarks.accept(String.format(
                    Locale.ROOT,
                    "The directrix of %s has no part from %s to %s, and was taken whole",
                    item.label(),
                    from,
                    to));
        }
        return whole;
    }

    /** Over the parameter's beginning, where the curve is closed. */
    private static Chain onCircle(Piece circle, double from, double to) {
        double unit = circle.end() / circle.span();
        double sweep = Math.min(to > from ? to - from : to - from + circle.span(), circle.span());
        return Chain.of(new Piece(circle.curve(), from * unit, (from + sweep) * unit, sweep));
    }

    /** The same chain with its parameter counting lengths. */
    private Chain ways(Chain whole) {
        return whole.byLength(fineness);
    }

    private OptionalDouble parameter(String attribute) {
        return item.optionalReal(attribute);
    }

    private boolean isLength(String attribute) {
        return item.value(attribute) instanceof StepValue.Typed typed
                && typed.keyword().toUpperCase(Locale.ROOT).endsWith("LENGTHMEASURE");
    }

    /** The chain with the corners between its straight lengths rounded by arcs of a radius; itself for radius 0. */
    Chain filleted(double radius) {
        if (!(radius > 0)) {
            return chain;
        }
        List<Vector3D> places = chain.points(fineness);
        List<Piece> pieces = new ArrayList<>();
        Vector3D last = places.get(0);
        for (int i = 1; i + 1 < places.size(); i++) {
            Vector3D corner = places.get(i);
            Vector3D in = corner.subtract(places.get(i - 1));
            Vector3D out = places.get(i + 1).subtract(corner);
            double turn = in.angle(out);
            double cut = radius * Math.tan(0.5 * turn);
            if (!(cut <= Math.min(in.norm(), out.norm()) * (1 + SAME))) {
                throw new ShapeException("The fillets of " + item.label() + " are longer than its straight lengths.");
            }
            if (turn < 1e-9) {
                continue;
            }
            Vector3D from = corner.subtract(in.normalize().multiply(cut));
            Vector3D across = out.normalize()
                    .subtract(in.normalize().multiply(Math.cos(turn)))
                    .normalize();
            Vector3D centre = from.add(across.multiply(radius));
            Conic arc =
                    new Conic(centre, across.multiply(-radius), in.normalize().multiply(radius));
            pieces.add(Piece.straight(last, from, 1));
            pieces.add(new Piece(arc, 0, turn, 1));
            last = arc.at(turn);
        }
        pieces.add(Piece.straight(last, places.get(places.size() - 1), 1));
        return new Chain(pieces);
    }
}

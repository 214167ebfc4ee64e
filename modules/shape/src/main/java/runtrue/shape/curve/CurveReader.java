package runtrue.shape.curve;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.alignment.CurveSegments;
import runtrue.shape.curve.alignment.GradientCurve;

/** Curves of every bounded kind: start with {@link #read}. Coordinates in a plane are lifted to z = 0. */
public final class CurveReader {
    private static final int DEEPEST = 50;

    /** Curves within curves; composite curves that name the same ones again and again would take for ever. */
    private static final int MOST_CURVES = 200_000;

    /** Pieces of one curve; segments that name one long curve again and again make them by the hundred million. */
    private static final int MOST_PIECES = 500_000;

    private final Fineness fineness;
    private int curves;

    /**
     * @param fineness what is one point; offset curves are also cut into chords while they are read
     */
    public CurveReader(Fineness fineness) {
        this.fineness = fineness;
    }

    /**
     * A bounded or closed curve with all its pieces, in its own axes and file units.
     *
     * @throws ShapeException when it is endless or empty, or its kind is not read
     */
    public Chain read(IfcEntity curve) {
        curves = 0;
        Chain chain = read(curve, 0);
        if (chain.pieces().isEmpty()) {
            throw new ShapeException("The curve " + curve.label() + " has no points.");
        }
        return chain;
    }

    /**
     * The part of a curve between two places on it, as an edge uses it.
     *
     * @param sameSense whether the part runs with the curve; matters where it is closed. Places that coincide mean the
     *     whole of a closed curve
     */
    public Chain between(IfcEntity curve, Vector3D from, Vector3D to, boolean sameSense) {
        if (curve.isA("IfcLine")) {
            return Chain.of(Piece.straight(from, to, 1));
        }
        if (curve.isA("IfcConic")) {
            Conic conic = conic(curve);
            double start = conic.nearest(from);
            double sweep = from.distance(to) <= fineness.point()
                    ? (sameSense ? Conic.TURN : -Conic.TURN)
                    : Arcs.sweep(start, conic.nearest(to), sameSense);
            return Chain.of(new Piece(conic, start, start + sweep, Math.abs(sweep)));
        }
        Chain whole = sameSense ? read(curve) : read(curve).reversed();
        boolean closed = whole.closed(fineness.point());
        boolean turn = from.distance(to) <= fineness.point();
        double start = whole.nearest(from);
        double end = whole.nearest(to);
        if (closed && turn && Math.min(start, whole.span() - start) < 1e-9 * whole.span()) {
            return whole;
        }
        if (closed && (turn || end <= start)) {
            List<Piece> pieces = new ArrayList<>(whole.part(start, whole.span()).pieces());
            pieces.addAll(whole.part(0, end).pieces());
            return new Chain(pieces);
        }
        return start <= end ? whole.part(start, end) : whole.part(end, start).reversed();
    }

    /** The part of an endless line between two of its parameters. */
    public Chain partOfLine(IfcEntity line, double from, double to) {
        return Chain.of(new Piece(line(line), from, to, Math.abs(to - from)));
    }

    /** What the file calls the parameter at the beginning of a curve, where a chain has 0. */
    public static double firstParameter(IfcEntity curve) {
        return curve.isA("IfcBSplineCurve") ? BSplines.read(curve).start() : 0;
    }

    private Chain read(IfcEntity curve, int depth) {
        curves++;
        if (depth > DEEPEST || curves > MOST_CURVES) {
            throw new ShapeException("The curve " + curve.label() + " refers to itself, or to too many others.");
        }
        return switch (curve.type()) {
            case "IfcPolyline" -> Chain.polyline(Places.of(curve.refs("Points")));
            case "IfcIndexedPolyCurve" -> new IndexedCurve(curve).chain();
            case "IfcCompositeCurve",
                    "Ifc2DCompositeCurve",
                    "IfcCompositeCurveOnSurface",
                    "IfcBoundaryCurve",
                    "IfcOuterBoundaryCurve" -> composite(curve, depth);
            case "IfcGradientCurve" ->
                GradientCurve.of(
                        read(curve.ref("BaseCurve"), depth + 1).byLength(fineness),
                        composite(curve, depth),
                        curve.label());
            case "IfcTrimmedCurve" -> trimmed(curve, depth);
            case "IfcCircle", "IfcEllipse" -> {
                double turn = Conic.TURN;
                yield Chain.of(new Piece(
                        conic(curve), 0, turn, turn / curve.model().units().planeAngle()));
            }
            case "IfcBSplineCurveWithKnots",
                    "IfcRationalBSplineCurveWithKnots",
                    "IfcBezierCurve",
                    "IfcRationalBezierCurve" -> BSplines.chain(curve);
            case "IfcOffsetCurve2D", "IfcOffsetCurve3D" ->
                Offsets.of(curve, read(curve.ref("BasisCurve"), depth + 1), fineness);
            case "IfcSurfaceCurve", "IfcIntersectionCurve", "IfcSeamCurve" -> read(curve.ref("Curve3D"), depth + 1);
            case "IfcPcurve" -> onPlane(curve, depth);
            case "IfcLine" -> throw new ShapeException("The line " + curve.label() + " has no end; export it trimmed.");
            default -> throw notRead(curve);
        };
    }

    private static ShapeException notRead(IfcEntity curve) {
        boolean alignment = curve.isA("IfcSegmentedReferenceCurve")
                || curve.isA("IfcSpiral")
                || curve.isA("IfcPolynomialCurve")
                || curve.isA("IfcOffsetCurveByDistances");
        return new ShapeException(
                (alignment ? "Alignment curves of type " : "Curves of type ") + curve.type() + " are not read ("
                        + curve.label() + "); export the element with lines and arcs, or as a faceted body.");
    }

    private Chain trimmed(IfcEntity curve, int depth) {
        IfcEntity basis = curve.ref("BasisCurve");
        Trims trims = new Trims(curve, fineness.point());
        if (basis.isA("IfcLine")) {
            return trims.of(line(basis));
        }
        return basis.isA("IfcConic") ? trims.of(conic(basis)) : trims.of(read(basis, depth + 1));
    }

    /** A line without end, its parameter in units of its vector. */
    public static Line line(IfcEntity line) {
        IfcEntity vector = line.ref("Dir");
        Vector3D direction = Places.direction(vector.ref("Orientation"));
        return new Line(Places.of(line.ref("Pnt")), direction.multiply(vector.real("Magnitude")));
    }

    /** The whole of a circle or an ellipse. */
    public static Conic conic(IfcEntity curve) {
        if (!curve.type().equals("IfcCircle") && !curve.type().equals("IfcEllipse")) {
            throw notRead(curve);
        }
        boolean circle = curve.type().equals("IfcCircle");
        double first = curve.real(circle ? "Radius" : "SemiAxis1");
        double second = circle ? first : curve.real("SemiAxis2");
        if (!(first > 0 && second > 0)) {
            throw new ShapeException("The radius of " + curve.label() + " is not positive.");
        }
        AffineTransformMatrix3D placement = curve.model().transform(curve.ref("Position"));
        return new Conic(
                placement.apply(Vector3D.ZERO),
                placement.applyVector(Vector3D.of(first, 0, 0)),
                placement.applyVector(Vector3D.of(0, second, 0)));
    }

    private Chain onPlane(IfcEntity curve, int depth) {
        IfcEntity surface = curve.ref("BasisSurface");
        if (!surface.isA("IfcPlane")) {
            throw new ShapeException("Curves on surfaces of type " + surface.type() + " are not read (" + curve.label()
                    + "); export the curve in space, or the element as a faceted body.");
        }
        AffineTransformMatrix3D plane = surface.model().transform(surface.ref("Position"));
        return read(curve.ref("ReferenceCurve"), depth + 1).moved(plane);
    }

    /** Segments end to start; one whose sense contradicts its neighbours is turned round. */
    private Chain composite(IfcEntity curve, int depth) {
        List<Chain> chains = new ArrayList<>();
        int pieces = 0;
        for (IfcEntity segment : curve.refs("Segments")) {
            Chain chain = segment(segment, depth);
            pieces += chain.pieces().size();
            if (pieces > MOST_PIECES) {
                throw new ShapeException("The curve " + curve.label() + " has more than " + MOST_PIECES
                        + " pieces; export the element with fewer, or as a faceted body.");
            }
            if (chain.pieces().isEmpty()) {
                continue;
            }
            if (!chains.isEmpty()) {
                join(chains, chain);
            } else {
                chains.add(chain);
            }
        }
        return new Chain(chains.stream().flatMap(c -> c.pieces().stream()).toList());
    }

    private Chain segment(IfcEntity segment, int depth) {
        if (segment.isA("IfcCurveSegment")) {
            return new CurveSegments(parent -> read(parent, depth + 1), fineness).of(segment);
        }
        Chain chain = read(segment.ref("ParentCurve"), depth + 1);
        if (segment.has("ParamLength") && chain.span() > 0) {
            chain = chain.stretched(segment.real("ParamLength"));
        }
        return segment.enumeration("SameSense").equals("F") ? chain.reversed() : chain;
    }

    private void join(List<Chain> chains, Chain next) {
        int last = chains.size() - 1;
        Vector3D end = chains.get(last).to();
        if (meets(end, next.from())) {
            chains.add(next);
        } else if (meets(end, next.to())) {
            chains.add(next.reversed());
        } else if (last == 0
                && (meets(chains.get(0).from(), next.from())
                        || meets(chains.get(0).from(), next.to()))) {
            chains.set(0, chains.get(0).reversed());
            join(chains, next);
        } else {
            chains.add(next);
        }
    }

    /** Segments are rounded each by itself: they meet within a hundred points' tolerances. */
    private boolean meets(Vector3D a, Vector3D b) {
        return a.distance(b) <= 100 * fineness.point();
    }
}

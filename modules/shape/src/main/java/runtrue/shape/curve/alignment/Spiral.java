package runtrue.shape.curve.alignment;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.Curve;
import runtrue.shape.curve.Fineness;

/**
 * A curve in the xy plane whose curvature is a polynomial of its length: it starts at the origin along x, its parameter is
 * the length. Of such kind are the clothoid, whose curvature is A s / |A|^3, and the polynomial spirals of IFC4X3 with the
 * terms A_i / |A_i|^(i + 2) s^i (ISO 16739-1:2024, IfcClothoid, IfcThirdOrderPolynomialSpiral and its like).
 *
 * @param curvature factors of s^0, s^1 and so on
 * @param from least length along it that is meant, for the search of the nearest point
 * @param to greatest length along it that is meant
 */
record Spiral(List<Double> curvature, double from, double to) implements Curve {
    /** Nodes and weights of Gauss and Legendre on -1 to 1 with five points: exact to the ninth degree. */
    private static final double[] NODES = {
        -0.906179845938664, -0.538469310105683, 0, 0.538469310105683, 0.906179845938664
    };

    private static final double[] WEIGHTS = {
        0.236926885056189, 0.478628670499366, 0.568888888888889, 0.478628670499366, 0.236926885056189
    };

    /** Over a panel that turns by no more than this the quadrature leaves less than 1e-12 of its length. */
    private static final double PANEL = 0.2;

    /** A spiral that turns more often than a hundred times is a mistake. */
    private static final double MOST_TURN = 200 * Math.PI;

    private static final int SAMPLES = 200;

    Spiral {
        curvature = List.copyOf(curvature);
        if (!(turned(curvature, Math.max(Math.abs(from), Math.abs(to))) < MOST_TURN)) {
            throw new ShapeException("a spiral turns more than a hundred times");
        }
    }

    /** The curve with the terms that an entity states. */
    static Spiral of(IfcEntity entity, double from, double to) {
        List<Double> factors = new ArrayList<>();
        for (String term : terms(entity)) {
            int power = factors.size();
            OptionalDouble a = entity.optionalReal(term);
            factors.add(
                    a.isEmpty() || a.getAsDouble() == 0
                            ? 0
                            : a.getAsDouble() / Math.pow(Math.abs(a.getAsDouble()), power + 2));
        }
        return new Spiral(factors, from, to);
    }

    /** Attributes of the terms in rising order; a clothoid has no constant one. */
    private static List<String> terms(IfcEntity entity) {
        if (entity.isA("IfcClothoid")) {
            return List.of("", "ClothoidConstant");
        }
        return List.of(
                "ConstantTerm",
                "LinearTerm",
                "QuadraticTerm",
                "CubicTerm",
                "QuarticTerm",
                "QuinticTerm",
                "SexticTerm",
                "SepticTerm");
    }

    /** Whether entities of a kind are such curves. Of sine and cosine spirals the wave length is left open. */
    static boolean isOne(IfcEntity entity) {
        return switch (entity.type()) {
            case "IfcClothoid",
                    "IfcSecondOrderPolynomialSpiral",
                    "IfcThirdOrderPolynomialSpiral",
                    "IfcSeventhOrderPolynomialSpiral" -> true;
            default -> false;
        };
    }

    /** Direction at a length, radians from x. */
    double heading(double s) {
        double sum = 0;
        for (int i = curvature.size() - 1; i >= 0; i--) {
            sum = sum * s + curvature.get(i) / (i + 1);
        }
        return sum * s;
    }

    /** No less than the curve turns by up to a length either way. */
    private static double turned(List<Double> curvature, double s) {
        double sum = 0;
        for (int i = curvature.size() - 1; i >= 0; i--) {
            sum = sum * s + Math.abs(curvature.get(i)) / (i + 1);
        }
        return sum * s;
    }

    @Override
    public Vector3D at(double s) {
        int panels = (int) Math.ceil(turned(curvature, Math.abs(s)) / PANEL) + 1;
        double half = 0.5 * s / panels;
        double x = 0;
        double y = 0;
        for (int p = 0; p < panels; p++) {
            for (int n = 0; n < NODES.length; n++) {
                double heading = heading(half * (2 * p + 1 + NODES[n]));
                x += WEIGHTS[n] * Math.cos(heading);
                y += WEIGHTS[n] * Math.sin(heading);
            }
        }
        return Vector3D.of(half * x, half * y, 0);
    }

    @Override
    public Vector3D tangent(double s) {
        return Vector3D.of(Math.cos(heading(s)), Math.sin(heading(s)), 0);
    }

    /** By samples, and halving between the two beside the best. */
    @Override
    public double nearest(Vector3D place) {
        double best = from;
        double step = (to - from) / SAMPLES;
        for (int i = 1; i <= SAMPLES; i++) {
            double s = from + i * step;
            best = at(s).distance(place) < at(best).distance(place) ? s : best;
        }
        for (double near = step; near > 1e-12 * (to - from); near /= 2) {
            for (double s : new double[] {Math.max(from, best - near), Math.min(to, best + near)}) {
                best = at(s).distance(place) < at(best).distance(place) ? s : best;
            }
        }
        return best;
    }

    @Override
    public double period() {
        return 0;
    }

    @Override
    public OptionalDouble speed() {
        return OptionalDouble.of(1);
    }

    /** Equal chords, as many as where the curve is sharpest. */
    @Override
    public double[] stations(double start, double end, Fineness fineness) {
        double sharpest = 0;
        for (int i = 0; i <= SAMPLES; i++) {
            double s = start + (end - start) * i / SAMPLES;
            double sum = 0;
            for (int k = curvature.size() - 1; k >= 0; k--) {
                sum = sum * s + curvature.get(k);
            }
            sharpest = Math.max(sharpest, Math.abs(sum));
        }
        double length = Math.abs(end - start);
        int n = sharpest * length > 1e-9 ? fineness.chords(1 / sharpest, sharpest * length) : 1;
        double[] result = new double[n + 1];
        for (int i = 0; i <= n; i++) {
            result[i] = start + (end - start) * i / n;
        }
        return result;
    }
}

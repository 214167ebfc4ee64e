package runtrue.ifc.internal;

import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.jspecify.annotations.Nullable;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcException;

/**
 * Axis placements and transformation operators as matrices, by the functions of ISO 16739: IfcBuildAxes,
 * IfcBuild2Axes, IfcBaseAxis, IfcFirstProjAxis, IfcSecondProjAxis. All lengths in file units.
 */
final class Axes {
    /** Sine of the smallest angle between two directions that still span a plane, about 2e-7 degrees. */
    private static final double PARALLEL = 4e-9;

    private Axes() {}

    static AffineTransformMatrix3D of(IfcEntity entity) {
        if (entity.isA("IfcAxis2Placement3D")) {
            return placement3D(entity);
        }
        if (entity.isA("IfcAxis2Placement2D")) {
            Vector3D x = direction(entity, "RefDirection", Vector3D.Unit.PLUS_X);
            return matrix(x, left(x), Vector3D.Unit.PLUS_Z, point(entity, "Location"));
        }
        if (entity.isA("IfcCartesianTransformationOperator3D")) {
            return operator3D(entity);
        }
        if (entity.isA("IfcCartesianTransformationOperator2D")) {
            return operator2D(entity);
        }
        throw problem(entity, "is a placement that is not read; export with local placements");
    }

    /** A point that an attribute names. */
    static Vector3D point(IfcEntity owner, String attribute) {
        IfcEntity point = owner.ref(attribute);
        if (!point.isA("IfcCartesianPoint")) {
            throw problem(point, "is the " + attribute + " of " + owner.label() + "; only IfcCartesianPoint is read");
        }
        return coordinates(point);
    }

    /** An IfcCartesianPoint of two or three coordinates; a missing third one is 0. */
    static Vector3D coordinates(IfcEntity point) {
        return vector(point, point.reals("Coordinates"));
    }

    /** A direction of unit length; throws when it has none. */
    static Vector3D direction(IfcEntity owner, String attribute, Vector3D otherwise) {
        IfcEntity given = owner.optionalRef(attribute).orElse(null);
        return given == null ? otherwise : unit(given);
    }

    static Vector3D unit(IfcEntity direction) {
        Vector3D ratios = vector(direction, direction.reals("DirectionRatios"));
        if (ratios.norm() == 0 || !Double.isFinite(ratios.norm())) {
            throw problem(direction, "is a direction without length");
        }
        return ratios.normalize();
    }

    private static Vector3D vector(IfcEntity entity, double[] parts) {
        if (parts.length < 2 || parts.length > 3) {
            throw problem(entity, "has " + parts.length + " coordinates where two or three are needed");
        }
        return Vector3D.of(parts[0], parts[1], parts.length == 3 ? parts[2] : 0);
    }

    private static AffineTransformMatrix3D placement3D(IfcEntity entity) {
        Vector3D z = direction(entity, "Axis", Vector3D.Unit.PLUS_Z);
        Vector3D x = firstAxis(entity, z, given(entity, "RefDirection"));
        return matrix(x, z.cross(x), z, point(entity, "Location"));
    }

    private static AffineTransformMatrix3D operator3D(IfcEntity entity) {
        Vector3D z = direction(entity, "Axis3", Vector3D.Unit.PLUS_Z);
        Vector3D x = firstAxis(entity, z, given(entity, "Axis1"));
        Vector3D y = secondAxis(entity, z, x, given(entity, "Axis2"));
        double scaleX = scale(entity, "Scale", 1);
        double scaleY = scale(entity, "Scale2", scaleX);
        double scaleZ = scale(entity, "Scale3", scaleX);
        return matrix(x.multiply(scaleX), y.multiply(scaleY), z.multiply(scaleZ), point(entity, "LocalOrigin"));
    }

    private static AffineTransformMatrix3D operator2D(IfcEntity entity) {
        Vector3D first = given(entity, "Axis1");
        Vector3D second = given(entity, "Axis2");
        Vector3D x = Vector3D.Unit.PLUS_X;
        Vector3D y = Vector3D.Unit.PLUS_Y;
        if (first != null) {
            x = first;
            y = second != null && second.dot(left(first)) < 0 ? left(first).negate() : left(first);
        } else if (second != null) {
            x = left(second).negate();
            y = second;
        }
        double scaleX = scale(entity, "Scale", 1);
        double scaleY = scale(entity, "Scale2", scaleX);
        return matrix(x.multiply(scaleX), y.multiply(scaleY), Vector3D.Unit.PLUS_Z, point(entity, "LocalOrigin"));
    }

    /** IfcFirstProjAxis: the reference direction turned square to z; by default world x, or y where z lies along x. */
    private static Vector3D firstAxis(IfcEntity entity, Vector3D z, @Nullable Vector3D reference) {
        if (reference != null) {
            Vector3D x = square(reference, z);
            if (x.norm() < PARALLEL) {
                throw problem(entity, "has an axis and a reference direction that are parallel");
            }
            return x.normalize();
        }
        Vector3D x = square(Vector3D.Unit.PLUS_X, z);
        return (x.norm() < PARALLEL ? Vector3D.Unit.PLUS_Y : x).normalize();
    }

    /** IfcSecondProjAxis: may make the axes left-handed, which is how mirrored items are written. */
    private static Vector3D secondAxis(IfcEntity entity, Vector3D z, Vector3D x, @Nullable Vector3D given) {
        Vector3D y = square(square(given == null ? Vector3D.Unit.PLUS_Y : given, z), x);
        if (y.norm() < PARALLEL) {
            if (given != null) {
                throw problem(entity, "has a second axis that lies along one of the other two");
            }
            return z.cross(x);
        }
        return y.normalize();
    }

    private static Vector3D square(Vector3D direction, Vector3D axis) {
        return direction.subtract(axis.multiply(direction.dot(axis)));
    }

    /** IfcOrthogonalComplement: a quarter turn to the left in the plane z = 0. */
    private static Vector3D left(Vector3D direction) {
        return Vector3D.of(-direction.getY(), direction.getX(), 0);
    }

    private static @Nullable Vector3D given(IfcEntity owner, String attribute) {
        return owner.optionalRef(attribute).map(Axes::unit).orElse(null);
    }

    private static double scale(IfcEntity entity, String attribute, double otherwise) {
        double scale = entity.optionalReal(attribute).orElse(otherwise);
        if (scale <= 0) {
            throw problem(entity, "has " + attribute + " " + scale + "; it must be above 0");
        }
        return scale;
    }

    private static AffineTransformMatrix3D matrix(Vector3D x, Vector3D y, Vector3D z, Vector3D origin) {
        return AffineTransformMatrix3D.of(
                x.getX(),
                y.getX(),
                z.getX(),
                origin.getX(),
                x.getY(),
                y.getY(),
                z.getY(),
                origin.getY(),
                x.getZ(),
                y.getZ(),
                z.getZ(),
                origin.getZ());
    }

    private static IfcException problem(IfcEntity entity, String what) {
        return new IfcException(entity.model().file().name() + ": " + entity.label() + " " + what);
    }
}

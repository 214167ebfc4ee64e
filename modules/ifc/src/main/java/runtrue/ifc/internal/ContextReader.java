package runtrue.ifc.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;

/** Precision and true north from the representation contexts of the projects. */
final class ContextReader {
    /** Axes and origins differing less than this from the identity are rounding. */
    private static final double ROUNDING = 1e-9;

    private final List<IfcEntity> contexts = new ArrayList<>();
    private final NoteList notes;

    /** Contexts that are models go before plans and others. */
    ContextReader(List<IfcEntity> projects, NoteList notes) {
        this.notes = notes;
        List<IfcEntity> others = new ArrayList<>();
        for (IfcEntity project : projects) {
            for (IfcEntity context : project.refs("RepresentationContexts")) {
                if (context.isA("IfcGeometricRepresentationContext")) {
                    (context.text("ContextType").equalsIgnoreCase("Model") ? contexts : others).add(parent(context));
                }
            }
        }
        contexts.addAll(others);
    }

    /** Sub-contexts derive everything from the context they belong to. */
    private static IfcEntity parent(IfcEntity context) {
        IfcEntity top = context;
        for (int depth = 0; depth < 100 && top.isA("IfcGeometricRepresentationSubContext"); depth++) {
            top = top.ref("ParentContext");
        }
        return top;
    }

    /** In file units. */
    OptionalDouble precision() {
        return contexts.stream()
                .flatMapToDouble(context -> context.optionalReal("Precision").stream())
                .filter(precision -> precision > 0)
                .findFirst();
    }

    /** Radians, clockwise from +Y. */
    OptionalDouble trueNorth() {
        OptionalDouble found = OptionalDouble.empty();
        for (IfcEntity context : contexts) {
            IfcEntity direction = context.optionalRef("TrueNorth").orElse(null);
            if (direction == null) {
                continue;
            }
            Vector3D north = Axes.unit(direction);
            double angle = Math.atan2(north.getX(), north.getY());
            if (found.isEmpty()) {
                found = OptionalDouble.of(angle);
            } else if (Math.abs(found.getAsDouble() - angle) > ROUNDING) {
                notes.add("The contexts state different directions of true north; the first is used.");
            }
        }
        return found;
    }

    void noteMovedWorlds() {
        for (IfcEntity context : contexts) {
            IfcEntity world = context.optionalRef("WorldCoordinateSystem").orElse(null);
            if (world != null && !isIdentity(Axes.of(world))) {
                notes.add("The world coordinate system of " + context.label()
                        + " is not the origin; coordinates are given without it.");
            }
        }
    }

    private static boolean isIdentity(AffineTransformMatrix3D transform) {
        double[] given = transform.toArray();
        double[] identity = AffineTransformMatrix3D.identity().toArray();
        for (int i = 0; i < given.length; i++) {
            if (Math.abs(given[i] - identity[i]) > ROUNDING) {
                return false;
            }
        }
        return true;
    }
}

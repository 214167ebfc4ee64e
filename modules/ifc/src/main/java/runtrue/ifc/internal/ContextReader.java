package runtrue.ifc.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcException;

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
            readable(project, () -> project.refs("RepresentationContexts").forEach(context -> sort(context, others)));
        }
        contexts.addAll(others);
    }

    private void sort(IfcEntity context, List<IfcEntity> others) {
        if (context.isA("IfcGeometricRepresentationContext")) {
            (context.text("ContextType").equalsIgnoreCase("Model") ? contexts : others).add(parent(context));
        }
    }

    /** A context that cannot be read leaves the model usable: elements are placed without it. */
    private void readable(IfcEntity owner, Runnable reading) {
        try {
            reading.run();
        } catch (IfcException e) {
            notes.add("Contexts of " + owner.label() + " are not read: " + e.getMessage());
        }
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
        for (IfcEntity context : contexts) {
            double[] stated = {0};
            readable(
                    context, () -> stated[0] = context.optionalReal("Precision").orElse(0));
            if (stated[0] > 0) {
                return OptionalDouble.of(stated[0]);
            }
        }
        return OptionalDouble.empty();
    }

    /** Radians, clockwise from +Y. */
    OptionalDouble trueNorth() {
        List<Double> angles = new ArrayList<>();
        for (IfcEntity context : contexts) {
            readable(context, () -> context.optionalRef("TrueNorth").ifPresent(north -> angles.add(angle(north))));
        }
        if (angles.stream().anyMatch(angle -> Math.abs(angle - angles.get(0)) > ROUNDING)) {
            notes.add("The contexts state different directions of true north; the first is used.");
        }
        return angles.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(angles.get(0));
    }

    private static double angle(IfcEntity direction) {
        Vector3D north = Axes.unit(direction);
        return Math.atan2(north.getX(), north.getY());
    }

    void noteMovedWorlds() {
        for (IfcEntity context : contexts) {
            readable(
                    context,
                    () -> context.optionalRef("WorldCoordinateSystem")
                            .filter(world -> !isIdentity(Axes.of(world)))
                            .ifPresent(world -> notes.add("The world coordinate system of " + context.label()
                                    + " is not the origin; coordinates are given without it.")));
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

package runtrue.shape.solid;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.Tolerances;
import runtrue.shape.bool.Combination;
import runtrue.shape.mesh.Mesh;
import runtrue.shape.mesh.Shells;

/** IfcBooleanResult and IfcBooleanClippingResult: chains of first operands are walked in a loop, however long. */
final class BooleanReader {
    private final ItemReader items;
    private final Tolerances tolerances;
    private final Consumer<String> remarks;

    BooleanReader(ItemReader items, Tolerances tolerances, Consumer<String> remarks) {
        this.items = items;
        this.tolerances = tolerances;
        this.remarks = remarks;
    }

    Solid read(IfcEntity result, AffineTransformMatrix3D frame, int depth) {
        Deque<IfcEntity> chain = new ArrayDeque<>();
        Set<Integer> seen = new HashSet<>();
        IfcEntity operand = result;
        while (operand.isA("IfcBooleanResult")) {
            if (!seen.add(operand.id())) {
                throw new ShapeException("The boolean operation " + operand.label() + " has itself as its operand.");
            }
            chain.push(operand);
            operand = operand.ref("FirstOperand");
        }
        Solid solid = one(items.read(operand, frame, depth + 1));
        for (IfcEntity step : chain) {
            solid = apply(step, solid, frame, depth);
            if (solid.mesh().faces().length == 0) {
                throw new ShapeException("Nothing is left of the body after clipping by " + step.label() + ".");
            }
        }
        return solid;
    }

    private Solid apply(IfcEntity step, Solid solid, AffineTransformMatrix3D frame, int depth) {
        IfcEntity second = step.ref("SecondOperand");
        Combination.Kind kind = kind(step);
        if (!second.isA("IfcHalfSpaceSolid")) {
            Mesh tool = one(items.read(second, frame, depth + 1)).mesh();
            Mesh mesh = Combination.of(kind, solid.mesh(), tool, tolerances, remarks);
            return kind == Combination.Kind.UNION ? new Solid(mesh, Optional.empty()) : solid.with(mesh);
        }
        HalfSpace halfSpace = HalfSpaces.read(second, frame, items.outlines(frame));
        return switch (kind) {
            case DIFFERENCE -> solid.with(halfSpace.cutFrom(solid.mesh(), tolerances, remarks));
            case INTERSECTION -> solid.with(halfSpace.commonWith(solid.mesh(), tolerances, remarks));
            case UNION -> throw new ShapeException("The union with a half-space at " + step.label() + " has no end.");
        };
    }

    private static Combination.Kind kind(IfcEntity step) {
        return switch (step.enumeration("Operator")) {
            case "DIFFERENCE" -> Combination.Kind.DIFFERENCE;
            case "INTERSECTION" -> Combination.Kind.INTERSECTION;
            case "UNION" -> Combination.Kind.UNION;
            default -> throw new ShapeException("The boolean operation " + step.label() + " names no operator.");
        };
    }

    private static Solid one(List<Solid> solids) {
        if (solids.size() == 1) {
            return solids.get(0);
        }
        return new Solid(Shells.together(solids.stream().map(Solid::mesh).toList()), Optional.empty());
    }
}

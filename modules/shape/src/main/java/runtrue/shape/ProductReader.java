package runtrue.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcException;
import runtrue.shape.bool.Combination;
import runtrue.shape.mesh.Mesh;
import runtrue.shape.solid.ItemReader;
import runtrue.shape.solid.Solid;
import runtrue.shape.usage.UsageBody;
import runtrue.step.StepException;

/**
 * Products from their representations. Items are read, clipped and voided in the element's own axes, in metres, and moved
 * to world axes less the origin at the end: digits are lost far from an origin.
 */
final class ProductReader implements ShapeReader {
    /** Farther from the origin than this, in metres, no building stands: it is beyond every map grid's northing. */
    static final double FARTHEST = 1e8;

    static final String TOO_FAR =
            "Its coordinates lie more than 100 000 km from the origin or are no numbers: check the placements.";

    private final Tolerances tolerances;
    private final Vector3D origin;

    ProductReader(Tolerances tolerances, Vector3D origin) {
        this.tolerances = tolerances;
        this.origin = origin;
    }

    @Override
    public Shape read(IfcEntity product) {
        List<Representation> candidates;
        try {
            candidates = Representation.bodies(product);
        } catch (IfcException | StepException e) {
            return Remedy.with(message(e), "");
        }
        if (candidates.isEmpty()) {
            return fromUsage(product);
        }
        Shape first = read(product, candidates.get(0));
        for (int i = 1; i < candidates.size() && first instanceof Shape.Unread; i++) {
            if (read(product, candidates.get(i)) instanceof Shape.Body body) {
                return body;
            }
        }
        return first;
    }

    private Shape read(IfcEntity product, Representation representation) {
        try {
            return body(product, representation);
        } catch (ShapeException | IfcException | StepException e) {
            return Remedy.with(message(e), representation.label());
        } catch (IllegalArgumentException | ArithmeticException e) {
            return Remedy.with("The geometry is degenerate: " + message(e), representation.label());
        }
    }

    /** What its material usage states in place of a body; else what is missing of that. */
    private Shape fromUsage(IfcEntity product) {
        Shape.Unread none = Representation.none(product);
        try {
            Optional<IfcEntity> usage = none.representation().isEmpty() ? Optional.empty() : UsageBody.usage(product);
            return usage.isPresent() ? fromUsage(product, usage.get()) : none;
        } catch (ShapeException | IfcException | StepException | IllegalArgumentException | ArithmeticException e) {
            return new Shape.Unread(
                    "It has no body representation, and none can be made of its material usage: "
                            + message(e).replaceFirst("\\.$", "") + "; export it with its body.",
                    none.representation());
        }
    }

    private Shape fromUsage(IfcEntity product, IfcEntity usage) {
        List<String> remarks = new ArrayList<>();
        AffineTransformMatrix3D frame =
                AffineTransformMatrix3D.createScale(product.model().units().length());
        UsageBody made = UsageBody.of(product, usage, frame, tolerances, remarks::add);
        return body(product, made.label(), made.solids(), remarks, true);
    }

    private static String message(RuntimeException e) {
        return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    }

    private Shape body(IfcEntity product, Representation representation) {
        AffineTransformMatrix3D frame =
                AffineTransformMatrix3D.createScale(product.model().units().length());
        List<String> remarks = new ArrayList<>();
        return body(product, representation.label(), items(representation, frame, remarks), remarks, false);
    }

    private Shape body(IfcEntity product, String label, List<Solid> whole, List<String> remarks, boolean assumed) {
        double unit = product.model().units().length();
        AffineTransformMatrix3D placement = product.model().placement(product);
        List<Solid> solids = voided(product, placement, whole, remarks);
        AffineTransformMatrix3D world = AffineTransformMatrix3D.createScale(unit)
                .multiply(placement)
                .multiply(AffineTransformMatrix3D.createScale(1 / unit))
                .translate(origin.negate());
        List<Face> faces = new ArrayList<>();
        boolean closed = true;
        for (Solid solid : solids) {
            Mesh mesh = solid.merged(tolerances).mesh().transformed(world);
            if (!(mesh.box().reach() < FARTHEST)) {
                return new Shape.Unread(TOO_FAR, label);
            }
            closed &= mesh.closed();
            Faces.addAll(mesh, faces);
        }
        return new Shape.Body(faces, closed, sweep(solids, world), label, remarks, Shape.BUILT_IN, assumed);
    }

    private static Optional<Sweep> sweep(List<Solid> solids, AffineTransformMatrix3D world) {
        Optional<Sweep> own = solids.size() == 1 ? solids.get(0).sweep() : Optional.empty();
        return own.isPresent() ? Optional.of(Solid.moved(own.get(), world)) : own;
    }

    /** Every item that can be read; what cannot is a remark, or the reason when nothing can. */
    private List<Solid> items(Representation representation, AffineTransformMatrix3D frame, List<String> remarks) {
        ItemReader reader = new ItemReader(tolerances, remarks::add);
        List<Solid> solids = new ArrayList<>();
        List<String> failures = new ArrayList<>();
        for (IfcEntity item : representation.items()) {
            try {
                for (Solid solid : reader.read(item, frame)) {
                    if (solid.mesh().faces().length > 0) {
                        solids.add(solid);
                    }
                }
            } catch (ShapeException | IfcException | StepException e) {
                failures.add(message(e));
            }
        }
        if (solids.isEmpty()) {
            throw new ShapeException(failures.isEmpty() ? "Its body has no faces." : failures.get(0));
        }
        for (String failure : failures) {
            remarks.add("A part of the body was not read: " + failure);
        }
        return solids;
    }

    private List<Solid> voided(
            IfcEntity product, AffineTransformMatrix3D placement, List<Solid> solids, List<String> remarks) {
        List<Solid> left = solids;
        for (IfcEntity opening : product.model().openings(product)) {
            try {
                left = less(left, opening(opening, placement, remarks), remarks);
            } catch (ShapeException | IfcException | StepException e) {
                remarks.add("The opening " + opening.label() + " was not subtracted: " + message(e));
            }
        }
        if (left.isEmpty()) {
            throw new ShapeException("Nothing is left of the body after its openings are taken off.");
        }
        return left;
    }

    private List<Solid> opening(IfcEntity opening, AffineTransformMatrix3D host, List<String> remarks) {
        List<Representation> bodies = Representation.bodies(opening);
        if (bodies.isEmpty()) {
            throw new ShapeException("it has no body representation.");
        }
        double unit = opening.model().units().length();
        AffineTransformMatrix3D frame = AffineTransformMatrix3D.createScale(unit)
                .multiply(host.inverse().multiply(opening.model().placement(opening)));
        return items(bodies.get(0), frame, remarks);
    }

    private List<Solid> less(List<Solid> solids, List<Solid> tools, List<String> remarks) {
        List<Solid> left = new ArrayList<>();
        for (Solid solid : solids) {
            Mesh mesh = solid.mesh();
            for (Solid tool : tools) {
                mesh = Combination.of(Combination.Kind.DIFFERENCE, mesh, tool.mesh(), tolerances, remarks::add);
            }
            if (mesh.faces().length > 0) {
                left.add(solid.with(mesh));
            }
        }
        return left;
    }
}

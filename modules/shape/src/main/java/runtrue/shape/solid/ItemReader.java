package runtrue.shape.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.Tolerances;
import runtrue.shape.curve.Fineness;
import runtrue.shape.mesh.Mesh;
import runtrue.shape.mesh.Shells;
import runtrue.shape.profile.OutlineReader;
import runtrue.shape.profile.Profile;
import runtrue.shape.profile.ProfileReader;
import runtrue.shape.sweep.SweepReader;
import runtrue.shape.sweep.Workshop;

/** Representation items as meshes, by class: start with {@link #read}. One reader serves one element. */
public final class ItemReader {
    /** Mapped items within mapped items, and booleans within second operands, deeper than this are taken for a cycle. */
    private static final int DEEPEST = 40;

    private final Tolerances tolerances;
    private final Consumer<String> remarks;
    private final FaceBudget budget = new FaceBudget();

    /**
     * @param remarks takes sentences on what was changed or left out
     */
    public ItemReader(Tolerances tolerances, Consumer<String> remarks) {
        this.tolerances = tolerances;
        this.remarks = remarks;
    }

    /**
     * The solids of an item: one, or those of everything that a mapped item maps.
     *
     * @param frame from the item's axes and file units to those of the result, in metres
     * @throws ShapeException when the item's kind is not read, or what it says makes no shape
     */
    public List<Solid> read(IfcEntity item, AffineTransformMatrix3D frame) {
        return read(item, frame, 0);
    }

    List<Solid> read(IfcEntity item, AffineTransformMatrix3D frame, int depth) {
        if (depth > DEEPEST) {
            throw new ShapeException("The item " + item.label() + " refers to itself.");
        }
        return switch (item.type()) {
            case "IfcExtrudedAreaSolid" -> extrusion(item, frame);
            case "IfcMappedItem" -> mapped(item, frame, depth);
            case "IfcBooleanResult", "IfcBooleanClippingResult" ->
                List.of(new BooleanReader(this, tolerances, remarks).read(item, frame, depth));
            case "IfcCsgSolid" -> read(item.ref("TreeRootExpression"), frame, depth + 1);
            case "IfcFacetedBrep",
                    "IfcFacetedBrepWithVoids",
                    "IfcAdvancedBrep",
                    "IfcAdvancedBrepWithVoids",
                    "IfcManifoldSolidBrep" -> List.of(plain(brep(item, frame)));
            case "IfcFaceBasedSurfaceModel" -> List.of(plain(surface(item, "FbsmFaces", frame)));
            case "IfcShellBasedSurfaceModel" -> List.of(plain(surface(item, "SbsmBoundary", frame)));
            case "IfcOpenShell", "IfcClosedShell", "IfcConnectedFaceSet" -> List.of(plain(shell(item, frame)));
            case "IfcTriangulatedFaceSet", "IfcPolygonalFaceSet", "IfcTriangulatedIrregularNetwork" ->
                List.of(plain(new FaceSets(budget, tolerances, remarks).read(item, frame)));
            case "IfcGeometricSet" -> surfaces(item, frame, depth);
            case "IfcPlane" ->
                throw new ShapeException("The plane " + item.label()
                        + " has no bounds; export this element with a bounded surface, or as a faceted body.");
            default -> built(item, frame);
        };
    }

    private List<Solid> built(IfcEntity item, AffineTransformMatrix3D frame) {
        Workshop workshop = new Workshop(tolerances, remarks, budget::take);
        if (Primitives.reads(item.type())) {
            return List.of(new Primitives(workshop, fineness(frame)).read(item, frame));
        }
        if (SweepReader.reads(item.type())) {
            return new SweepReader(workshop, fineness(frame))
                    .read(item, placed(item, frame)).stream()
                            .map(swept -> new Solid(swept.mesh(), swept.straight()))
                            .toList();
        }
        if (SurfaceItems.reads(item)) {
            return List.of(plain(new SurfaceItems(tolerances, remarks, budget, fineness(frame)).read(item, frame)));
        }
        throw new ShapeException("Shapes of type " + item.type() + " are not read (" + item.label()
                + "); export this element as a faceted body or a plain extrusion.");
    }

    private List<Solid> surfaces(IfcEntity set, AffineTransformMatrix3D frame, int depth) {
        List<Solid> solids = new ArrayList<>();
        for (IfcEntity surface : Drawn.surfaces(set)) {
            solids.addAll(read(surface, frame, depth + 1));
        }
        return solids;
    }

    private static Solid plain(Mesh mesh) {
        return new Solid(mesh, Optional.empty());
    }

    private List<Solid> extrusion(IfcEntity item, AffineTransformMatrix3D frame) {
        AffineTransformMatrix3D placement = placed(item, frame);
        Vector3D direction = Directions.of(item.ref("ExtrudedDirection"));
        double depth = item.real("Depth");
        if (!(depth > 0)) {
            throw new ShapeException("The depth of " + item.label() + " is not positive.");
        }
        List<Solid> solids = new ArrayList<>(1);
        ProfileReader profiles = new ProfileReader(fineness(frame));
        for (Profile profile : profiles.read(item.ref("SweptArea"))) {
            solids.add(Extrusion.of(profile, placement, direction.multiply(depth)));
        }
        return solids;
    }

    static AffineTransformMatrix3D placed(IfcEntity item, AffineTransformMatrix3D frame) {
        return item.has("Position") ? frame.multiply(item.model().transform(item.ref("Position"))) : frame;
    }

    private List<Solid> mapped(IfcEntity item, AffineTransformMatrix3D frame, int depth) {
        IfcEntity source = item.ref("MappingSource");
        AffineTransformMatrix3D origin = item.model().transform(source.ref("MappingOrigin"));
        AffineTransformMatrix3D target = item.model().transform(item.ref("MappingTarget"));
        AffineTransformMatrix3D inner = frame.multiply(target).multiply(origin.inverse());
        List<Solid> solids = new ArrayList<>();
        for (IfcEntity part : source.ref("MappedRepresentation").refs("Items")) {
            if (Drawn.isLineWork(part)) {
                continue;
            }
            solids.addAll(read(part, inner, depth + 1));
        }
        if (solids.isEmpty()) {
            throw new ShapeException("The mapped item " + item.label() + " maps nothing that has faces.");
        }
        return solids;
    }

    private Mesh brep(IfcEntity item, AffineTransformMatrix3D frame) {
        List<Mesh> shells = new ArrayList<>();
        shells.add(shell(item.ref("Outer"), frame));
        for (IfcEntity hollow : item.refs("Voids")) {
            shells.add(shell(hollow, frame).inverted());
        }
        return Shells.together(shells);
    }

    private Mesh shell(IfcEntity shell, AffineTransformMatrix3D frame) {
        ShellFaces faces = new ShellFaces(frame, fineness(frame), budget);
        faces.add(shell);
        return Shells.solid(faces.xyz(), faces.faces(), tolerances, remarks);
    }

    private Mesh surface(IfcEntity item, String shells, AffineTransformMatrix3D frame) {
        ShellFaces faces = new ShellFaces(frame, fineness(frame), budget);
        for (IfcEntity shell : item.refs(shells)) {
            faces.add(shell);
        }
        return Shells.solid(faces.xyz(), faces.faces(), tolerances, remarks);
    }

    OutlineReader outlines(AffineTransformMatrix3D frame) {
        return new OutlineReader(fineness(frame));
    }

    private Fineness fineness(AffineTransformMatrix3D frame) {
        return fineness(tolerances, frame);
    }

    /** In file units. The point tolerance is a hundredth of the program's, so that profiles keep what exporters meant. */
    public static Fineness fineness(Tolerances tolerances, AffineTransformMatrix3D frame) {
        double scale = scale(frame);
        return Fineness.of(tolerances.chord() / scale, 0.01 * tolerances.point() / scale, tolerances.round());
    }

    private static double scale(AffineTransformMatrix3D frame) {
        double scale = Math.cbrt(Math.abs(frame.determinant()));
        if (!(scale > 0) || Double.isInfinite(scale)) {
            throw new ShapeException("A mapped item is scaled to nothing.");
        }
        return scale;
    }
}

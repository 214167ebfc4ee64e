package runtrue.samples.ifc;

import java.util.ArrayList;
import java.util.List;

/** Bodies in an element's own axes, lengths in metres. */
public final class Bodies {
    private final IfcFile file;
    private final StepWriter step;

    Bodies(IfcFile file) {
        this.file = file;
        this.step = file.step();
    }

    /** A profile in the x, y of {@code position}, swept along its z. */
    public Body extrusion(StepRef profile, Frame position, double depth) {
        return extrusion(profile, position, Vec.Z, depth);
    }

    /** The same, swept along any direction given in the axes of {@code position}; depth is measured along it. */
    public Body extrusion(StepRef profile, Frame position, Vec direction, double depth) {
        StepRef solid = step.entity(
                "IFCEXTRUDEDAREASOLID", profile, file.axes(position), file.direction(direction), file.length(depth));
        return new Body("SweptSolid", solid);
    }

    /** A profile in the x, y of {@code position}, turned about that frame's x axis from y towards z, radians. */
    public Body revolution(StepRef profile, Frame position, double angle) {
        StepRef axis = step.entity("IFCAXIS1PLACEMENT", file.point(Vec.ZERO), file.direction(Vec.X));
        StepRef solid = step.entity("IFCREVOLVEDAREASOLID", profile, file.axes(position), axis, file.angle(angle));
        return new Body("SweptSolid", solid);
    }

    /** Cuts off what lies on the side to which the plane's z points. */
    public Body cutAbove(Body body, Frame plane) {
        return clipped(body, plane, false);
    }

    /** Cuts off what lies on the side away from the plane's z. */
    public Body cutBelow(Body body, Frame plane) {
        return clipped(body, plane, true);
    }

    /** A solid of flat faces. Each face's points counter-clockwise seen from outside. */
    public Body facetedBrep(List<List<Vec>> faces) {
        List<StepRef> shell = new ArrayList<>();
        for (List<Vec> face : faces) {
            StepRef loop =
                    step.entity("IFCPOLYLOOP", face.stream().map(file::point).toList());
            StepRef bound = step.entity("IFCFACEOUTERBOUND", loop, true);
            shell.add(step.entity("IFCFACE", List.of(bound)));
        }
        return new Body("Brep", step.entity("IFCFACETEDBREP", step.entity("IFCCLOSEDSHELL", shell)));
    }

    /** The same as an IfcPolygonalFaceSet (from IFC4). */
    public Body polygonalFaceSet(List<List<Vec>> faces) {
        List<Vec> points = faces.stream().flatMap(List::stream).distinct().toList();
        StepRef coordinates = pointList(points);
        List<StepRef> indexed = faces.stream()
                .map(face -> step.entity("IFCINDEXEDPOLYGONALFACE", indices(points, face)))
                .toList();
        StepRef set = step.entity("IFCPOLYGONALFACESET", coordinates, true, indexed, Step.UNSET);
        return new Body("Tessellation", set);
    }

    /** The same as an IfcTriangulatedFaceSet (from IFC4); faces must be convex. */
    public Body triangulatedFaceSet(List<List<Vec>> faces) {
        List<Vec> points = faces.stream().flatMap(List::stream).distinct().toList();
        StepRef coordinates = pointList(points);
        List<List<Integer>> triangles = new ArrayList<>();
        for (List<Vec> face : faces) {
            List<Integer> i = indices(points, face);
            for (int k = 2; k < i.size(); k++) {
                triangles.add(List.of(i.get(0), i.get(k - 1), i.get(k)));
            }
        }
        StepRef set = step.entity("IFCTRIANGULATEDFACESET", coordinates, Step.UNSET, true, triangles, Step.UNSET);
        return new Body("Tessellation", set);
    }

    /** A shape to be used many times. */
    public StepRef map(Body body) {
        StepRef representation =
                step.entity("IFCSHAPEREPRESENTATION", file.bodyContext(), "Body", body.type(), List.of(body.item()));
        return step.entity("IFCREPRESENTATIONMAP", file.axes(Frame.WORLD), representation);
    }

    /** A use of a mapped shape, moved. */
    public Body mapped(StepRef map, Vec by) {
        StepRef operator = step.shared(
                "IFCCARTESIANTRANSFORMATIONOPERATOR3D", Step.UNSET, Step.UNSET, file.point(by), 1.0, Step.UNSET);
        return new Body("MappedRepresentation", step.entity("IFCMAPPEDITEM", map, operator));
    }

    /**
     * A use of a mapped shape with axes of its own: left-handed ones mirror it, and each may stretch it.
     *
     * @param origin where the map's origin goes, metres
     * @param x where its x axis points, as long as it is stretched; likewise y and z
     */
    public Body mapped(StepRef map, Vec origin, Vec x, Vec y, Vec z) {
        StepRef operator = step.entity(
                "IFCCARTESIANTRANSFORMATIONOPERATOR3DNONUNIFORM",
                file.direction(x.unit()),
                file.direction(y.unit()),
                file.point(origin),
                x.length(),
                file.direction(z.unit()),
                y.length(),
                z.length());
        return new Body("MappedRepresentation", step.entity("IFCMAPPEDITEM", map, operator));
    }

    /** What is left of one solid without another. */
    public Body without(Body body, Body cut) {
        StepRef result = step.entity("IFCBOOLEANRESULT", Step.enumeration("DIFFERENCE"), body.item(), cut.item());
        return new Body("CSG", result);
    }

    /**
     * Faces of a prism with plumb sides below a sloping top.
     *
     * @param top corners of the upper face, counter-clockwise from above
     * @param plumbDepth vertical distance down to the lower face
     */
    public static List<List<Vec>> plumbPrism(List<Vec> top, double plumbDepth) {
        Vec down = Vec.Z.times(-plumbDepth);
        List<Vec> bottom = new ArrayList<>();
        List<List<Vec>> faces = new ArrayList<>(List.of(top));
        for (int i = 0; i < top.size(); i++) {
            Vec here = top.get(i);
            Vec next = top.get((i + 1) % top.size());
            bottom.add(0, here.plus(down));
            faces.add(List.of(here, here.plus(down), next.plus(down), next));
        }
        faces.add(bottom);
        return faces;
    }

    private Body clipped(Body body, Frame plane, boolean agreement) {
        StepRef surface = step.entity("IFCPLANE", file.axes(plane));
        StepRef half = step.entity("IFCHALFSPACESOLID", surface, agreement);
        StepRef result = step.entity("IFCBOOLEANCLIPPINGRESULT", Step.enumeration("DIFFERENCE"), body.item(), half);
        return new Body("Clipping", result);
    }

    private StepRef pointList(List<Vec> points) {
        List<List<Double>> coordinates = points.stream()
                .map(p -> List.of(file.length(p.x()), file.length(p.y()), file.length(p.z())))
                .toList();
        return file.schema() == Schema.IFC4X3
                ? step.entity("IFCCARTESIANPOINTLIST3D", coordinates, Step.UNSET)
                : step.entity("IFCCARTESIANPOINTLIST3D", coordinates);
    }

    /** One-based, as the schema wants. */
    private static List<Integer> indices(List<Vec> points, List<Vec> face) {
        return face.stream().map(p -> points.indexOf(p) + 1).toList();
    }
}

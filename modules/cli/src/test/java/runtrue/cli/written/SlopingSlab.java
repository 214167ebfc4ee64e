package runtrue.cli.written;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import runtrue.samples.ifc.Bodies;
import runtrue.samples.ifc.Body;
import runtrue.samples.ifc.Element;
import runtrue.samples.ifc.Frame;
import runtrue.samples.ifc.Profiles;
import runtrue.samples.ifc.StepRef;
import runtrue.samples.ifc.Vec;

/**
 * A slab whose upper face is a trapezium with level eave and ridge, in the building's axes, falling to the south.
 *
 * @param eave length along x, metres
 * @param run along the fall, metres
 * @param left how far the ridge's left end is set in from the eave's, metres
 * @param right likewise the right end
 * @param pitch radians
 * @param thickness square to the plane, metres
 * @param level of the eave, metres
 */
record SlopingSlab(double eave, double run, double left, double right, double pitch, double thickness, double level) {
    /** Ways in which files describe such a slab. */
    enum Form {
        TILTED_POSITION,
        TILTED_PLACEMENT,
        OBLIQUE_EXTRUSION,
        FACETED_BREP,
        POLYGONAL_FACE_SET,
        TRIANGULATED_FACE_SET,
        MAPPED,
        MIRRORED,
        STRETCHED,
        CLIPPED,
        SUBTRACTED;

        /** Whether IFC2X3 has it too. */
        boolean isOld() {
            return this != POLYGONAL_FACE_SET && this != TRIANGULATED_FACE_SET;
        }
    }

    /** Its ends exchanged: what stands against it with a common ridge. */
    SlopingSlab mirrored() {
        return new SlopingSlab(eave, run, /* left= */ right, /* right= */ left, pitch, thickness, level);
    }

    double area() {
        return (eave + eave - left - right) / 2 * run;
    }

    double ridgeLevel() {
        return level + run * Math.sin(pitch);
    }

    /** Gives the element its shape; the element's frame is set too where the form asks for it. */
    Element shaped(Element element, Form form, Bodies bodies, Profiles profiles) {
        return switch (form) {
            case TILTED_POSITION ->
                element.body(bodies.extrusion(
                        outline(profiles), skin().moved(skin().z().times(-thickness)), thickness));
            case TILTED_PLACEMENT ->
                element.frame(skin().moved(skin().z().times(-thickness)))
                        .body(bodies.extrusion(outline(profiles), Frame.WORLD, thickness));
            case OBLIQUE_EXTRUSION -> {
                Vec plumb = new Vec(0, StrictMath.sin(pitch), StrictMath.cos(pitch));
                yield element.body(bodies.extrusion(
                        outline(profiles), skin().moved(Vec.Z.times(-plumbDepth())), plumb, plumbDepth()));
            }
            case FACETED_BREP -> element.body(bodies.facetedBrep(faces(Vec.X)));
            case POLYGONAL_FACE_SET -> element.body(bodies.polygonalFaceSet(faces(Vec.X)));
            case TRIANGULATED_FACE_SET -> element.body(bodies.triangulatedFaceSet(faces(Vec.X)));
            case MAPPED -> element.body(bodies.mapped(bodies.map(bodies.facetedBrep(faces(Vec.X))), Vec.ZERO));
            case MIRRORED -> {
                StepRef map = bodies.map(bodies.facetedBrep(faces(new Vec(-1, 0, 0))));
                yield element.body(bodies.mapped(map, Vec.ZERO, new Vec(-1, 0, 0), Vec.Y, Vec.Z));
            }
            case STRETCHED -> {
                StepRef map = bodies.map(bodies.facetedBrep(faces(new Vec(0.5, 0, 0))));
                yield element.body(bodies.mapped(map, Vec.ZERO, new Vec(2, 0, 0), Vec.Y, Vec.Z));
            }
            case CLIPPED ->
                element.body(bodies.cutBelow(
                        bodies.cutAbove(block(bodies, profiles), skin()),
                        skin().moved(skin().z().times(-thickness))));
            case SUBTRACTED -> {
                double far = 2 * (eave + run);
                Body above = bodies.extrusion(profiles.rectangle(-far, -far, far, far), skin(), far);
                yield element.body(bodies.without(block(bodies, profiles), above));
            }
        };
    }

    /** The plan swept plumb from below the eave to above the ridge. */
    private Body block(Bodies bodies, Profiles profiles) {
        double y = run * StrictMath.cos(pitch);
        double bottom = level - 1;
        return bodies.extrusion(
                profiles.outline(0, 0, eave, 0, eave - right, y, left, y),
                Frame.at(Vec.Z.times(bottom)),
                ridgeLevel() + 1 - bottom);
    }

    private Frame skin() {
        return Frame.roof(Vec.Z.times(level), Vec.Y, pitch);
    }

    private double plumbDepth() {
        return thickness / StrictMath.cos(pitch);
    }

    private StepRef outline(Profiles profiles) {
        return profiles.outline(0, 0, eave, 0, eave - right, run, left, run);
    }

    /** Faces outward; the x of every corner goes along the given vector, which may point the other way. */
    private List<List<Vec>> faces(Vec along) {
        List<Vec> top = new ArrayList<>();
        for (double[] corner : new double[][] {{0, 0}, {eave, 0}, {eave - right, run}, {left, run}}) {
            Vec at = skin().point(corner[0], corner[1], 0);
            top.add(new Vec(at.x() * along.x(), at.y(), at.z()));
        }
        if (along.x() < 0) {
            Collections.reverse(top);
        }
        return Bodies.plumbPrism(top, plumbDepth());
    }
}

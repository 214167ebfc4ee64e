package runtrue.shape.bool;

import java.util.ArrayList;
import java.util.List;
import runtrue.shape.mesh.FacePlane;
import runtrue.shape.mesh.Flat;
import runtrue.shape.mesh.Loops;
import runtrue.shape.mesh.Mesh;
import runtrue.shape.mesh.Points;

/**
 * Faces of one plane less, or within, a section in that plane. Where no outlines touch or cross, the answer is put
 * together from the loops as they are; only real crossings are handed to the general overlay ({@link CrossingOverlay}).
 */
final class Overlay {
    private final FacePlane plane;
    private final Flat flat;
    private final double tolerance;
    private final Points points;

    /**
     * @param xyz points of the faces that will be given; new points are appended
     * @param plane the common plane
     */
    Overlay(double[] xyz, FacePlane plane, double tolerance) {
        this.plane = plane;
        this.flat = Flat.along(plane);
        this.tolerance = tolerance;
        this.points = new Points(xyz);
    }

    /** The points that returned faces refer to; those of the start keep their numbers. */
    double[] xyz() {
        return points.raw();
    }

    List<int[][]> without(List<int[][]> faces, Mesh section) {
        return overlaid(faces, section, false);
    }

    List<int[][]> within(List<int[][]> faces, Mesh section) {
        return overlaid(faces, section, true);
    }

    private List<int[][]> overlaid(List<int[][]> faces, Mesh section, boolean within) {
        if (section.faces().length == 0) {
            return within ? List.of() : faces;
        }
        List<int[][]> mask = adopted(section);
        List<int[][]> result = new ArrayList<>();
        for (int[][] face : faces) {
            Contact contact = Contact.of(points.raw(), flat, face, mask, tolerance);
            switch (contact) {
                case APART -> keepIf(!within, face, result);
                case COVERED -> keepIf(within, face, result);
                case HOLED -> result.addAll(within ? mask : List.<int[][]>of(holed(face, mask)));
                case CROSSING ->
                    result.addAll(new CrossingOverlay(points, plane, flat, tolerance).of(face, mask, within));
            }
        }
        return result;
    }

    private static void keepIf(boolean keep, int[][] face, List<int[][]> result) {
        if (keep) {
            result.add(face);
        }
    }

    private static int[][] holed(int[][] face, List<int[][]> mask) {
        List<int[]> loops = new ArrayList<>(List.of(face));
        for (int[][] part : mask) {
            loops.add(Loops.turned(part[0]));
        }
        return loops.toArray(new int[0][]);
    }

    /** The section's faces over this overlay's points. */
    private List<int[][]> adopted(Mesh section) {
        int[] number = new int[section.xyz().length / 3];
        List<int[][]> result = new ArrayList<>();
        for (int[][] face : section.faces()) {
            int[][] copy = new int[face.length][];
            for (int i = 0; i < face.length; i++) {
                copy[i] = new int[face[i].length];
                for (int k = 0; k < copy[i].length; k++) {
                    copy[i][k] = adopted(section.xyz(), face[i][k], number);
                }
            }
            result.add(copy);
        }
        return result;
    }

    private int adopted(double[] xyz, int p, int[] number) {
        if (number[p] == 0) {
            number[p] = 1 + points.add(xyz[3 * p], xyz[3 * p + 1], xyz[3 * p + 2]);
        }
        return number[p] - 1;
    }
}

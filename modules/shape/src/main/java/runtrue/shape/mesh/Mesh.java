package runtrue.shape.mesh;

import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;

/**
 * Planar faces over shared points, in metres. The arrays are never changed once a mesh holds them, and are handed out
 * without a copy for speed: callers only read them.
 */
public final class Mesh {
    private final double[] xyz;
    private final int[][][] faces;
    private final boolean closed;

    /**
     * @param xyz three coordinates a point
     * @param faces per face its loops of point numbers, not closed: the outline counter-clockwise seen against the
     *     outward normal, then holes clockwise
     * @param closed whether every edge is shared by two faces, normals outward
     */
    public Mesh(double[] xyz, int[][][] faces, boolean closed) {
        this.xyz = xyz;
        this.faces = faces;
        this.closed = closed;
    }

    public double[] xyz() {
        return xyz;
    }

    public int[][][] faces() {
        return faces;
    }

    public boolean closed() {
        return closed;
    }

    /** The plane of a face with its outward normal. */
    public FacePlane plane(int face) {
        return FacePlane.of(xyz, faces[face][0]);
    }

    /** Enclosed volume in cubic metres: positive for outward normals, without meaning for an open mesh. */
    public double volume() {
        return Volumes.signed(xyz, faces);
    }

    /** Area of all faces in square metres, holes taken off. */
    public double area() {
        double sum = 0;
        for (int[][] face : faces) {
            sum += FacePlane.area(xyz, face);
        }
        return sum;
    }

    /** Bounding box: least x, y, z, then greatest x, y, z; infinities the wrong way round when there is no face. */
    public Box box() {
        Box box = new Box();
        for (int[][] face : faces) {
            box.add(xyz, face[0]);
        }
        return box;
    }

    /** All points moved by a transform; loops are turned when it mirrors, so that normals stay outward. */
    public Mesh transformed(AffineTransformMatrix3D transform) {
        double[] moved = new double[xyz.length];
        for (int i = 0; i < xyz.length; i += 3) {
            double x = xyz[i];
            double y = xyz[i + 1];
            double z = xyz[i + 2];
            moved[i] = transform.applyX(x, y, z);
            moved[i + 1] = transform.applyY(x, y, z);
            moved[i + 2] = transform.applyZ(x, y, z);
        }
        return new Mesh(moved, transform.determinant() < 0 ? turned(faces) : faces, closed);
    }

    /** The same faces looking the other way. */
    public Mesh inverted() {
        return new Mesh(xyz, turned(faces), closed);
    }

    private static int[][][] turned(int[][][] faces) {
        int[][][] result = new int[faces.length][][];
        for (int i = 0; i < faces.length; i++) {
            result[i] = Loops.turned(faces[i]);
        }
        return result;
    }
}

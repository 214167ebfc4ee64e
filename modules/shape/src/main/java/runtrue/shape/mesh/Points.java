package runtrue.shape.mesh;

import java.util.Arrays;

/** A growing list of points. */
public final class Points {
    private double[] xyz;
    private int size;

    public Points() {
        this(16);
    }

    public Points(int capacity) {
        xyz = new double[3 * capacity];
    }

    public Points(double[] start) {
        xyz = Arrays.copyOf(start, start.length + 48);
        size = start.length / 3;
    }

    /** Adds a point and gives its number. */
    public int add(double x, double y, double z) {
        if (3 * size == xyz.length) {
            xyz = Arrays.copyOf(xyz, 2 * xyz.length + 48);
        }
        xyz[3 * size] = x;
        xyz[3 * size + 1] = y;
        xyz[3 * size + 2] = z;
        return size++;
    }

    public int size() {
        return size;
    }

    public double x(int p) {
        return xyz[3 * p];
    }

    public double y(int p) {
        return xyz[3 * p + 1];
    }

    public double z(int p) {
        return xyz[3 * p + 2];
    }

    /** The array behind the list, longer than the list and replaced when it grows: for reading at once only. */
    public double[] raw() {
        return xyz;
    }

    /** The coordinates so far, as a copy. */
    public double[] toArray() {
        return Arrays.copyOf(xyz, 3 * size);
    }
}

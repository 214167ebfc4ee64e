package runtrue.shape.profile;

import java.util.Arrays;

/** A growing line of corners in a plane. */
final class Path {
    private double[] xy = new double[16];
    private int size;

    void add(double x, double y) {
        if (size == xy.length) {
            xy = Arrays.copyOf(xy, 2 * size);
        }
        xy[size++] = x;
        xy[size++] = y;
    }

    void addAll(double[] corners) {
        for (int i = 0; i < corners.length; i += 2) {
            add(corners[i], corners[i + 1]);
        }
    }

    boolean empty() {
        return size == 0;
    }

    double lastX() {
        return xy[size - 2];
    }

    double lastY() {
        return xy[size - 1];
    }

    double[] toArray() {
        return Arrays.copyOf(xy, size);
    }

    static double[] reversed(double[] xy) {
        double[] result = new double[xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            result[xy.length - 2 - i] = xy[i];
            result[xy.length - 1 - i] = xy[i + 1];
        }
        return result;
    }
}

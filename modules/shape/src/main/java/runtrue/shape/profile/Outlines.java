package runtrue.shape.profile;

/**
 * Corner coordinates of standard sections, centred on their bounding boxes (a trapezium on its lower side), x and y in
 * turn, counter-clockwise. Directions as in the figures of ISO 16739: flanges of L, U and C shapes point to +x, the flange of a T is on
 * top, a Z has its upper flange to -x and its lower one to +x.
 */
final class Outlines {
    private Outlines() {}

    static double[] rectangle(double xDim, double yDim) {
        double x = 0.5 * xDim;
        double y = 0.5 * yDim;
        return new double[] {-x, -y, x, -y, x, y, -x, y};
    }

    static double[] trapezium(double bottom, double top, double height, double topOffset) {
        double x = 0.5 * bottom;
        double y = 0.5 * height;
        return new double[] {-x, -y, x, -y, -x + topOffset + top, y, -x + topOffset, y};
    }

    static double[] iShape(
            double bottomWidth,
            double bottomThickness,
            double topWidth,
            double topThickness,
            double depth,
            double web) {
        double b = 0.5 * bottomWidth;
        double t = 0.5 * topWidth;
        double y = 0.5 * depth;
        double w = 0.5 * web;
        double low = -y + bottomThickness;
        double high = y - topThickness;
        return new double[] {
            -b, -y, b, -y, b, low, w, low, w, high, t, high, t, y, -t, y, -t, high, -w, high, -w, low, -b, low
        };
    }

    static double[] lShape(double width, double depth, double thickness) {
        double x = 0.5 * width;
        double y = 0.5 * depth;
        return new double[] {-x, -y, x, -y, x, -y + thickness, -x + thickness, -y + thickness, -x + thickness, y, -x, y
        };
    }

    static double[] uShape(double flange, double depth, double web, double thickness) {
        double x = 0.5 * flange;
        double y = 0.5 * depth;
        return new double[] {
            -x,
            -y,
            x,
            -y,
            x,
            -y + thickness,
            -x + web,
            -y + thickness,
            -x + web,
            y - thickness,
            x,
            y - thickness,
            x,
            y,
            -x,
            y
        };
    }

    static double[] tShape(double flange, double depth, double web, double thickness) {
        double x = 0.5 * flange;
        double y = 0.5 * depth;
        double w = 0.5 * web;
        return new double[] {
            -w, -y, w, -y, w, y - thickness, x, y - thickness, x, y, -x, y, -x, y - thickness, -w, y - thickness
        };
    }

    static double[] cShape(double width, double depth, double wall, double lip) {
        double x = 0.5 * width;
        double y = 0.5 * depth;
        double inX = x - wall;
        double inY = y - wall;
        return new double[] {
            -x, -y, x, -y, x, -y + lip, inX, -y + lip, inX, -inY, -inX, -inY, -inX, inY, inX, inY, inX, y - lip, x,
            y - lip, x, y, -x, y
        };
    }

    /** The flange width is taken from a flange's tip to the far face of the web. */
    static double[] zShape(double flange, double depth, double web, double thickness) {
        double w = 0.5 * web;
        double x = flange - w;
        double y = 0.5 * depth;
        return new double[] {
            -w, -y, x, -y, x, -y + thickness, w, -y + thickness, w, y, -x, y, -x, y - thickness, -w, y - thickness
        };
    }

    /**
     * A crane rail: a head whose lower side falls from its edges to the web, and a foot whose upper side rises to the web
     * in two slopes.
     *
     * @param headEdge depth of the head at its edges
     * @param headWeb depth of the head at the web
     * @param footX half widths of the foot from its edge to the web, the web's last
     * @param footY depths of the foot there
     */
    static double[] craneRail(
            double height, double headWidth, double headEdge, double headWeb, double[] footX, double[] footY) {
        int foot = footX.length;
        double y = 0.5 * height;
        double h = 0.5 * headWidth;
        double[] right = new double[2 * (foot + 4)];
        right[0] = footX[0];
        right[1] = -y;
        for (int i = 0; i < foot; i++) {
            right[2 * i + 2] = footX[i];
            right[2 * i + 3] = -y + footY[i];
        }
        double[] head = {footX[foot - 1], y - headWeb, h, y - headEdge, h, y};
        System.arraycopy(head, 0, right, 2 * foot + 2, head.length);
        double[] both = new double[2 * right.length];
        for (int i = 0; i < right.length; i += 2) {
            both[i] = right[i];
            both[i + 1] = right[i + 1];
            both[both.length - 2 - i] = -right[i];
            both[both.length - 1 - i] = right[i + 1];
        }
        return both;
    }
}

package runtrue.shape.mesh;

/** A growing bounding box with sides along the axes. */
public final class Box {
    private double minX = Double.POSITIVE_INFINITY;
    private double minY = Double.POSITIVE_INFINITY;
    private double minZ = Double.POSITIVE_INFINITY;
    private double maxX = Double.NEGATIVE_INFINITY;
    private double maxY = Double.NEGATIVE_INFINITY;
    private double maxZ = Double.NEGATIVE_INFINITY;

    public void add(double x, double y, double z) {
        minX = Math.min(minX, x);
        minY = Math.min(minY, y);
        minZ = Math.min(minZ, z);
        maxX = Math.max(maxX, x);
        maxY = Math.max(maxY, y);
        maxZ = Math.max(maxZ, z);
    }

    public void add(double[] xyz, int[] loop) {
        for (int p : loop) {
            add(xyz[3 * p], xyz[3 * p + 1], xyz[3 * p + 2]);
        }
    }

    /** Whether the boxes overlap or come nearer than {@code gap}. */
    public boolean near(Box other, double gap) {
        return minX <= other.maxX + gap
                && other.minX <= maxX + gap
                && minY <= other.maxY + gap
                && other.minY <= maxY + gap
                && minZ <= other.maxZ + gap
                && other.minZ <= maxZ + gap;
    }

    /** Whether the other box lies within this one. */
    public boolean holds(Box other) {
        return minX <= other.minX
                && minY <= other.minY
                && minZ <= other.minZ
                && maxX >= other.maxX
                && maxY >= other.maxY
                && maxZ >= other.maxZ;
    }

    public boolean empty() {
        return minX > maxX;
    }

    /** Length of the diagonal, 0 when empty. */
    public double diagonal() {
        return empty() ? 0 : Math.sqrt(sq(maxX - minX) + sq(maxY - minY) + sq(maxZ - minZ));
    }

    public double centreX() {
        return 0.5 * (minX + maxX);
    }

    public double centreY() {
        return 0.5 * (minY + maxY);
    }

    public double centreZ() {
        return 0.5 * (minZ + maxZ);
    }

    /** Greatest distance of a corner from the axes' origin planes: what tells absurd coordinates. */
    public double reach() {
        return Math.max(Math.max(Math.max(-minX, maxX), Math.max(-minY, maxY)), Math.max(-minZ, maxZ));
    }

    private static double sq(double v) {
        return v * v;
    }
}

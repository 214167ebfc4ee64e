package runtrue.samples.ifc;

/** Right-handed axes at a point; x and z are unit vectors at a right angle, y follows from them. */
public record Frame(Vec origin, Vec x, Vec z) {
    public static final Frame WORLD = new Frame(Vec.ZERO, Vec.X, Vec.Z);

    /** Axes as the world's, at a point. */
    public static Frame at(Vec origin) {
        return new Frame(origin, Vec.X, Vec.Z);
    }

    /** Axes turned about the vertical, counter-clockwise seen from above, radians. */
    public static Frame turned(Vec origin, double angle) {
        return new Frame(origin, new Vec(StrictMath.cos(angle), StrictMath.sin(angle), 0), Vec.Z);
    }

    /**
     * A roof plane's axes: x across the fall to the right looking up the fall, y up the fall, z out of the roof.
     *
     * @param corner left end of the eave looking up the fall, on the skin
     * @param uphill horizontal unit direction up the fall
     * @param pitch radians
     */
    public static Frame roof(Vec corner, Vec uphill, double pitch) {
        Vec across = uphill.cross(Vec.Z);
        Vec up = uphill.times(StrictMath.cos(pitch)).plus(Vec.Z.times(StrictMath.sin(pitch)));
        return new Frame(corner, across, across.cross(up));
    }

    /** Axes for a bar that is extruded along its own z with the section's y towards the given side. */
    public static Frame bar(Vec from, Vec along, Vec sectionUp) {
        return new Frame(from, sectionUp.cross(along), along);
    }

    public Vec y() {
        return z.cross(x);
    }

    /** The point at these coordinates along x, y and z, metres. */
    public Vec point(double alongX, double alongY, double alongZ) {
        return origin.plus(x.times(alongX)).plus(y().times(alongY)).plus(z.times(alongZ));
    }

    public Frame moved(Vec by) {
        return new Frame(origin.plus(by), x, z);
    }
}

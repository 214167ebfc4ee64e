package runtrue.wind;

/**
 * Clips of a sheet on its supports.
 *
 * @param tributary length of sheet that one support carries: half the spans on either side, whole overhangs; metres
 * @param width between clips on a support, the cover width when one holds each rib; metres
 * @param resistance of one clip against uplift, newtons, comparable with the pressures used (both with partial factors
 *     or both without)
 */
public record ClipLayout(double tributary, double width, double resistance) {
    public ClipLayout {
        if (!(tributary > 0 && width > 0 && resistance > 0)) {
            throw new WindException("Clips: the tributary length is " + tributary + " m, the distance across " + width
                    + " m, the resistance " + resistance + " N; all have to be above 0.");
        }
    }

    /** Loaded area of one clip on the slope, square metres. */
    public double area() {
        return tributary * width;
    }
}

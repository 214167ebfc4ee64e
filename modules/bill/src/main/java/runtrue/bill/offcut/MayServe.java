package runtrue.bill.offcut;

/**
 * Two sheets that may be cut from one.
 *
 * @param plane id of the plane of the first
 * @param sheet its number
 * @param otherPlane id of the plane of the second
 * @param otherSheet its number
 * @param length of the one sheet that gives both, metres
 * @param saved of the two lengths ordered apart, metres
 * @param way how they lie in the one sheet
 */
public record MayServe(
        String plane, int sheet, String otherPlane, int otherSheet, double length, double saved, Way way) {
    /** How two sheets lie in one. */
    public enum Way {
        /** Each keeps the side that its neighbour on the roof joins. */
        SIDE_BY_SIDE("side by side"),
        /** The second is cut above the first, into what the first leaves at its slanting end. */
        ONE_ABOVE_THE_OTHER("one above the other, by one slanting cut");

        private final String label;

        Way(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }
}

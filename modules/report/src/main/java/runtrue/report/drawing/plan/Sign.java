package runtrue.report.drawing.plan;

/** Signs of a plan beside its edges, in the order of the legend. */
public enum Sign {
    FALL("fall, water runs this way"),
    SHEETS("sheets; number × length"),
    SUPPORT("support line, S1 lowest"),
    SPAN("spans along the fall"),
    LONG_SPAN("span longer than allowed"),
    ZONE("wind zone, its suction in kPa"),
    PENETRATION("penetration with its size"),
    GRID("grid line"),
    NON_CONFORMING("does not conform"),
    CONCEDED("conceded"),
    NOT_ASSESSED("not assessed");

    private final String words;

    Sign(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}

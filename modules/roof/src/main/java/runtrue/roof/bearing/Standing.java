package runtrue.roof.bearing;

/** How something that is no support stands to the supports' contact plane. */
public enum Standing {
    /** Rises above the contact plane within the sheeted area: sheets or liner cannot lie flat. */
    PROUD("proud of the contact plane"),
    /** Passes through the contact plane and out of the sheets' skin: a penetration that has no opening in the roof. */
    THROUGH("passes through the roof"),
    /** A broad flat body on the contact plane: a layer of the build-up. */
    LAYER("layer on the supports"),
    /** A member across the fall that is a little off the level of the supports: so near, it was meant as one of them. */
    OFF_LEVEL("off the supports' level"),
    /** Carries the sheets along the fall. */
    CARRYING("carries along the fall"),
    /** A member well below the contact plane: carries something else. */
    LOWER("below the supports");

    private final String label;

    Standing(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}

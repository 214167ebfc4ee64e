package runtrue.roof;

import java.util.Locale;

/** Kinds of edge of a roof plane. */
public enum EdgeKind {
    /** Low edge, water leaves the plane. */
    EAVE,
    /** High edge shared by two planes that fall away from it, level. */
    RIDGE,
    /** High edge of a plane with nothing beyond: the head of a mono-pitch. */
    HEAD,
    /** Sloping edge shared by two planes that fall away from it. */
    HIP,
    /** Edge shared by two planes that fall towards it, sloping. */
    VALLEY,
    /** Edge along the fall with nothing beyond: the gable edge. */
    VERGE,
    /** Edge that meets a wall or another body that rises above the plane. */
    ABUTMENT,
    /**
     * Low edges of two planes that fall towards each other, level; or a low edge behind a parapet or wall, where water
     * cannot leave over the edge either: a gutter with a lining of its own, to a roofer.
     */
    BOX_GUTTER,
    /**
     * Level edge between two planes that fall the same way at unlike pitch, or one of any slope at which two planes fold by
     * less than a hip or valley does: half a degree.
     */
    PITCH_CHANGE,
    /**
     * Edge at which one of two parallel planes lies a little higher than the other: too much for sheets to lie over it, too
     * little for a wall between them.
     */
    STEP;

    /** For people and files: {@code box gutter}. */
    public String label() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}

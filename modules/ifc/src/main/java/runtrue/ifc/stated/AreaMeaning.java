package runtrue.ifc.stated;

/** Which area a name promises, by the standard's property and quantity sets. */
public enum AreaMeaning {
    /** True area, openings not taken off. */
    GROSS,
    /** True area, openings taken off. */
    NET,
    /** True area; the standard leaves open whether openings are taken off. */
    TOTAL,
    /** Projected to the ground; the standard leaves open whether openings are taken off. */
    PLAN,
    /** The name says no more than that it is an area. */
    UNSAID,
    /** It is no area. */
    NONE
}

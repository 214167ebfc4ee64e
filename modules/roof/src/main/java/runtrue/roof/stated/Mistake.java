package runtrue.roof.stated;

/** Kinds of wrong statement that can be told from the numbers; each with a sentence for the authoring team. */
public enum Mistake {
    /** Nothing amiss, or nothing that is known. */
    NONE(""),
    ZERO("It states 0: the authoring program exported a field that nobody filled in."),
    WHOLE_ROOF("It is the area of the whole roof that this element is a part of."),
    TWICE_TO_SQUARE_METRES(
            "It is 0.0929 times the area: a value already in square metres was converted from square feet once more."),
    SQUARE_FEET("It is the number of square feet, stated as square metres."),
    AREA_PREFIX(
            "It is off by a power of ten as between square metres, centimetres and millimetres: its unit is wrong."),
    LENGTH_PREFIX("It is off by a power of ten as between metres, centimetres and millimetres: its unit is wrong."),
    FEET("It is the number of feet, stated as metres, or the other way round."),
    INCHES("It is the number of inches, stated as metres or millimetres."),
    ALL_FACES("It is the sum of all faces: upper side, underside and edges."),
    BOTH_SIDES("It is the upper side and the underside together."),
    UNDERSIDE("It is the area of the underside."),
    PLAN_FOR_TRUE("It is the area in plan, where the name promises the true area."),
    SHADOW("It is the area in plan of the whole body with its cut edges, where the name promises the true area."),
    TRUE_FOR_PLAN("It is the true area, where the name promises the area in plan."),
    OPENINGS_OFF("Openings are taken off, where the name promises that they are not."),
    OPENINGS_KEPT("Openings are not taken off, where the name promises that they are."),
    DEGREES_AS_RADIANS("The number is in degrees, but its unit says radians."),
    RADIANS_AS_DEGREES("The number is in radians, but its unit says degrees."),
    SLOPE("It is the slope (rise over run, or per cent), not an angle."),
    FROM_THE_VERTICAL("It is measured from the vertical."),
    SIGN("Its sign is turned round."),
    PLUMB("It is measured plumb, not square to the surface."),
    IN_PLAN("It is the length in plan, not along the member."),
    /** Right, once the unit that is not stated is guessed. */
    READ_AS_DEGREES("No unit is stated; read as degrees it agrees.");

    private final String sentence;

    Mistake(String sentence) {
        this.sentence = sentence;
    }

    public String sentence() {
        return sentence;
    }
}

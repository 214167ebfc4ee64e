package runtrue.roof.health;

/** What is looked for in a model, in the order in which a person should hear of it. */
public enum HealthKind {
    UNREAD(
            Importance.HIGH,
            "Element not read",
            "It is in no quantity and no outcome; what lies beside it may be judged wrongly.",
            "Export it in a kind of body that is read, as the reason says; if it is neither roof nor support, exclude it"
                    + " under selectors in runtrue.yaml."),
    WITHOUT_PLANE(
            Importance.HIGH,
            "Roof element without a plane",
            "No sheets are laid out on it and nothing of it is judged.",
            "Check the element; if it is no roof, name it under selectors, excluded, in runtrue.yaml."),
    SIZE(
            Importance.HIGH,
            "Size that no building has",
            "The length unit of the file or the scale of the element is wrong, and with it every figure.",
            "Check the project's length unit and the scale of the import that the element came from."),
    SAME_GEOMETRY(
            Importance.HIGH,
            "Same geometry twice",
            "One of them is built, two are modelled: lists from the model count both, and one may be changed alone.",
            "Delete one, or agree which file carries it."),
    OVERLAP(
            Importance.HIGH,
            "Roof elements that overlap",
            "The shared area is counted once here, and twice in lists from the model.",
            "Trim one to the other."),
    RESERVATION(
            Importance.MEDIUM,
            "Body read with reservations",
            "Part of the body was left out or put right, so that its faces may not be what was meant.",
            "Look at the element and model it again, or export it as a closed solid."),
    OPEN_BODY(
            Importance.MEDIUM,
            "Body that is not closed",
            "What is inside and outside, and how thick it is, cannot be told: the upper side is assumed to be the roof.",
            "Model or export it as a closed solid."),
    SAME_GLOBAL_ID(
            Importance.MEDIUM,
            "GlobalId used twice",
            "Findings, concessions and comparison between drops follow elements by it and may take one for the other.",
            "Give one of them a new GlobalId: it was copied, not created."),
    NO_THICKNESS(
            Importance.MEDIUM,
            "Roof element without thickness",
            "The level of the supports under the sheet cannot be checked against its build-up.",
            "Model it as a solid, or assign material layers with their thickness."),
    FAR_AWAY(
            Importance.MEDIUM,
            "Geometry far from the origin",
            "Programs that calculate in single precision lose millimetres there: joints open and planes break up.",
            "Model near the origin and give the site's coordinates in the map conversion or the site's placement."),
    NO_STOREY(
            Importance.LOW,
            "Roof element in no storey",
            "Planes and findings cannot be told by storey.",
            "Assign it to the storey that it closes."),
    NO_TRUE_NORTH(
            Importance.LOW,
            "No true north",
            "Directions of fall can be given from the model's own axis alone.",
            "State true north in the model's geometric context."),
    NO_MATERIAL(
            Importance.LOW,
            "No material",
            "Nobody can check that the layers modelled are the build-up that is ordered, or what supports are made of.",
            "Assign the material layers of the build-up, and each member its material.");

    private final Importance importance;
    private final String title;
    private final String why;
    private final String action;

    HealthKind(Importance importance, String title, String why, String action) {
        this.importance = importance;
        this.title = title;
        this.why = why;
        this.action = action;
    }

    public Importance importance() {
        return importance;
    }

    /** A few words for people. */
    public String title() {
        return title;
    }

    /** Why it matters for the roof, one sentence. */
    public String why() {
        return why;
    }

    /** What the authoring team can do, one sentence. */
    public String action() {
        return action;
    }
}

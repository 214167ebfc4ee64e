package runtrue.roof.bearing;

/** What the sheets of a plane rest on. */
public enum BearingKind {
    PURLINS("carried by purlins across the fall"),
    /** Slight members across the fall at close centres. */
    BATTENS("carried by battens across the fall"),
    /** Members along the fall, with nothing across the fall above them. */
    RAFTERS("carried by rafters: nothing across the fall is modelled between them and the sheets"),
    /** A continuous layer: boards, a slab, a deck. */
    DECK("carried by a deck: a layer lies under the sheets and no support across the fall"),
    /** Nothing that could carry was found. */
    UNKNOWN("carried by nothing that is modelled");

    private final String sentence;

    BearingKind(String sentence) {
        this.sentence = sentence;
    }

    /** Goes on after the plane's name. */
    public String sentence() {
        return sentence;
    }
}

package runtrue.shape;

import java.util.regex.Pattern;

/** What a coordinator does next about an element that was not read: no reason leaves the module without it. */
final class Remedy {
    private static final Pattern NAMED = Pattern.compile("\\b(export|check)\\b");
    private static final String USUAL =
            "; check it in the authoring program, and export it again or as a faceted body.";

    private Remedy() {}

    /**
     * @param fault as whoever met it says it; where that names what to do, which knows more than this class, it stays as
     *     it is
     */
    static Shape.Unread with(String fault, String representation) {
        boolean named = NAMED.matcher(fault).find();
        return new Shape.Unread(named ? fault : fault.replaceFirst("\\.$", "") + USUAL, representation);
    }

    /** For an element without any representation, which may be no more than a container. */
    static Shape.Unread nothingDrawn(int parts) {
        return new Shape.Unread(
                parts == 0
                        ? "It has no body representation and no parts, so that there is nothing to measure; draw it in"
                                + " the authoring program and export it again, or, when it is no part of the roof,"
                                + " exclude it under selectors in runtrue.yaml."
                        : "It has no body representation: it is a container, and what is measured are its " + parts
                                + (parts == 1 ? " part" : " parts")
                                + "; check that they are among the roof or the supports, or name them under selectors"
                                + " in runtrue.yaml.",
                "");
    }
}

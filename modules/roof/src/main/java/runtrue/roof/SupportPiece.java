package runtrue.roof;

import java.util.OptionalDouble;
import runtrue.ifc.Element;

/**
 * One member of a support line, seen in the plane's frame.
 *
 * @param uFrom lesser end across the fall, metres
 * @param vFrom position of the section's centre at that end
 * @param contactFrom w of the contact face (the member's highest line) at that end, metres, negative below the skin
 * @param contactTo the same at the other end
 * @param flange width along the fall of the face that sheets and clips rest on, metres; of the section where no face looks up
 * @param depth of the section square to the plane, metres
 * @param thickness under that face, metres: of the metal of a purlin, of all of a solid batten
 */
public record SupportPiece(
        Element element,
        SupportEvidence evidence,
        double uFrom,
        double vFrom,
        double uTo,
        double vTo,
        double contactFrom,
        double contactTo,
        double flange,
        double depth,
        OptionalDouble thickness) {
    /** A piece that lies parallel to the plane. */
    public SupportPiece(
            Element element,
            SupportEvidence evidence,
            double uFrom,
            double vFrom,
            double uTo,
            double vTo,
            double contact,
            double flange,
            double depth,
            OptionalDouble thickness) {
        this(element, evidence, uFrom, vFrom, uTo, vTo, contact, contact, flange, depth, thickness);
    }

    /** Highest point of the member along the plane's normal, metres, negative below the skin. */
    public double contact() {
        return Math.max(contactFrom, contactTo);
    }

    /** w of the contact face at u, metres; extended straight beyond the ends. */
    public double contactAt(double u) {
        double length = uTo - uFrom;
        return length > 0 ? contactFrom + (contactTo - contactFrom) * (u - uFrom) / length : contactFrom;
    }
}

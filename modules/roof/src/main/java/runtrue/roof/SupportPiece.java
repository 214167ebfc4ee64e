package runtrue.roof;

import java.util.OptionalDouble;
import runtrue.ifc.Element;

/**
 * One member of a support line, seen in the plane's frame.
 *
 * @param uFrom lesser end across the fall, metres
 * @param vFrom position of the section's centre at that end
 * @param contact highest point of the member along the plane's normal: w of its contact face, negative below the skin
 * @param flange width of the section along the fall, metres
 * @param depth of the section square to the plane, metres
 */
public record SupportPiece(
        Element element,
        SupportEvidence evidence,
        double uFrom,
        double vFrom,
        double uTo,
        double vTo,
        double contact,
        double flange,
        double depth,
        OptionalDouble thickness) {}

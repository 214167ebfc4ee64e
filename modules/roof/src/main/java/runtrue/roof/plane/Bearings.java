package runtrue.roof.plane;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.roof.PlaneFrame;
import runtrue.roof.ReadElement;

/** Directions in plan, clockwise from the model's +Y, radians; and the order in which a plane names its elements. */
public final class Bearings {
    /** Sides whose outward way lies within a right angle of this one are named first: few buildings stand askew so. */
    private static final Vector3D FIRST = Vector3D.of(Math.sin(Math.toRadians(100)), Math.cos(Math.toRadians(100)), 0);

    private Bearings() {}

    /** The way in which water runs off a plane. */
    public static double downslope(PlaneFrame frame) {
        return turn(Math.atan2(-frame.up().getX(), -frame.up().getY()));
    }

    /** An angle in 0 to 2 pi; a hair below the full turn is 0, so that north is not both 0 and 360 degrees. */
    public static double turn(double angle) {
        double turned = angle % (2 * Math.PI);
        double positive = turned < 0 ? turned + 2 * Math.PI : turned;
        return 2 * Math.PI - positive < 1e-9 ? 0 : positive;
    }

    /** Of two eaves alike, whether the one that lies at the start of a level way over the roof is the first. */
    public static boolean isNamedFirst(Vector3D way) {
        return way.dot(FIRST) < 0;
    }

    /** By GlobalId, file and instance. */
    public static List<ReadElement> ordered(Collection<ReadElement> elements) {
        return elements.stream()
                .sorted(Comparator.comparing((ReadElement e) -> e.element().globalId())
                        .thenComparing(e -> e.element().file())
                        .thenComparingInt(e -> e.element().stepId()))
                .toList();
    }
}

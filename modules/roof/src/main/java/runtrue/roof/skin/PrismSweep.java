package runtrue.roof.skin;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.shape.Face;
import runtrue.shape.Sweep;

/** Recognises a body given as faces as a prism: the sweep that it would have been written as, had it been written so. */
final class PrismSweep {
    /** Fewer corners make no ribs. */
    private static final int LEAST_CORNERS = 8;

    private PrismSweep() {}

    /**
     * The sweep from one end face to the other: two like faces look opposite ways and all others run along.
     *
     * @param angle within which directions are the same, radians
     */
    static Optional<Sweep> of(List<Face> faces, double angle) {
        return faces.stream()
                .filter(f -> f.outline().size() >= LEAST_CORNERS && f.holes().isEmpty())
                .max(Comparator.comparingInt(f -> f.outline().size()))
                .flatMap(end -> from(end, faces, angle));
    }

    private static Optional<Sweep> from(Face end, List<Face> faces, double angle) {
        Vector3D in = end.normal().negate();
        Face other = null;
        for (Face face : faces) {
            double cosine = face.normal().dot(in);
            boolean along = Math.abs(cosine) < Math.sin(angle);
            if (!along && cosine > Math.cos(angle) && other == null) {
                other = face;
            } else if (!along && !face.equals(end)) {
                return Optional.empty();
            }
        }
        if (other == null || other.outline().size() != end.outline().size()) {
            return Optional.empty();
        }
        double length = other.outline().get(0).subtract(end.outline().get(0)).dot(in);
        return length > 0 ? Optional.of(new Sweep("", end.outline(), in.multiply(length))) : Optional.empty();
    }
}

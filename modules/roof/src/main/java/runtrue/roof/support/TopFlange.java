package runtrue.roof.support;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.roof.PlaneFrame;
import runtrue.roof.RoofTolerance;
import runtrue.shape.Face;

/**
 * The upper face of a member across the fall, that clips are screwed to, and what lies under it.
 *
 * @param width along the fall, metres
 * @param thickness of the metal or timber under it, down to the next face that looks down, metres; empty where none does
 */
record TopFlange(double width, OptionalDouble thickness) {
    /** A face within about ten degrees of the plane is one that a clip sits on. */
    private static final double PARALLEL = Math.cos(Math.toRadians(10));

    /** Rolled and folded corners are rounded: their flats lie this little below the highest line. */
    private static final double SAME_FACE = RoofTolerance.CONTACT.si();

    /** Faces of one triangulated flange differ by rounding. */
    private static final double LEAST_THICKNESS = 1e-4;

    /**
     * Measured on the member's faces.
     *
     * @param slope change of v for each metre of u
     * @return empty where no face looks up there
     */
    static Optional<TopFlange> of(List<Face> faces, PlaneFrame frame, double slope) {
        ToDoubleFunction<Vector3D> along = p -> frame.v(p) - slope * frame.u(p);
        double top = faces.stream()
                .flatMap(f -> f.outline().stream())
                .mapToDouble(frame::w)
                .max()
                .orElse(0);
        List<Face> upper = faces.stream()
                .filter(f -> f.normal().dot(frame.normal()) > PARALLEL && level(f, frame) >= top - SAME_FACE)
                .toList();
        if (upper.isEmpty()) {
            return Optional.empty();
        }
        double from = least(upper, along);
        double to = -least(upper, p -> -along.applyAsDouble(p));
        double level = upper.stream().mapToDouble(f -> level(f, frame)).max().orElse(top);
        OptionalDouble under = faces.stream()
                .filter(f -> f.normal().dot(frame.normal()) < -PARALLEL && shares(f, along, from, to))
                .mapToDouble(f -> level - level(f, frame))
                .filter(t -> t > LEAST_THICKNESS)
                .min();
        return Optional.of(new TopFlange(to - from, under));
    }

    /** Whether a face lies under more than a third of the flange: a lip that is turned in does not. */
    private static boolean shares(Face face, ToDoubleFunction<Vector3D> along, double from, double to) {
        double low = Math.max(from, least(List.of(face), along));
        double high = Math.min(to, -least(List.of(face), p -> -along.applyAsDouble(p)));
        return high - low > (to - from) / 3;
    }

    private static double least(List<Face> faces, ToDoubleFunction<Vector3D> coordinate) {
        return faces.stream()
                .flatMap(f -> f.outline().stream())
                .mapToDouble(coordinate)
                .min()
                .orElse(0);
    }

    /** Mean w of its corners. */
    private static double level(Face face, PlaneFrame frame) {
        return face.outline().stream().mapToDouble(frame::w).average().orElse(0);
    }
}

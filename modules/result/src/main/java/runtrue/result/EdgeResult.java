package runtrue.result;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One straight edge of the roof.
 *
 * @param kind for example {@code ridge} or {@code box gutter}
 * @param planes ids of the one or two planes that share it
 * @param angleDegrees between the planes' normals; absent for edges of one plane
 * @param stepMetres from the one plane up to the other, square to them; absent for all but steps
 */
public record EdgeResult(
        String id,
        String kind,
        List<String> planes,
        Point from,
        Point to,
        double lengthMetres,
        OptionalDouble angleDegrees,
        OptionalDouble stepMetres) {
    public EdgeResult {
        planes = List.copyOf(planes);
    }
}

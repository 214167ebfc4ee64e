package runtrue.roof.above;

import java.util.List;
import java.util.Map;

/**
 * What stands above a roof's planes besides other planes.
 *
 * @param walls how high what planes end against rises above them, metres, by id of the abutment; one that is missing is
 *     not known
 * @param fixtures what is fixed on planes
 */
public record Above(Map<String, Double> walls, List<Fixture> fixtures) {
    /** Nothing is known. */
    public static final Above NONE = new Above(Map.of(), List.of());

    public Above {
        walls = Map.copyOf(walls);
        fixtures = List.copyOf(fixtures);
    }
}

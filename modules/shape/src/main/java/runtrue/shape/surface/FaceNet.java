package runtrue.shape.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.function.LongConsumer;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.Fineness;
import runtrue.shape.mesh.Points;
import runtrue.shape.surface.Unrolling.Laid;

/**
 * Faces on curved surfaces as triangles that keep the chord tolerance: start with {@link #faces}. The corners of the loops
 * stay what they are, so that neighbouring faces meet in them; all other corners are new and lie on the surface.
 */
public final class FaceNet {
    /** A surface is cut into no more rows than this one way. */
    static final int MOST_ROWS = 20_000;

    /** Loops of a curved face with more corners than this in all are no building's; the time to cut it takes their square. */
    private static final int MOST_CORNERS = 20_000;

    /** Places of a file coincide within so many points' tolerances: they are rounded each by itself. */
    public static final int SAME_POINTS = 100;

    private final Points points;
    private final AffineTransformMatrix3D frame;
    private final AffineTransformMatrix3D back;
    private final Fineness fineness;
    private final LongConsumer budget;

    /**
     * @param points of the body, in metres; new ones are added
     * @param frame from file units and the surface's axes to those points
     * @param fineness in file units
     * @param budget is told of faces before they are made, and throws when there are too many
     */
    public FaceNet(Points points, AffineTransformMatrix3D frame, Fineness fineness, LongConsumer budget) {
        this.points = points;
        this.frame = frame;
        this.back = frame.inverse();
        this.fineness = fineness;
        this.budget = budget;
    }

    /**
     * The triangles of a face, each a loop of point numbers.
     *
     * @param loops numbers of points, the face to their left seen against the surface's own normal; none at all for the
     *     whole of a closed surface
     * @param sameSense whether the triangles are to look where the surface's own normal does
     * @throws ShapeException with the reason alone, for the caller to name the face
     */
    public List<int[][]> faces(Surface surface, List<int[]> loops, boolean sameSense) {
        Unrolling unrolling = new Unrolling(surface, fineness);
        List<Laid> laid = new ArrayList<>(loops.size());
        int corners = 0;
        for (int[] loop : loops) {
            corners += loop.length;
            if (corners > MOST_CORNERS) {
                throw new ShapeException("its loops have more than " + MOST_CORNERS
                        + " corners and chords; check its size and the length unit");
            }
        }
        for (int[] loop : loops) {
            budget.accept(loop.length);
            Vector3D[] places = new Vector3D[loop.length];
            for (int i = 0; i < loop.length; i++) {
                places[i] = back.apply(Vector3D.of(points.x(loop[i]), points.y(loop[i]), points.z(loop[i])));
            }
            laid.add(unrolling.laid(loop, places));
        }
        List<List<Node>> rings = new Rings(surface, fineness, place -> newPoint(surface, place)).of(laid);
        return facets(surface, rings, sameSense);
    }

    /**
     * The triangles of a surface between parameters.
     *
     * @param window {@code u0, u1, v0, v1}; NaN for a range that the surface itself ends
     */
    public List<int[][]> whole(Surface surface, double[] window) {
        Window given = new Window(window[0], window[1], window[2], window[3]);
        List<Node> ring = new Rings(surface, fineness, place -> newPoint(surface, place)).whole(given);
        return facets(surface, List.of(ring), true);
    }

    private int newPoint(Surface surface, Place place) {
        Vector3D p = frame.apply(surface.at(place.u(), place.v()));
        return points.add(p.getX(), p.getY(), p.getZ());
    }

    private List<int[][]> facets(Surface surface, List<List<Node>> rings, boolean sameSense) {
        Facets facets = new Facets(surface, rings, fineness, budget);
        int[] corners = facets.corners(place -> newPoint(surface, place));
        boolean turn = sameSense == frame.determinant() < 0;
        List<int[][]> result = new ArrayList<>(corners.length / 3);
        for (int i = 0; i < corners.length; i += 3) {
            int a = corners[i];
            int b = corners[turn ? i + 2 : i + 1];
            int c = corners[turn ? i + 1 : i + 2];
            if (a != b && b != c && c != a) {
                result.add(new int[][] {{a, b, c}});
            }
        }
        return result;
    }
}

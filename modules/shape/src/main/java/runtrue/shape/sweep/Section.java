package runtrue.shape.sweep;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiFunction;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.shape.ShapeException;
import runtrue.shape.profile.Profile;
import runtrue.shape.profile.Ring;

/** The corners of a profile, ring after ring. Immutable; the arrays handed out are only read. */
final class Section {
    private final int[] rings;
    private final double[] xy;

    private Section(int[] rings, double[] xy) {
        this.rings = rings;
        this.xy = xy;
    }

    /** Number of corners of the outline (counter-clockwise) and of each void (clockwise). */
    int[] rings() {
        return rings;
    }

    /** Two coordinates a corner. */
    double[] xy() {
        return xy;
    }

    boolean sameAs(Section other) {
        return Arrays.equals(rings, other.rings) && Arrays.equals(xy, other.xy);
    }

    static Section of(Profile profile) {
        List<Ring> all = new ArrayList<>(List.of(profile.outer()));
        all.addAll(profile.voids());
        int[] rings = all.stream().mapToInt(Ring::size).toArray();
        double[] xy = new double[2 * Arrays.stream(rings).sum()];
        int n = 0;
        for (Ring ring : all) {
            for (int i = 0; i < ring.size(); i++) {
                xy[n++] = ring.x(i);
                xy[n++] = ring.y(i);
            }
        }
        return new Section(rings, xy);
    }

    /** Corners in space, by a function of their coordinates. */
    List<Vector3D> placed(BiFunction<Double, Double, Vector3D> place) {
        List<Vector3D> points = new ArrayList<>(xy.length / 2);
        for (int i = 0; i < xy.length; i += 2) {
            points.add(place.apply(xy[i], xy[i + 1]));
        }
        return points;
    }

    /** Greatest distance of a corner from the profile's origin. */
    double reach() {
        double reach = 0;
        for (int i = 0; i < xy.length; i += 2) {
            reach = Math.max(reach, Math.hypot(xy[i], xy[i + 1]));
        }
        return reach;
    }

    Section moved(double dx, double dy) {
        double[] moved = xy.clone();
        for (int i = 0; i < moved.length; i += 2) {
            moved[i] += dx;
            moved[i + 1] += dy;
        }
        return new Section(rings, moved);
    }

    /** Between this section (0) and another of like corners (1). */
    Section towards(Section other, double share) {
        double[] between = new double[xy.length];
        for (int i = 0; i < xy.length; i++) {
            between[i] = share == 1 ? other.xy[i] : xy[i] + share * (other.xy[i] - xy[i]);
        }
        return new Section(rings, between);
    }

    /**
     * Sections with like corners. Where the numbers differ (circles of two sizes have), each gets the other's corners as
     * well, at the same share of its outline's length from the first corner.
     */
    static List<Section> matched(List<Section> sections, String label) {
        int rings = sections.get(0).rings.length;
        for (Section section : sections) {
            if (section.rings.length != rings) {
                throw new ShapeException("The cross sections of " + label
                        + " differ in their number of voids; export it as a faceted body.");
            }
        }
        boolean alike = sections.stream().allMatch(s -> Arrays.equals(s.rings, sections.get(0).rings));
        if (alike) {
            return sections;
        }
        List<double[]> shares = new ArrayList<>();
        for (int r = 0; r < rings; r++) {
            int ring = r;
            shares.add(sections.stream()
                    .flatMapToDouble(s -> Arrays.stream(s.shares(ring)))
                    .map(share -> Math.rint(share * 1e9) / 1e9)
                    .sorted()
                    .distinct()
                    .toArray());
        }
        return sections.stream().map(s -> s.at(shares)).toList();
    }

    /** For each corner of a ring its share of the way round, from 0. */
    private double[] shares(int ring) {
        int first = first(ring);
        int n = rings[ring];
        double[] way = new double[n];
        double length = 0;
        for (int i = 0; i < n; i++) {
            way[i] = length;
            length += edge(first, n, i);
        }
        for (int i = 0; i < n; i++) {
            way[i] /= length;
        }
        return way;
    }

    private int first(int ring) {
        int first = 0;
        for (int r = 0; r < ring; r++) {
            first += rings[r];
        }
        return first;
    }

    private double edge(int first, int n, int i) {
        int a = 2 * (first + i);
        int b = 2 * (first + (i + 1) % n);
        return Math.hypot(xy[b] - xy[a], xy[b + 1] - xy[a + 1]);
    }

    private Section at(List<double[]> shares) {
        int[] counts = shares.stream().mapToInt(s -> s.length).toArray();
        double[] result = new double[2 * Arrays.stream(counts).sum()];
        int n = 0;
        for (int ring = 0; ring < rings.length; ring++) {
            double[] own = shares(ring);
            int first = first(ring);
            int edge = 0;
            for (double share : shares.get(ring)) {
                while (edge + 1 < own.length && own[edge + 1] <= share + 1e-9) {
                    edge++;
                }
                double end = edge + 1 < own.length ? own[edge + 1] : 1;
                double part = Math.max(0, (share - own[edge]) / (end - own[edge]));
                int a = 2 * (first + edge);
                int b = 2 * (first + (edge + 1) % own.length);
                result[n++] = xy[a] + part * (xy[b] - xy[a]);
                result[n++] = xy[a + 1] + part * (xy[b + 1] - xy[a + 1]);
            }
        }
        return new Section(counts, result);
    }
}

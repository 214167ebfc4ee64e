package runtrue.shape.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Outward normals for closed shells, whatever way the file's faces look. Faces that share an edge are made to agree, then
 * each connected closed shell is turned to enclose a positive volume. A shell that lies within another and that the file
 * turned the other way is a void and keeps looking into the hollow. Open shells stay as the file has them.
 */
final class Orientation {
    /** With more shells than this (a bag of bolts), none is tested for being a void of another. */
    private static final int MOST_SHELLS_FOR_VOIDS = 200;

    private final double[] xyz;
    private final int[][][] faces;
    private final EdgeMap edges;
    private final boolean[] turn;
    private final int[] shellOf;
    private final List<Shell> shells = new ArrayList<>();

    /** One connected shell; the volume has the sign of the file's orientation (of most of its area). */
    private static final class Shell {
        final int[] members;
        final boolean closed;
        final double volume;
        final Box box;

        Shell(int[] members, boolean closed, double volume, Box box) {
            this.members = members;
            this.closed = closed;
            this.volume = volume;
            this.box = box;
        }
    }

    private Orientation(double[] xyz, int[][][] faces, EdgeMap edges) {
        this.xyz = xyz;
        this.faces = faces;
        this.edges = edges;
        this.turn = new boolean[faces.length];
        this.shellOf = new int[faces.length];
    }

    /** The faces with their loops turned where needed. */
    static int[][][] outward(double[] xyz, int[][][] faces, EdgeMap edges) {
        return new Orientation(xyz, faces, edges).run();
    }

    private int[][][] run() {
        Arrays.fill(shellOf, -1);
        int[] queue = new int[faces.length];
        for (int f = 0; f < faces.length; f++) {
            if (shellOf[f] < 0) {
                shells.add(grow(f, queue));
            }
        }
        boolean[] flip = new boolean[shells.size()];
        for (int s = 0; s < flip.length; s++) {
            Shell shell = shells.get(s);
            flip[s] = shell.closed && (shell.volume < 0) != isVoid(s);
        }
        int[][][] result = faces.clone();
        for (int f = 0; f < faces.length; f++) {
            if (turn[f] != flip[shellOf[f]]) {
                result[f] = Loops.turned(faces[f]);
            }
        }
        return result;
    }

    private Shell grow(int seed, int[] queue) {
        int number = shells.size();
        int size = 0;
        boolean closed = true;
        boolean agree = true;
        queue[size++] = seed;
        shellOf[seed] = number;
        for (int i = 0; i < size; i++) {
            int f = queue[i];
            for (int e = edges.start[f]; e < edges.start[f + 1]; e++) {
                int other = edges.partner(e);
                if (other < 0) {
                    closed &= edges.count[edges.leader[e]] % 2 == 0;
                    continue;
                }
                int g = edges.face[other];
                boolean sameWay = edges.from[e] == edges.from[other];
                if (shellOf[g] < 0) {
                    shellOf[g] = number;
                    turn[g] = turn[f] != sameWay;
                    queue[size++] = g;
                } else if (turn[g] != (turn[f] != sameWay)) {
                    agree = false;
                }
            }
        }
        return shell(Arrays.copyOf(queue, size), closed && agree);
    }

    private Shell shell(int[] members, boolean closed) {
        Box box = new Box();
        double kept = 0;
        double turned = 0;
        double sixfold = 0;
        int origin = faces[members[0]][0][0];
        for (int f : members) {
            double area = FacePlane.area(xyz, faces[f]);
            double cone = Volumes.sixfold(xyz, faces[f], origin);
            kept += turn[f] ? 0 : area;
            turned += turn[f] ? area : 0;
            sixfold += turn[f] ? -cone : cone;
            box.add(xyz, faces[f][0]);
        }
        if (!closed) {
            for (int f : members) {
                turn[f] = false;
            }
        } else if (turned > kept) {
            for (int f : members) {
                turn[f] = !turn[f];
            }
            sixfold = -sixfold;
        }
        return new Shell(members, closed, sixfold / 6, box);
    }

    private boolean isVoid(int s) {
        Shell shell = shells.get(s);
        if (shells.size() == 1 || shells.size() > MOST_SHELLS_FOR_VOIDS) {
            return false;
        }
        int depth = 0;
        boolean opposed = false;
        for (int i = 0; i < shells.size(); i++) {
            Shell other = shells.get(i);
            if (i != s && other.closed && other.box.holds(shell.box) && holds(other, shell)) {
                depth++;
                opposed |= other.volume < 0 != shell.volume < 0;
            }
        }
        return depth % 2 == 1 && opposed;
    }

    /** Whether a corner of the inner shell lies within the outer one, by counting faces above it. */
    private boolean holds(Shell outer, Shell inner) {
        int corner = faces[inner.members[0]][0][0];
        double x = xyz[3 * corner];
        double y = xyz[3 * corner + 1];
        double z = xyz[3 * corner + 2];
        boolean inside = false;
        for (int f : outer.members) {
            FacePlane plane = FacePlane.of(xyz, faces[f][0]);
            if (plane.nz() == 0 || (plane.offset() - plane.nx() * x - plane.ny() * y) / plane.nz() <= z) {
                continue;
            }
            Flat fromAbove = Flat.along(new FacePlane(0, 0, 1, 0));
            for (int[] loop : faces[f]) {
                inside ^= fromAbove.within(xyz, loop, x, y);
            }
        }
        return inside;
    }
}

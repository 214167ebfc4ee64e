package runtrue.roof.edge;

import runtrue.roof.EdgeKind;
import runtrue.roof.RoofTolerance;

/** Names edges by how water runs at them; common practice, no source. */
final class EdgeKinds {
    /** An edge that rises less than this for each metre is level: one degree. */
    private static final double LEVEL = Math.sin(RoofTolerance.LEVEL_EDGE.si());

    /** Water that runs at a side within about 20 degrees runs along it. */
    private static final double ALONGSIDE = Math.sin(RoofTolerance.VERGE_ALONG.si());

    /** Water neither gathers nor parts at a slighter fold, and a sheet lies over it as over a joint. */
    private static final double SLIGHT = Math.cos(RoofTolerance.PLANES_MEET.si());

    private EdgeKinds() {}

    /** An edge with nothing beyond. */
    static EdgeKind outer(Side side) {
        double flow = side.flow();
        if (flow > ALONGSIDE) {
            return EdgeKind.EAVE;
        }
        return flow < -ALONGSIDE ? EdgeKind.HEAD : EdgeKind.VERGE;
    }

    /** An edge that two planes share. */
    static EdgeKind shared(Side a, Side b) {
        boolean level = a.slope() < LEVEL && b.slope() < LEVEL;
        boolean away = a.flow() < 0 && b.flow() < 0;
        boolean towards = a.flow() > 0 && b.flow() > 0;
        if (level) {
            if (away) {
                return EdgeKind.RIDGE;
            }
            return towards ? EdgeKind.BOX_GUTTER : EdgeKind.PITCH_CHANGE;
        }
        if (a.frame().normal().dot(b.frame().normal()) > SLIGHT) {
            return EdgeKind.PITCH_CHANGE;
        }
        return isConvex(a, b) ? EdgeKind.HIP : EdgeKind.VALLEY;
    }

    /** Whether the roof folds downwards at the edge, as at a hip: each plane lies below the other's extension. */
    private static boolean isConvex(Side a, Side b) {
        return a.out().dot(b.frame().normal()) > 0;
    }
}

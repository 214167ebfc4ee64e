package runtrue.roof.plane;

import java.util.List;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.PlaneFrame;
import runtrue.roof.skin.SkinFace;

/** A plane before it has a name: frame, outline with penetrations as holes (u, v, metres), and the faces it was made of. */
record JoinedPlane(PlaneFrame frame, Polygon outline, List<SkinFace> faces) {
    JoinedPlane {
        faces = List.copyOf(faces);
    }
}

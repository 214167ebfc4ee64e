package runtrue.bill;

import java.util.List;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.PlaneLayout;
import runtrue.roof.Roof;
import runtrue.roof.SetOut;
import runtrue.rules.buildup.BuildUps;

/** The roof of {@link BillsTest} for tests in other packages. */
public final class TwoPlanes {
    private TwoPlanes() {}

    public static PlaneLayout plane(String id, double width, double run, int lines) {
        return BillsTest.plane(id, width, run, lines);
    }

    public static PlaneLayout plane(String id, Polygon outline, SetOut setOut) {
        return BillsTest.plane(id, outline, setOut, 3);
    }

    public static Roof roof(PlaneLayout... planes) {
        return BillsTest.roof(planes);
    }

    /** By the single-skin build-up of the program. */
    public static Bill bill(Roof roof) {
        return Bills.of(roof, List.of(), BillsTest.SYSTEM, BillsTest.SETTINGS, BuildUps.bundled("single-skin"));
    }
}

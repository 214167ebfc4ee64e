package runtrue.wind.asnzs;

import java.util.List;
import runtrue.wind.Certainty;
import runtrue.wind.data.DataFile;
import runtrue.wind.data.DataRow;

/**
 * A local pressure factor Kl of roofs under suction, table 5.6.
 *
 * @param place edge, corner or ridge
 * @param areaShare of a squared up to which it holds
 * @param reachShare of a, how far from the edge it holds
 * @param pitchFrom degrees
 * @param pitchBelow degrees
 */
record LocalFactor(
        String zone,
        String place,
        double factor,
        double areaShare,
        double reachShare,
        double pitchFrom,
        double pitchBelow,
        Certainty certainty) {
    /** All of them, the greatest first. */
    static List<LocalFactor> all() {
        return DataFile.bundled("asnzs1170-2-local-factors.csv").stream()
                .map(LocalFactor::of)
                .toList();
    }

    private static LocalFactor of(DataRow row) {
        return new LocalFactor(
                row.text("zone"),
                row.text("place"),
                row.number("factor"),
                row.number("area_share"),
                row.number("reach_share"),
                row.number("pitch_from"),
                row.number("pitch_below"),
                row.certainty("status"));
    }

    boolean suits(double pitchDegrees) {
        return pitchDegrees >= pitchFrom - 1e-9 && pitchDegrees < pitchBelow - 1e-9;
    }

    boolean suits(double area, double a) {
        return area <= areaShare * a * a + 1e-9;
    }
}

package runtrue.wind.asce;

import java.util.List;
import java.util.Optional;
import runtrue.wind.Certainty;
import runtrue.wind.WindSource;
import runtrue.wind.data.DataFile;
import runtrue.wind.data.DataRow;
import runtrue.wind.site.AsceSite;

/** Coefficients GCp of roofs by edition, form, pitch and zone, as far as the data at hand go. */
final class GcpTables {
    private static final List<DataRow> ROWS = DataFile.bundled("asce7-gcp.csv");

    /** Where the last figure for hips ends and the next begins, degrees; between them lies a straight line. */
    private static final double HIP_FROM = 27;

    private static final double HIP_TO = 45;

    /** A coefficient with where it comes from. */
    record Gcp(GcpCurve near, Optional<GcpCurve> far, double share, String edition) {
        double at(double area) {
            double value = near.at(area);
            return far.map(f -> value + (f.at(area) - value) * share).orElse(value);
        }

        WindSource source() {
            Certainty certainty =
                    far.map(f -> f.certainty().lessSure(near.certainty())).orElse(near.certainty());
            String figure = "figure " + near.figure()
                    + far.map(f -> " and " + f.figure() + ", straight between them")
                            .orElse("");
            return new WindSource("ASCE " + edition, figure, certainty, near.note());
        }
    }

    private GcpTables() {}

    /**
     * Coefficient of a zone.
     *
     * @param form low-slope, gable, hip or monoslope
     * @param pitch degrees
     * @param sign - for suction, + for pressing, where one curve holds for all zones
     */
    static Optional<Gcp> find(AsceSite.Edition edition, String form, double pitch, String zone, String sign) {
        if (form.equals("hip") && pitch > HIP_FROM && pitch < HIP_TO) {
            double share = (pitch - HIP_FROM) / (HIP_TO - HIP_FROM);
            Optional<GcpCurve> near = curve(edition, form, HIP_FROM, zone, sign);
            Optional<GcpCurve> far = curve(edition, form, HIP_TO, zone, sign);
            return near.isEmpty() || far.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Gcp(near.get(), far, share, edition.label()));
        }
        return curve(edition, form, pitch, zone, sign).map(c -> new Gcp(c, Optional.empty(), 0, edition.label()));
    }

    private static Optional<GcpCurve> curve(
            AsceSite.Edition edition, String form, double pitch, String zone, String sign) {
        return ROWS.stream()
                .filter(r -> r.text("edition").equals(edition.label())
                        && r.text("form").equals(form))
                .filter(r -> r.text("sign").equals(sign))
                .filter(r -> r.text("zone").equals("all") || r.text("zone").equals(zone))
                .filter(r -> within(pitch, r.number("from"), r.number("to")))
                .findFirst()
                .map(GcpCurve::of);
    }

    private static boolean within(double pitch, double from, double to) {
        double room = 1e-9;
        return from == to ? Math.abs(pitch - to) < room : pitch > from + room && pitch < to + room;
    }
}

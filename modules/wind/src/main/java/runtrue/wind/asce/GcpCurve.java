package runtrue.wind.asce;

import runtrue.wind.Certainty;
import runtrue.wind.data.DataRow;

/** GCp of one zone by effective wind area: constant below and above two areas, by log10 of the area between them. */
record GcpCurve(
        String figure, double areaLow, double low, double areaHigh, double high, Certainty certainty, String note) {
    private static final double SQUARE_METRES_A_SQUARE_FOOT =
            VelocityPressure.METRES_A_FOOT * VelocityPressure.METRES_A_FOOT;

    static GcpCurve of(DataRow row) {
        return new GcpCurve(
                row.text("figure"),
                row.number("area_low"),
                row.number("value_low"),
                row.number("area_high"),
                row.number("value_high"),
                row.certainty("status"),
                row.optional("note"));
    }

    /** For an effective wind area in square metres. */
    double at(double area) {
        double feet = Math.min(areaHigh, Math.max(areaLow, area / SQUARE_METRES_A_SQUARE_FOOT));
        double share = Math.log10(feet / areaLow) / Math.log10(areaHigh / areaLow);
        return low + (high - low) * share;
    }
}

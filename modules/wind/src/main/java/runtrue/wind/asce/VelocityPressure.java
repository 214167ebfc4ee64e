package runtrue.wind.asce;

import java.util.List;
import java.util.stream.Collectors;
import runtrue.wind.WindException;
import runtrue.wind.WindSource;
import runtrue.wind.data.DataFile;
import runtrue.wind.data.DataRow;
import runtrue.wind.site.AsceSite;

/**
 * Velocity pressure by ASCE 7: qz = 0.00256 Kz Kzt Kd Ke V^2 in psf with V in mph (26.10-1). From 7-22 on Kd stands in the
 * formula of the pressure instead; the product, which this is, stays the same.
 *
 * @param exposureFactor Kz = factor (max(z, 15 ft) / zg)^(2 / alpha)
 * @param pascals qz with Kd
 */
record VelocityPressure(double exposureFactor, double pascals, WindSource source) {
    static final double METRES_A_FOOT = 0.3048;

    static final double METRES_A_SECOND_A_MPH = 0.44704;

    static final double PASCALS_A_PSF = 47.880259;

    private static final String FILE = "asce7-exposure.csv";

    private static final double LEAST_HEIGHT_FT = 15;

    static VelocityPressure at(double height, AsceSite site) {
        List<DataRow> edition = DataFile.bundled(FILE).stream()
                .filter(r -> r.text("edition").equals(site.edition().label()))
                .toList();
        DataRow row = edition.stream()
                .filter(r -> r.text("exposure").equals(site.exposure()))
                .findFirst()
                .orElseThrow(() -> new WindException("The exposure is '" + site.exposure() + "'; known are "
                        + edition.stream().map(r -> r.text("exposure")).collect(Collectors.joining(", ")) + "."));
        double feet = Math.max(height / METRES_A_FOOT, LEAST_HEIGHT_FT);
        double kz = row.number("factor") * Math.pow(feet / row.number("zg_ft"), 2 / row.number("alpha"));
        return of(kz, site, new WindSource(site.standard(), "table 26.11-1", row.certainty("status"), ""));
    }

    static VelocityPressure of(double kz, AsceSite site, WindSource source) {
        double mph = site.velocity() / METRES_A_SECOND_A_MPH;
        double psf = 0.00256 * kz * site.topographic() * site.directionality() * site.elevation() * mph * mph;
        return new VelocityPressure(kz, psf * PASCALS_A_PSF, source);
    }
}

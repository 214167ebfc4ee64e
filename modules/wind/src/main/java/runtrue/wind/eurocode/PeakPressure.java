package runtrue.wind.eurocode;

import java.util.List;
import java.util.Locale;
import runtrue.wind.WindException;
import runtrue.wind.WindSource;
import runtrue.wind.site.EurocodeSite;

/**
 * Peak velocity pressure by EN 1991-1-4:2005+A1:2010, 4.2 to 4.5, and the steps to it.
 *
 * @param height z above ground, metres
 * @param basicVelocity vb = cdir cseason vb,0 (4.1), m/s
 * @param roughness cr(z) = kr ln(z / z0) (4.4), kr = 0.19 (z0 / 0.05)^0.07 (4.5); below zmin as at zmin
 * @param meanVelocity vm(z) = cr co vb (4.3), m/s
 * @param turbulence Iv(z) = kI / (co ln(z / z0)) (4.7); below zmin as at zmin
 * @param basicPressure qb = rho vb^2 / 2 (4.10), Pa
 * @param exposure ce = qp / qb (4.9)
 * @param peak qp(z) = (1 + 7 Iv) rho vm^2 / 2 (4.8), Pa
 */
public record PeakPressure(
        double height,
        double basicVelocity,
        double roughness,
        double meanVelocity,
        double turbulence,
        double basicPressure,
        double exposure,
        double peak) {
    /** The formulas hold up to here, metres. */
    private static final double GREATEST_HEIGHT = 200;

    /** z0 of terrain category II, that kr is counted from, metres. */
    private static final double REFERENCE_ROUGHNESS = 0.05;

    /**
     * At a height above ground.
     *
     * @throws WindException above 200 m, or for a terrain that the national parameters do not name
     */
    public static PeakPressure at(double height, EurocodeSite site) {
        if (!(height > 0 && height <= GREATEST_HEIGHT)) {
            throw new WindException(
                    "EN 1991-1-4 gives no velocity pressure at " + height + " m; its formulas hold up to 200 m.");
        }
        NationalParameters national = site.national();
        double z0 = national.roughness(site.terrain());
        double z = Math.max(height, national.leastHeight(site.terrain()));
        double logarithm = Math.log(z / z0);
        double vb = national.value("direction_factor") * national.value("season_factor") * site.fundamentalVelocity();
        double cr = 0.19 * Math.pow(z0 / REFERENCE_ROUGHNESS, 0.07) * logarithm;
        double vm = cr * site.orography() * vb;
        double iv = national.value("turbulence_factor") / (site.orography() * logarithm);
        double rho = national.value("air_density");
        double qb = rho * vb * vb / 2;
        double qp = (1 + 7 * iv) * rho * vm * vm / 2;
        return new PeakPressure(height, vb, cr, vm, iv, qb, qp / qb, qp);
    }

    /**
     * Factor on the velocity for another yearly probability of being exceeded than 0.02 (4.2), with K and n of the
     * national parameters.
     */
    public static double probabilityFactor(double probability, NationalParameters national) {
        if (!(probability > 0 && probability < 1)) {
            throw new WindException("The probability is " + probability + "; it has to be between 0 and 1.");
        }
        double k = national.value("probability_shape");
        double ratio = (1 - k * Math.log(-Math.log(1 - probability))) / (1 - k * Math.log(-Math.log(0.98)));
        return Math.pow(ratio, national.value("probability_exponent"));
    }

    String sentence() {
        return String.format(
                Locale.ROOT,
                "At %.2f m: vb %.1f m/s, cr %.3f, vm %.1f m/s, Iv %.3f, ce %.2f, peak velocity pressure %.0f Pa.",
                height,
                basicVelocity,
                roughness,
                meanVelocity,
                turbulence,
                exposure,
                peak);
    }

    static List<WindSource> sources(EurocodeSite site) {
        NationalParameters national = site.national();
        return List.of(
                national.source("air_density"),
                national.source("direction_factor"),
                national.source("season_factor"),
                national.source("turbulence_factor"),
                national.source(national.terrainKey(site.terrain(), "z0")),
                national.source(national.terrainKey(site.terrain(), "zmin")));
    }
}

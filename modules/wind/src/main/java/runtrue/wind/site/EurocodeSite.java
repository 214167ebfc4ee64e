package runtrue.wind.site;

import java.util.List;
import runtrue.wind.WindException;
import runtrue.wind.eurocode.CoefficientTables;
import runtrue.wind.eurocode.NationalParameters;

/**
 * A site by EN 1991-1-4.
 *
 * @param fundamentalVelocity vb,0 of the national annex, m/s
 * @param terrain category: 0, I, II, III or IV, or another that the national parameters name
 * @param orography factor co of the place, 1 on level ground
 * @param internal coefficients of internal pressure that may occur, the worst is taken; when empty those of the
 *     national parameters for a building whose openings are not known
 */
public record EurocodeSite(
        double fundamentalVelocity,
        String terrain,
        double orography,
        List<Double> internal,
        NationalParameters national,
        CoefficientTables coefficients)
        implements WindSite {
    public EurocodeSite {
        internal = List.copyOf(internal);
        if (!(fundamentalVelocity > 0)) {
            throw new WindException(
                    "The fundamental wind velocity is " + fundamentalVelocity + " m/s; it has to be above 0.");
        }
        if (!(orography > 0)) {
            throw new WindException(
                    "The orography factor is " + orography + "; it has to be above 0 and is 1 on level ground.");
        }
    }

    /** With all recommended values, on level ground, internal openings not known. */
    public static EurocodeSite recommended(double fundamentalVelocity, String terrain) {
        return new EurocodeSite(
                fundamentalVelocity,
                terrain,
                1,
                List.of(),
                NationalParameters.recommended(),
                CoefficientTables.recommended());
    }

    @Override
    public String standard() {
        return "EN 1991-1-4:2005+A1:2010";
    }
}

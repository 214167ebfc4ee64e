package runtrue.wind.site;

import java.util.OptionalDouble;
import runtrue.wind.WindException;

/**
 * A site by AS/NZS 1170.2. Regional wind speeds, multipliers and the coefficients of whole surfaces are not among the
 * data at hand: they come from the project.
 *
 * @param velocity design wind speed V des,theta at the height of the roof, m/s
 * @param external coefficient Cp,e of the upwind roof, normally below 0, times Ka Kc Kp; absent when not known
 * @param internalHigh highest Cp,i times Kc,i that may occur with suction outside
 */
public record AsNzsSite(Edition edition, double velocity, OptionalDouble external, double internalHigh)
        implements WindSite {
    /** Editions that the width a is known for. */
    public enum Edition {
        AS_NZS_2011("2011"),
        AS_NZS_2021("2021");

        private final String label;

        Edition(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    public AsNzsSite {
        if (!(velocity > 0)) {
            throw new WindException("The design wind speed is " + velocity + " m/s; it has to be above 0.");
        }
        if (external.isPresent() && external.getAsDouble() > 0) {
            throw new WindException("The external coefficient is " + external.getAsDouble()
                    + "; local factors for suction need one of 0 or below.");
        }
    }

    @Override
    public String standard() {
        return "AS/NZS 1170.2:" + edition.label();
    }
}

package runtrue.wind.site;

import runtrue.wind.WindException;

/**
 * A site by ASCE 7, components and cladding of low-rise buildings.
 *
 * @param velocity basic wind speed V for the risk category, m/s
 * @param exposure B, C or D
 * @param topographic Kzt, 1 on level ground
 * @param directionality Kd, 0.85 for components and cladding of buildings
 * @param elevation Ke, 1 may always be taken
 */
public record AsceSite(
        Edition edition,
        double velocity,
        String exposure,
        double topographic,
        double directionality,
        double elevation,
        Enclosure enclosure)
        implements WindSite {
    /** Editions that data are at hand for. */
    public enum Edition {
        ASCE_7_16("7-16"),
        ASCE_7_22("7-22");

        private final String label;

        Edition(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    /** How open the building is: GCpi of table 26.13-1, either sign (from memory). */
    public enum Enclosure {
        ENCLOSED(0.18),
        PARTIALLY_ENCLOSED(0.55);

        private final double internal;

        Enclosure(double internal) {
            this.internal = internal;
        }

        public double internal() {
            return internal;
        }
    }

    public AsceSite {
        if (!(velocity > 0 && topographic > 0 && directionality > 0 && elevation > 0)) {
            throw new WindException("ASCE 7: velocity, Kzt, Kd and Ke have to be above 0; they are " + velocity
                    + " m/s, " + topographic + ", " + directionality + " and " + elevation + ".");
        }
    }

    @Override
    public String standard() {
        return "ASCE " + edition.label();
    }
}

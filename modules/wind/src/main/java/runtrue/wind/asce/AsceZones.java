package runtrue.wind.asce;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import runtrue.wind.WindZone;
import runtrue.wind.form.RoofForm;
import runtrue.wind.form.WindRoof;
import runtrue.wind.form.WindSlope;
import runtrue.wind.plan.Partition;
import runtrue.wind.plan.PlanEdge;
import runtrue.wind.plan.PlanOutline;
import runtrue.wind.plan.Regions;
import runtrue.wind.plan.SlopeEdges;
import runtrue.wind.site.AsceSite;

/**
 * Zones of roofs for components and cladding. At low slope (to 7 degrees, figure 30.3-2A): 3 is an L at each outward
 * corner with legs of 0.6 h length and 0.2 h width, 2 the strip of 0.6 h, 1 to 1.2 h, 1' beyond. Gable and hip roofs of 7-22:
 * strips of width a along every eaves, rake, ridge and hip are 2, where two of them meet at an outward corner or a strip
 * along a ridge meets one along a rake is 3, the rest is 1.
 */
final class AsceZones {
    /** Up to this pitch the figure for low slopes holds, degrees. */
    static final double LOW_SLOPE = 7;

    /** Above this pitch monoslope roofs have figures of their own, degrees. */
    private static final double MONOSLOPE = 3;

    /** Up to this pitch h is that of the eaves, degrees. */
    private static final double EAVES_HEIGHT = 10;

    private final WindRoof roof;
    private final AsceSite.Edition edition;
    private final PlanOutline outline;

    AsceZones(WindRoof roof, AsceSite.Edition edition) {
        this.roof = roof;
        this.edition = edition;
        this.outline = PlanOutline.of(roof.outline());
    }

    /** h: mean roof height, that of the eaves to 10 degrees of pitch, metres. */
    static double height(WindRoof roof) {
        return roof.mainSlope().pitchDegrees() < EAVES_HEIGHT ? roof.eavesHeight() : roof.meanHeight();
    }

    /**
     * a = min(0.1 least plan dimension, 0.4 h), at least 0.04 of the dimension and 0.9 m (3 ft); fig. 4.3 of the
     * Structural Steel Designer's Handbook (2006) after ASCE 7-02.
     */
    static double width(double leastDimension, double height) {
        return Math.max(Math.min(0.1 * leastDimension, 0.4 * height), Math.max(0.04 * leastDimension, 0.9));
    }

    double width() {
        return width(outline.sides()[0], height(roof));
    }

    boolean rectangular() {
        double[] axis = outline.shortAxis();
        return outline.rectangular(axis[0], axis[1]);
    }

    /** Form by the names of the data file. */
    String form(WindSlope slope) {
        if (slope.pitchDegrees() <= (roof.form() == RoofForm.MONO_PITCH ? MONOSLOPE : LOW_SLOPE)) {
            return "low-slope";
        }
        return switch (roof.form()) {
            case HIPPED -> "hip";
            case MONO_PITCH -> "monoslope";
            case DUO_PITCH -> "gable";
            default -> "";
        };
    }

    /** Why the zones of a plane have no shape among the data at hand; empty when they have. */
    String missing(WindSlope slope) {
        String form = form(slope);
        if (form.isEmpty()) {
            return "a " + roof.form().words() + " above 7° of pitch has no figure among the data at hand.";
        }
        if (form.equals("monoslope")) {
            return "where the zones of a monoslope roof above 3° lie (2' and 3' at its high edge) is not among the data at hand.";
        }
        if (!form.equals("low-slope") && edition == AsceSite.Edition.ASCE_7_16) {
            return "the zones of gable and hip roofs of 7-16 (2e, 2n, 2r, 3e, 3r) are not among the data at hand.";
        }
        return "";
    }

    List<WindZone> zones(WindSlope slope) {
        if (!missing(slope).isEmpty()) {
            return List.of(WindZone.of(slope, "", "not zoned", slope.plan()));
        }
        if (form(slope).equals("low-slope")) {
            double h = height(roof);
            return new Partition()
                    .then("3", outline.corners(0.2 * h, 0.6 * h))
                    .then("2", outline.rim(0.6 * h))
                    .then("1", outline.rim(1.2 * h))
                    .zones(slope, "", "1'");
        }
        double a = width();
        List<Geometry> ridges = new ArrayList<>();
        for (PlanEdge edge : new SlopeEdges(outline).highEdges(roof, slope)) {
            ridges.add(edge.strip(a));
        }
        Geometry high = Regions.union(ridges);
        Geometry rakes = Regions.union(outline.edges().stream()
                .filter(e -> Math.abs(e.facing(slope.fallX(), slope.fallY())) < 0.5)
                .map(e -> e.strip(a))
                .toList());
        return new Partition()
                .then("3", outline.corners(a))
                .then("3", Regions.intersection(high, rakes))
                .then("2", outline.rim(a))
                .then("2", high)
                .zones(slope, "", "1");
    }
}

package runtrue.wind.form;

import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Polygon;
import runtrue.wind.WindException;

/**
 * The roof of one building.
 *
 * @param outline outer line of the roof in plan, metres; its openings count as no edges
 * @param slopes its planes, within the outline, none over another
 * @param eavesHeight lowest eaves above ground, metres; for a flat roof without its parapet
 * @param ridgeHeight highest line above ground, metres
 * @param eaves how the edges are made; matters for flat roofs
 */
public record WindRoof(
        String id,
        Polygon outline,
        RoofForm form,
        List<WindSlope> slopes,
        double eavesHeight,
        double ridgeHeight,
        EavesDetail eaves) {
    public WindRoof {
        slopes = List.copyOf(slopes);
        if (slopes.isEmpty()) {
            throw new WindException("Roof " + id + " has no planes.");
        }
        for (WindSlope slope : slopes) {
            if (form == RoofForm.FLAT && slope.pitchDegrees() > 5 + 1e-9) {
                throw new WindException("Roof " + id + " is told to be flat, but plane " + slope.id()
                        + " falls more than 5 degrees; name the form it has.");
            }
        }
        if (!(eavesHeight > 0 && ridgeHeight >= eavesHeight)) {
            throw new WindException("Roof " + id + ": eaves at " + eavesHeight + " m and ridge at " + ridgeHeight
                    + " m above ground; the eaves have to be above ground and the ridge no lower than they.");
        }
    }

    public double meanHeight() {
        return (eavesHeight + ridgeHeight) / 2;
    }

    /**
     * The plane of the largest true area, of equal ones the first by id: its fall sets the axes that wind directions are
     * counted from. Areas are compared in hundredths of a square metre, so that rounding turns no axes.
     */
    public WindSlope mainSlope() {
        return slopes.stream()
                .min(Comparator.comparingLong(
                                (WindSlope s) -> -Math.round(s.plan().getArea() * s.slopeFactor() * 100))
                        .thenComparing(WindSlope::id))
                .orElseThrow();
    }
}

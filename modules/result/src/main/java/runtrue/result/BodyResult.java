package runtrue.result;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Planes that belong to one roof, with the zones of that roof.
 *
 * @param planes ids
 * @param widthMetres short side of the least rectangle around its plan
 * @param lengthMetres its long side
 * @param winds what holds for the roof as a whole, one for each part that stands apart in plan; empty where no standard
 *     is used
 */
public record BodyResult(
        String id,
        List<String> planes,
        double widthMetres,
        double lengthMetres,
        double eaveLevelMetres,
        double ridgeLevelMetres,
        List<Zone> zones,
        List<Wind> winds) {
    public BodyResult {
        winds = List.copyOf(winds);
        planes = List.copyOf(planes);
        zones = List.copyOf(zones);
    }

    /**
     * A zone within one plane.
     *
     * @param kind {@code corner}, {@code edge} or {@code interior}: where it lies
     * @param name as the standard or the engineer names it; the kind where neither does
     * @param widthMetres of the strip in plan; 0 where it has no one width, as zones of standards
     * @param areaSquareMetres true area
     * @param tributaryMetres greatest length of sheet that one support carries within it; 0 when no support lies in it
     * @param uplift what the wind does there
     * @param regions outer rings and holes in world coordinates
     */
    public record Zone(
            String plane,
            String kind,
            String name,
            double widthMetres,
            double areaSquareMetres,
            double tributaryMetres,
            Uplift uplift,
            List<Region> regions) {
        public Zone {
            regions = List.copyOf(regions);
        }
    }

    /**
     * What the wind does on a zone; absent is what is not known, for the reason in {@code how}.
     *
     * @param suctionKilopascals away from the roof, without the load factor
     * @param pressingKilopascals on to the roof, without the load factor
     * @param loadFactor what the suction is multiplied by; 1 for given pressures
     * @param clipForceKilonewtons on the clip with the longest tributary length, load factor included
     * @param utilisation that force over the clip's resistance
     * @param spacingAllowedMetres greatest length of sheet on one support that overloads no clip
     * @param clipsPerSquareMetre that go with it
     * @param given whether the project's engineer gives the suction
     * @param standard that it is worked out by, or who gives it; empty when nobody does
     * @param source where the value stands and how it is known
     * @param how the figures it came from, or why it is not known
     */
    public record Uplift(
            OptionalDouble suctionKilopascals,
            OptionalDouble pressingKilopascals,
            OptionalDouble loadFactor,
            OptionalDouble clipForceKilonewtons,
            OptionalDouble utilisation,
            OptionalDouble spacingAllowedMetres,
            OptionalDouble clipsPerSquareMetre,
            boolean given,
            String standard,
            String source,
            String how) {}

    /**
     * What holds for a whole roof whose wind is worked out by a standard; sentences.
     *
     * @param standard with its edition
     * @param form of the roof
     * @param steps the figures that hold for all of it
     * @param assumptions what was taken for granted
     * @param notAvailable what could not be worked out and why
     * @param sources of the values, each with how it is known
     * @param caution what the figures do not replace
     */
    public record Wind(
            String standard,
            String form,
            List<String> steps,
            List<String> assumptions,
            List<String> notAvailable,
            List<String> sources,
            String caution) {
        public Wind {
            steps = List.copyOf(steps);
            assumptions = List.copyOf(assumptions);
            notAvailable = List.copyOf(notAvailable);
            sources = List.copyOf(sources);
        }
    }

    /** An outer ring with its holes; first points not repeated. */
    public record Region(List<Point> outline, List<List<Point>> holes) {
        public Region {
            outline = List.copyOf(outline);
            holes = holes.stream().map(List::copyOf).toList();
        }
    }
}

package runtrue.result;

import java.util.List;

/**
 * Planes that belong to one roof, with the zones of that roof.
 *
 * @param planes ids
 * @param widthMetres short side of the least rectangle around its plan
 * @param lengthMetres its long side
 */
public record BodyResult(
        String id,
        List<String> planes,
        double widthMetres,
        double lengthMetres,
        double eaveLevelMetres,
        double ridgeLevelMetres,
        List<Zone> zones) {
    public BodyResult {
        planes = List.copyOf(planes);
        zones = List.copyOf(zones);
    }

    /**
     * A corner, edge or interior zone within one plane.
     *
     * @param kind {@code corner}, {@code edge} or {@code interior}
     * @param widthMetres zone width in plan
     * @param areaSquareMetres true area
     * @param tributaryMetres greatest length of sheet that one support carries within it; 0 when no support lies in it
     * @param regions outer rings and holes in world coordinates
     */
    public record Zone(
            String plane,
            String kind,
            double widthMetres,
            double areaSquareMetres,
            double tributaryMetres,
            List<Region> regions) {
        public Zone {
            regions = List.copyOf(regions);
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

package runtrue.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.sheet.Cells;
import runtrue.roof.sheet.Cells.Cell;

/** Trapezoids against the general geometry library. */
class CellsProperties {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** A star around the origin: radii at even turns. */
    private static Polygon star(List<Double> radii) {
        Coordinate[] ring = new Coordinate[radii.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            double turn = 2 * Math.PI * (i % radii.size()) / radii.size() + 0.1;
            double r = radii.get(i % radii.size());
            ring[i] = new Coordinate(r * Math.cos(turn), r * Math.sin(turn));
        }
        ring[radii.size()] = ring[0].copy();
        return FACTORY.createPolygon(ring);
    }

    @Property(tries = 300)
    void cells_cover_a_polygon_exactly_once(
            @ForAll @Size(min = 3, max = 12) List<@DoubleRange(min = 1, max = 20) Double> radii) {
        Polygon polygon = star(radii);
        assertThat(Cells.of(polygon).stream().mapToDouble(Cell::area).sum()).isCloseTo(polygon.getArea(), within(1e-3));
    }

    @Property(tries = 300)
    void lengths_inside_are_those_of_the_intersection(
            @ForAll @Size(min = 3, max = 12) List<@DoubleRange(min = 1, max = 20) Double> radii,
            @ForAll @DoubleRange(min = -10, max = 10) double offset,
            @ForAll @DoubleRange(min = -0.8, max = 0.8) double slope) {
        Polygon polygon = star(radii);
        List<Cell> cells = Cells.ofShell(polygon);

        assertThat(Cells.lengthInsideAcross(cells, -9, 14, offset, slope))
                .isCloseTo(length(polygon, -9, offset - 9 * slope, 14, offset + 14 * slope), within(1e-3));
        assertThat(Cells.lengthInsideAlong(cells, offset, -9, 14))
                .isCloseTo(length(polygon, offset, -9, offset, 14), within(1e-3));
    }

    private static double length(Polygon polygon, double x0, double y0, double x1, double y1) {
        Geometry line = FACTORY.createLineString(new Coordinate[] {new Coordinate(x0, y0), new Coordinate(x1, y1)});
        return polygon.intersection(line).getLength();
    }
}

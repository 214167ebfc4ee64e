package runtrue.result;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A roof plane with its sheets and supports. Positions in the plane are u (across the fall, to the right looking up the
 * fall) and v (up the fall), metres from {@code frame.origin}.
 *
 * @param pitchDegrees of a curved plane the greatest along its arc
 * @param azimuthDegrees downslope direction, clockwise from the model's +Y; absent when level
 * @param azimuthTrueNorthDegrees the same from true north; absent when level or when the model states no true north
 * @param areaSquareMetres true area, penetrations off
 * @param planAreaSquareMetres projected to the ground, penetrations off
 * @param eaveLevelMetres lowest point, world Z
 * @param ridgeLevelMetres highest point, world Z
 * @param longestRunMetres longest sheet; 0 when there is none
 * @param thicknessMetres of the elements; absent for surfaces
 * @param gridPlace nearest grid lines to its centre; empty when there is no grid
 * @param outline outer ring in world coordinates, counter-clockwise seen from above the roof, first point not repeated
 * @param setOuts ways to set the sheets out, the one used among them
 * @param supports from the eave up; empty when none was found, {@code remarks} says why
 * @param bearing what carries the sheets, and how true
 * @param remarks how sure the plane and its layout are
 * @param curve of a curved plane, whose v runs along its arc; absent for flat ones
 */
public record PlaneResult(
        String id,
        String name,
        String building,
        String storey,
        double pitchDegrees,
        OptionalDouble azimuthDegrees,
        OptionalDouble azimuthTrueNorthDegrees,
        double areaSquareMetres,
        double grossAreaSquareMetres,
        double planAreaSquareMetres,
        double grossPlanAreaSquareMetres,
        double eaveLevelMetres,
        double ridgeLevelMetres,
        double longestRunMetres,
        OptionalDouble thicknessMetres,
        String gridPlace,
        Frame frame,
        List<Point> outline,
        List<Penetration> penetrations,
        List<ElementRef> elements,
        List<Sheet> sheets,
        List<SetOut> setOuts,
        List<SupportLine> supports,
        List<Span> spans,
        BearingResult bearing,
        List<String> remarks,
        Optional<Curve> curve) {
    public PlaneResult {
        outline = List.copyOf(outline);
        penetrations = List.copyOf(penetrations);
        elements = List.copyOf(elements);
        sheets = List.copyOf(sheets);
        setOuts = List.copyOf(setOuts);
        supports = List.copyOf(supports);
        spans = List.copyOf(spans);
        remarks = List.copyOf(remarks);
    }

    /** The plane's own axes in the world: unit vectors, right-handed; {@code normal} points out of the roof. */
    public record Frame(Point origin, Direction across, Direction up, Direction normal) {}

    /**
     * How a curved plane lies: between two stations, a point at u, v is as good as on the straight line between theirs,
     * u along {@code frame.across} from there. Its {@code frame} touches it half-way along the arc.
     *
     * @param leastPitchDegrees of the tangents along the arc
     * @param radiusMetres absent when the section is no circle
     * @param arcLengthMetres from end to end of the section
     * @param fallsBothWays whether it falls to both ends of the section
     * @param facets it was read from
     */
    public record Curve(
            double leastPitchDegrees,
            double greatestPitchDegrees,
            OptionalDouble radiusMetres,
            double arcLengthMetres,
            boolean fallsBothWays,
            int facets,
            List<Station> stations) {
        public Curve {
            stations = List.copyOf(stations);
        }
    }

    /** A place on the section of a curved plane: arc length from its start, and the point there at u = 0. */
    public record Station(double vMetres, Point point) {}

    /** A stretch along one of the plane's axes. */
    public record Range(double fromMetres, double toMetres) {
        public double lengthMetres() {
            return toMetres - fromMetres;
        }
    }

    /** A hole in the plane; {@code outline} in world coordinates, first point not repeated. */
    public record Penetration(
            String id, double widthMetres, double lengthMetres, double areaSquareMetres, List<Point> outline) {
        public Penetration {
            outline = List.copyOf(outline);
        }
    }

    /**
     * One sheet.
     *
     * @param number strip, from the set-out verge, starting with 1; sheets of one strip share it
     * @param v from its lowest corner to its highest: the square-cut strip that it is cut from
     * @param lengthMetres of its longest line along the fall
     * @param orderMetres that it is ordered in, with what reaches into the gutter and less what stops short of the ridge
     * @param areaSquareMetres net area covered
     */
    public record Sheet(
            int number,
            Range u,
            Range v,
            double lengthMetres,
            double orderMetres,
            double areaSquareMetres,
            boolean trimmed,
            boolean tapered,
            boolean cut) {}

    /**
     * What comes of one way to set the sheets out.
     *
     * @param setOut {@code left}, {@code right} (full sheets start at that verge, looking up the fall) or {@code centred}
     * @param coverWidthMetres of one sheet
     * @param firstStripMetres width of the strip at the left edge, looking up the fall
     * @param lastStripMetres width of the strip at the right edge
     * @param sheets pieces of metal
     * @param lengthMetres of all square-cut strips that they are cut from, no allowance
     * @param wasteSquareMetres their cover area that covers no roof
     * @param chosen whether the sheets are laid out so
     */
    public record SetOut(
            String setOut,
            double coverWidthMetres,
            int strips,
            double firstStripMetres,
            double lastStripMetres,
            int sheets,
            double lengthMetres,
            double wasteSquareMetres,
            boolean chosen) {}

    /**
     * Supports in one line across bays.
     *
     * @param number from the eave, starting with 1
     * @param vMetres mean position along the fall
     * @param extents covered stretches of u, joints bridged
     */
    public record SupportLine(String id, int number, double vMetres, List<Piece> pieces, List<Range> extents) {
        public SupportLine {
            pieces = List.copyOf(pieces);
            extents = List.copyOf(extents);
        }
    }

    /**
     * One member of a support line.
     *
     * @param from lesser end across the fall: centre of the section projected to the plane, in world coordinates
     * @param contactMetres distance of its contact face from the skin along the normal, negative below
     * @param deviationFromMetres its contact face above the supports' contact plane at {@code from}, negative for low;
     *     absent for sleeves within longer pieces
     * @param deviationToMetres the same at {@code to}
     * @param gridPlace nearest grid lines to its middle; empty when there is no grid
     * @param flangeMetres width along the fall
     * @param depthMetres square to the plane
     * @param thicknessMetres of the section's wall; absent when not known
     */
    public record Piece(
            ElementRef element,
            Point from,
            Point to,
            double contactMetres,
            OptionalDouble deviationFromMetres,
            OptionalDouble deviationToMetres,
            String gridPlace,
            double flangeMetres,
            double depthMetres,
            OptionalDouble thicknessMetres) {}

    /**
     * A length of sheet between two supports or past the first or last.
     *
     * @param kind {@code end span}, {@code internal span}, {@code eave overhang} or {@code ridge overhang}
     * @param lengthMetres greatest over its width, along the fall
     * @param leastMetres least over its width
     * @param lower id of the support line below, empty for an eave overhang
     * @param upper id of the support line above, empty for a ridge overhang
     */
    public record Span(
            String kind, double lengthMetres, double leastMetres, Range u, Range v, String lower, String upper) {}
}

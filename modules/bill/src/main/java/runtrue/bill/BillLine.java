package runtrue.bill;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One thing to order. Quantities are in {@code unit}, to three decimals, so that {@code net}, the differences and
 * {@code ordered} add up exactly, and so do the parts.
 *
 * @param id unique in the bill
 * @param item id of the build-up's item
 * @param section heading that it stands under
 * @param variant what tells it from other lines of the item: zone, trimmed width, order length; may be empty
 * @param unit {@code m}, {@code m2} or {@code pcs}
 * @param net by the geometry
 * @param gross with laps, waste and what reaches past the geometry
 * @param ordered in whole pieces, packs or steps
 * @param differences from net to ordered, each with its reason
 * @param count of pieces, packs, rolls, stock lengths or sheets; 0 for what is ordered by measure
 * @param each what is counted: {@code box of 250 pcs}, {@code sheet}
 * @param length of each sheet or stock length, metres; else 0
 * @param mass of what is ordered, kilograms; empty where it is not known
 * @param pieces required lengths, laps included: what stock lengths are cut to; empty for what is not cut from stock
 * @param cutting how stock lengths are cut to them; empty for what is not cut from stock
 * @param method how the net quantity was worked out
 * @param parts by plane; edges that belong to no plane have an empty one
 */
public record BillLine(
        String id,
        String item,
        String section,
        String description,
        String variant,
        String unit,
        double net,
        double gross,
        double ordered,
        List<Difference> differences,
        long count,
        String each,
        double length,
        OptionalDouble mass,
        List<Pieces> pieces,
        Optional<StockPlan> cutting,
        String method,
        String about,
        String source,
        List<Part> parts) {
    public BillLine {
        differences = List.copyOf(differences);
        pieces = List.copyOf(pieces);
        parts = List.copyOf(parts);
    }

    /** Why more is ordered than the geometry needs; negative where it is less. */
    public record Difference(String reason, double quantity) {}

    /** Required pieces of one length, metres. */
    public record Pieces(double length, long count) {}

    /**
     * What a line takes from one plane.
     *
     * @param plane id; empty for edges of no plane
     * @param zone of clips: corner, edge or interior; empty for what is not told apart or not known
     * @param sharedWith other planes of the edges, with whom nothing is counted again
     * @param count of sheets, or of pieces cut from stock lengths; 0 for what is packed over planes
     * @param from ids of planes, edges, support lines or penetrations
     */
    public record Part(String plane, String zone, List<String> sharedWith, double net, long count, List<String> from) {
        public Part {
            sharedWith = List.copyOf(sharedWith);
            from = List.copyOf(from);
        }
    }
}

package runtrue.result;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Quantities of the drop.
 *
 * @param buildUp by which they were taken off
 * @param lines what to order, in the order of the build-up
 * @param figures areas, coil, lifting and transport
 * @param missing what could not be worked out and why, one sentence each
 * @param rates absent when no rate file was given
 * @param modelled fasteners, accessories and single sheets that the models count by themselves; never part of the lines
 * @param offcuts sheets that might come two from one; the lines order each by itself
 */
public record BillResult(
        BuildUp buildUp,
        List<Line> lines,
        List<Figure> figures,
        List<String> missing,
        Optional<Rates> rates,
        List<Modelled> modelled,
        List<MayServe> offcuts) {
    public BillResult {
        lines = List.copyOf(lines);
        figures = List.copyOf(figures);
        missing = List.copyOf(missing);
        modelled = List.copyOf(modelled);
        offcuts = List.copyOf(offcuts);
    }

    /**
     * The layers and fixings that items come from.
     *
     * @param source who published its figures, or that they are invented for the demo
     */
    public record BuildUp(String name, String title, String source, String file) {}

    /**
     * One thing to order. Quantities are in {@code unit}: net, the differences and ordered add up exactly to three decimals,
     * and so do the parts.
     *
     * @param id unique in the bill
     * @param item id of the build-up's item
     * @param section heading that it stands under
     * @param variant zone, trimmed width or the like; may be empty
     * @param unit {@code m}, {@code m2} or {@code pcs}
     * @param net by the geometry
     * @param gross with laps, waste and what reaches past the geometry
     * @param ordered in whole pieces, packs or steps
     * @param differences from net to ordered
     * @param count of packs, rolls, stock lengths, sheets or pieces; 0 for what is ordered by measure
     * @param each what is counted, for example {@code box of 250 pcs}
     * @param lengthMetres of each sheet or stock length, else 0
     * @param massKilograms of what is ordered; absent where it is not known
     * @param pieces required lengths that stock lengths are cut to
     * @param cutting how stock lengths are cut to them; absent for what is not cut from stock
     * @param method how the net quantity was worked out
     * @param about how it is laid or fixed
     * @param source where the rule comes from
     * @param parts by plane
     * @param rate absent where none was given
     */
    public record Line(
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
            double lengthMetres,
            OptionalDouble massKilograms,
            List<Pieces> pieces,
            Optional<StockPlan> cutting,
            String method,
            String about,
            String source,
            List<Part> parts,
            Optional<Rate> rate) {
        public Line {
            differences = List.copyOf(differences);
            pieces = List.copyOf(pieces);
            parts = List.copyOf(parts);
        }
    }

    /** Why more is ordered than the geometry needs; negative where it is less. */
    public record Difference(String reason, double quantity) {}

    /** Required pieces of one length. */
    public record Pieces(double lengthMetres, long count) {}

    /**
     * How stock lengths are cut.
     *
     * @param count of stock lengths
     * @param lowerBound stock lengths that no plan can do without
     * @param bound how the lower bound is known
     * @param proved whether no plan needs fewer
     * @param cutShort whether the clock ended the search before its work was done
     * @param restsMetres total of what is left behind the last cuts
     * @param patterns fullest stock lengths first
     */
    public record StockPlan(
            double stockMetres,
            double kerfMetres,
            long count,
            long lowerBound,
            String bound,
            boolean proved,
            boolean cutShort,
            double restsMetres,
            List<Pattern> patterns) {
        public StockPlan {
            patterns = List.copyOf(patterns);
        }
    }

    /** Stock lengths that are cut alike: how many, and what is left of each. */
    public record Pattern(long times, List<Cut> cuts, double restMetres) {
        public Pattern {
            cuts = List.copyOf(cuts);
        }
    }

    /**
     * Pieces of one length in a pattern.
     *
     * @param each how many one stock length gives
     * @param uses what those of all stock lengths of the pattern are for
     */
    public record Cut(double lengthMetres, long each, List<Use> uses) {
        public Cut {
            uses = List.copyOf(uses);
        }
    }

    /** What pieces are for: id of an edge, a support line, an opening or a plane, and the same for people. */
    public record Use(String from, String what, long count) {}

    /**
     * What a line takes from one plane.
     *
     * @param plane id; empty for edges of no plane
     * @param zone of clips: corner, edge or interior; empty for what is not told apart or not known
     * @param sharedWith other planes of the edges, with which nothing is counted again
     * @param count of sheets, or of pieces cut from stock lengths; 0 for what is packed over planes
     * @param from ids of planes, edges, support lines or openings
     */
    public record Part(String plane, String zone, List<String> sharedWith, double net, long count, List<String> from) {
        public Part {
            sharedWith = List.copyOf(sharedWith);
            from = List.copyOf(from);
        }
    }

    /**
     * A figure about the whole order.
     *
     * @param value absent where it could not be worked out
     * @param verdict {@code fits}, {@code does not fit}, {@code not assessed}; empty where nothing is compared
     * @param remark how it was worked out, or why not
     */
    public record Figure(String what, OptionalDouble value, String unit, String verdict, String remark) {}

    /**
     * Price of one unit.
     *
     * @param unit as the rate file says it
     * @param of which figure of the line it multiplies: {@code ordered}, {@code count}, {@code length} (count x length of
     *     each) or {@code mass}
     */
    public record Rate(double value, String currency, String unit, String of) {}

    /**
     * The rate file.
     *
     * @param unknown rates for nothing in this bill, with their place in the file
     * @param unpriced ids of lines without a rate
     */
    public record Rates(String file, List<String> unknown, List<String> unpriced) {
        public Rates {
            unknown = List.copyOf(unknown);
            unpriced = List.copyOf(unpriced);
        }
    }

    /**
     * Things of one kind that are modelled on one plane, beside what was derived.
     *
     * @param plane id; empty for what lies on no roof plane or at a place that is not known
     * @param kind in the model's words
     * @param count of things
     * @param occurrences in the models; one may stand for several things
     * @param how one occurrence was counted
     * @param items of the bill that were compared; may be empty
     * @param derived what the bill counts of these on the plane; absent where nothing is compared
     * @param remark why nothing is compared, or what else is compared with the same items; may be empty
     * @param globalIds of the occurrences
     */
    public record Modelled(
            String plane,
            String kind,
            String ifcClass,
            long count,
            long occurrences,
            String how,
            List<String> items,
            OptionalDouble derived,
            String remark,
            List<String> globalIds) {
        public Modelled {
            items = List.copyOf(items);
            globalIds = List.copyOf(globalIds);
        }
    }

    /**
     * Two sheets that may be cut from one.
     *
     * @param plane id of the plane of the first, {@code sheet} its number
     * @param otherPlane id of the plane of the second, {@code otherSheet} its number
     * @param lengthMetres of the one sheet that gives both
     * @param savedMetres of the two lengths ordered apart
     * @param way how they lie in the one sheet
     */
    public record MayServe(
            String plane,
            int sheet,
            String otherPlane,
            int otherSheet,
            double lengthMetres,
            double savedMetres,
            String way) {}
}

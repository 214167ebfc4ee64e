package runtrue.rules.buildup;

import java.util.Optional;
import java.util.Set;
import runtrue.roof.EdgeKind;
import runtrue.rules.Quantity;
import runtrue.rules.cel.Expression;
import runtrue.rules.units.Unit;

/**
 * One layer or fixing. Lengths are metres, all else SI.
 *
 * @param section heading that it stands under in the bill
 * @param edges kinds that it is for, of an item for edges; else empty
 * @param when whether it is for this subject at all; an item without it is for all of its kind
 * @param quantity of one subject, in the unit's dimension
 * @param unit that people read quantities in
 * @param zones whether the places in corner, edge and interior zones are told apart
 * @param lap that lengths, or the ends of rolls and sheets, overlap by
 * @param sideLap that rolls overlap by at their sides
 * @param waste what is lost in cutting and handling
 * @param packing what it comes in; empty for what is bought by the piece or by measure
 * @param step that the order (of sheets: each length) is rounded up to
 * @param coverWidth of sheets other than the roof system's
 * @param longest sheet; longer runs are lapped
 * @param mass kilograms of one of the unit's dimension: of a piece, a metre, a square metre
 * @param about how it is laid or fixed
 */
public record BuildUpItem(
        String id,
        String name,
        String section,
        ItemKind kind,
        CountedOn on,
        Set<EdgeKind> edges,
        Optional<Expression> when,
        Amount quantity,
        Unit unit,
        Zoning zones,
        double lap,
        double sideLap,
        Optional<Waste> waste,
        Optional<Packing> packing,
        Optional<Double> step,
        Optional<Double> coverWidth,
        Optional<Double> longest,
        Optional<Amount> mass,
        String about,
        String source) {
    public BuildUpItem {
        edges = Set.copyOf(edges);
    }

    /** A fixed quantity, or an expression that gives it in SI. */
    public record Amount(Optional<Quantity> fixed, Optional<Expression> expression) {}

    /**
     * What is lost.
     *
     * @param share of what is needed, laps included
     */
    public record Waste(double share, String reason) {}

    /**
     * What comes together.
     *
     * @param holds in SI: pieces, metres or square metres
     * @param word for one of it: {@code box}
     * @param width of a roll, metres, else 0
     * @param length of a roll or a stock length, metres, else 0
     * @param kerf that a cut takes off a stock length, metres
     * @param shortest piece of a run of lapped stock lengths, metres; 0 for any
     * @param laid which way a roll runs; empty where that is not stated
     */
    public record Packing(
            double holds,
            String word,
            double width,
            double length,
            double kerf,
            double shortest,
            Optional<RollRun> laid) {
        static Packing pack(double holds, String word) {
            return new Packing(holds, word, 0, 0, 0, 0, Optional.empty());
        }

        static Packing stock(double length, double kerf, double shortest) {
            return new Packing(length, "stock length", 0, length, kerf, shortest, Optional.empty());
        }

        static Packing roll(double width, double length, Optional<RollRun> laid) {
            return new Packing(width * length, "roll", width, length, 0, 0, laid);
        }
    }
}

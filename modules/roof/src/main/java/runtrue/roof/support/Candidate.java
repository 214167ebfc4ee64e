package runtrue.roof.support;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.roof.PlaneFrame;
import runtrue.roof.RoofTolerance;
import runtrue.roof.Stretch.Ends;
import runtrue.roof.SupportEvidence;
import runtrue.roof.sheet.Cells;
import runtrue.roof.sheet.Cells.Cell;

/**
 * A member that lies parallel to a plane, below it and within its outline, seen in the plane's frame.
 *
 * @param along whether it runs along the fall (a rafter to the sheets) rather than across it
 * @param slope change of v for each metre of u, for members across the fall
 * @param v position of the section's centre at u = 0, extrapolated
 * @param vFrom least v of its body
 * @param vTo greatest v of it
 * @param contactFrom w of its highest line at the lesser u, for members along the fall at the lesser v
 * @param contactTo the same at the other end
 * @param flange its upper face, for members across the fall; the whole section where none looks up
 * @param inside length within the plane's outline, metres
 */
record Candidate(
        Member member,
        SupportEvidence evidence,
        boolean along,
        double uFrom,
        double uTo,
        double slope,
        double v,
        double vFrom,
        double vTo,
        double contactFrom,
        double contactTo,
        TopFlange flange,
        double depth,
        double inside) {
    /** A member this much out of parallel carries at one end only. */
    private static final double PARALLEL = Math.sin(RoofTolerance.SUPPORT_PARALLEL.si());

    private static final double HALF_RIGHT_ANGLE = Math.cos(Math.toRadians(45));

    /** Sheets rest on what they cross for more than a sleeve's width. */
    private static final double LEAST_INSIDE = RoofTolerance.SUPPORT_INSIDE.si();

    /** Members may end a little outside the plane: cleats and end plates. */
    static final double PROUD = RoofTolerance.SUPPORT_ABOVE.si();

    /**
     * The member as a candidate below a plane, if it is one.
     *
     * @param shell cells of the plane's outline without its holes
     */
    static Optional<Candidate> of(Member member, PlaneFrame frame, List<Cell> shell, double reach) {
        Vector3D axis = member.axis();
        if (Math.abs(axis.dot(frame.normal())) > PARALLEL) {
            return Optional.empty();
        }
        boolean along = Math.abs(axis.dot(frame.across())) < HALF_RIGHT_ANGLE;
        double slope = along ? 0 : axis.dot(frame.up()) / axis.dot(frame.across());
        Extent u = Extent.of(member, frame::u);
        Extent v = Extent.of(member, frame::v);
        Extent shifted = Extent.of(member, p -> frame.v(p) - slope * frame.u(p));
        Extent w = Extent.of(member, frame::w);
        if (w.high > PROUD || w.high < -reach) {
            return Optional.empty();
        }
        double inside = along
                ? Cells.lengthInsideAlong(shell, u.middle(), v.low, v.high)
                : Cells.lengthInsideAcross(shell, u.low, u.high, shifted.middle(), slope);
        if (inside < LEAST_INSIDE) {
            return Optional.empty();
        }
        Ends contact = contact(member, frame, along ? v : u, along);
        TopFlange section = new TopFlange(shifted.high - shifted.low, OptionalDouble.empty());
        return Optional.of(new Candidate(
                member,
                evidence(member),
                along,
                u.low,
                u.high,
                slope,
                shifted.middle(),
                v.low,
                v.high,
                contact.atFrom(),
                contact.atTo(),
                along
                        ? section
                        : TopFlange.of(member.element().body().faces(), frame, slope)
                                .orElse(section),
                w.high - w.low,
                inside));
    }

    /**
     * w of the highest line at the lesser and the greater end. The highest line of a
     * straight member rises with its axis: taken off, it is level, and one figure for all of it.
     */
    private static Ends contact(Member member, PlaneFrame frame, Extent ends, boolean along) {
        Vector3D axis = member.axis();
        double rise = axis.dot(frame.normal()) / axis.dot(along ? frame.up() : frame.across());
        double level = Extent.of(member, p -> frame.w(p) - rise * (along ? frame.v(p) : frame.u(p))).high;
        return new Ends(level + rise * ends.low, level + rise * ends.high);
    }

    /** Highest w, metres. */
    double contact() {
        return Math.max(contactFrom, contactTo);
    }

    /** Position of the section's centre along the fall at u. */
    double v(double u) {
        return v + slope * u;
    }

    private static SupportEvidence evidence(Member member) {
        return switch (member.element().grounds()) {
            case TYPED -> SupportEvidence.TYPED;
            case STATED, PART -> SupportEvidence.STATED;
            case NAMED -> SupportEvidence.NAMED;
            case CLASS -> SupportEvidence.POSITION;
        };
    }

    /** From the least to the greatest of one coordinate. */
    private record Extent(double low, double high) {
        static Extent of(Member member, ToDoubleFunction<Vector3D> coordinate) {
            DoubleSummaryStatistics values =
                    member.corners().stream().collect(Collectors.summarizingDouble(coordinate));
            return new Extent(values.getMin(), values.getMax());
        }

        double middle() {
            return (low + high) / 2;
        }
    }
}

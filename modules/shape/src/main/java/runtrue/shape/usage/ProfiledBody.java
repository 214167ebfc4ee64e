package runtrue.shape.usage;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.Chain;
import runtrue.shape.curve.Piece;
import runtrue.shape.profile.Profile;
import runtrue.shape.profile.ProfileReader;
import runtrue.shape.solid.Solid;
import runtrue.shape.sweep.SweepReader;
import runtrue.shape.sweep.Swept;
import runtrue.shape.sweep.Workshop;

/**
 * The profiles of a material profile set along the axis of a member, the cardinal point of the profile on the axis. Where
 * the axis runs along the element's z, the profile keeps the element's x and y, as IfcBeamStandardCase and its like (ISO
 * 16739, IFC4) have it; along any other axis it is assumed to stand upright against the element's z.
 */
final class ProfiledBody {
    /** An axis that leaves the element's z by less than this sine runs along it. */
    private static final double ALONG_Z = 1e-3;

    /** The profile's y to the sweep's x, so that the sweep keeps the profile upright by its x. */
    private static final AffineTransformMatrix3D UPRIGHT = AffineTransformMatrix3D.fromColumnVectors(
            Vector3D.of(0, -1, 0), Vector3D.Unit.PLUS_X, Vector3D.Unit.PLUS_Z);

    private final Making making;

    ProfiledBody(Making making) {
        this.making = making;
    }

    UsageBody of(IfcEntity product, IfcEntity usage) {
        List<Profile> profiles = onAxis(usage, "ForProfileSet", "CardinalPoint");
        ReferenceCurves curves = ReferenceCurves.of(product, List.of("Axis"), making.fineness())
                .orElseThrow(() -> new ShapeException("its profiles (" + usage.label()
                        + ") state the section, but there is no Axis curve for it to follow"));
        if (curves.curves().size() != 1) {
            throw new ShapeException("its Axis has " + curves.curves().size() + " curves (" + curves.label()
                    + "), not the one that the section is to follow");
        }
        Chain way = extent(curves.curves().get(0).chain(), usage);
        boolean alongZ = alongZ(way);
        Vector3D keeps = alongZ ? Vector3D.Unit.PLUS_X : Vector3D.Unit.PLUS_Z;
        SweepReader sweeps =
                new SweepReader(new Workshop(making.tolerances(), making.remarks(), faces -> {}), making.fineness());
        List<Swept> bodies = usage.isA("IfcMaterialProfileSetUsageTapering")
                ? sweeps.tapered(
                        turned(profiles, alongZ),
                        turned(atEnd(usage), alongZ),
                        way,
                        place -> keeps,
                        usage,
                        making.frame())
                : sweeps.along(
                        turned(profiles, alongZ),
                        way,
                        place -> keeps,
                        curves.curves().get(0).curve(),
                        making.frame());
        making.remarks().accept(remark(usage, alongZ));
        return new UsageBody(
                curves.label() + ", with " + usage.type(),
                bodies.stream()
                        .map(swept -> new Solid(swept.mesh(), swept.straight()))
                        .toList());
    }

    private static List<Profile> turned(List<Profile> profiles, boolean alongZ) {
        return alongZ
                ? profiles
                : profiles.stream().map(profile -> profile.moved(UPRIGHT)).toList();
    }

    /** The section at the end of the axis; where its cardinal point is not stated, that of the beginning holds. */
    private List<Profile> atEnd(IfcEntity usage) {
        return onAxis(usage, "ForProfileEndSet", usage.has("CardinalEndPoint") ? "CardinalEndPoint" : "CardinalPoint");
    }

    private static String remark(IfcEntity usage, boolean alongZ) {
        String point = usage.has("CardinalPoint")
                ? String.format(
                        Locale.ROOT,
                        "at its cardinal point %.0f (%s)",
                        usage.real("CardinalPoint"),
                        CardinalPoint.of(usage.real("CardinalPoint"), usage).words())
                : "at its own origin";
        return "The model draws no body: assumed from its material usage " + usage.label()
                + ", the profile along its axis " + point + ", "
                + (alongZ ? "by the element's x and y axes" : "upright against the element's z axis");
    }

    /** The parts of the section with its cardinal point at the origin; as they are, where none is stated. */
    private List<Profile> onAxis(IfcEntity usage, String profileSet, String cardinalPoint) {
        IfcEntity set = usage.ref(profileSet);
        List<IfcEntity> sections = new ArrayList<>(set.refs("CompositeProfile"));
        if (sections.isEmpty()) {
            for (IfcEntity member : set.refs("MaterialProfiles")) {
                sections.addAll(member.refs("Profile"));
            }
        }
        if (sections.isEmpty()) {
            throw new ShapeException("its profile set " + set.label() + " names no profile");
        }
        List<Profile> profiles = new ArrayList<>();
        ProfileReader reader = new ProfileReader(making.fineness());
        sections.forEach(section -> profiles.addAll(reader.read(section)));
        if (!usage.has(cardinalPoint)) {
            return profiles;
        }
        IfcEntity section = sections.size() == 1 ? sections.get(0) : set;
        Vector2D point = CardinalPoint.of(usage.real(cardinalPoint), usage).on(profiles, section);
        AffineTransformMatrix3D back =
                AffineTransformMatrix3D.createTranslation(Vector3D.of(-point.getX(), -point.getY(), 0));
        return profiles.stream().map(profile -> profile.moved(back)).toList();
    }

    private boolean alongZ(Chain way) {
        Vector3D first = way.track(making.fineness()).stations().get(0).before();
        return Math.hypot(first.getX(), first.getY()) < ALONG_Z;
    }

    /**
     * The axis as long as the body is. An axis along z may be the system line, which is longer: then the reference extent
     * counts from z = 0 (IfcMaterialProfileSetUsage). Elsewhere the axis is followed as drawn.
     */
    private Chain extent(Chain axis, IfcEntity usage) {
        if (axis.track(making.fineness()).stations().size() < 2) {
            throw new ShapeException("its Axis has no length");
        }
        OptionalDouble extent = usage.optionalReal("ReferenceExtent");
        double length = axis.byLength(making.fineness()).span();
        if (extent.isEmpty()
                || !(extent.getAsDouble() > 0)
                || Math.abs(extent.getAsDouble() - length)
                        <= making.inFileUnits(making.tolerances().plane())) {
            return axis;
        }
        Vector3D from = axis.from();
        boolean straight =
                Math.abs(axis.to().distance(from) - length) < making.fineness().point();
        if (straight && alongZ(axis)) {
            double end = Math.copySign(extent.getAsDouble(), axis.to().getZ() - from.getZ());
            return Chain.of(Piece.straight(
                    Vector3D.of(from.getX(), from.getY(), 0), Vector3D.of(from.getX(), from.getY(), end), 1));
        }
        making.remarks()
                .accept(String.format(
                        Locale.ROOT,
                        "Its material usage states an extent of %.3f m, its axis is %.3f m long and was followed",
                        extent.getAsDouble() * usage.model().units().length(),
                        length * usage.model().units().length()));
        return axis;
    }
}

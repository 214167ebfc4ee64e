package runtrue.shape.profile;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.Fineness;

/** Profiles of every kind the schema knows that bound an area: start with {@link #read}. */
public final class ProfileReader {
    private static final int DEEPEST = 20;

    /** Profiles within profiles; composites that name the same ones again and again would take for ever. */
    private static final int MOST_PROFILES = 10_000;

    private final Fineness fineness;
    private final OutlineReader curves;
    private final StandardProfiles standard;
    private int profiles;

    /** The fineness is in file units. */
    public ProfileReader(Fineness fineness) {
        this.fineness = fineness;
        this.curves = new OutlineReader(fineness);
        this.standard = new StandardProfiles(fineness);
    }

    /**
     * The areas of a profile, in the axes of the solid's position: one, or several for a composite profile.
     *
     * @throws ShapeException when the profile bounds no area or its kind is not read
     */
    public List<Profile> read(IfcEntity profile) {
        profiles = 0;
        return read(profile, 0);
    }

    private List<Profile> read(IfcEntity profile, int depth) {
        profiles++;
        if (depth > DEEPEST || profiles > MOST_PROFILES) {
            throw new ShapeException("The profile " + profile.label() + " refers to itself, or to too many others.");
        }
        return switch (profile.type()) {
            case "IfcArbitraryClosedProfileDef", "IfcArbitraryProfileDefWithVoids" -> List.of(arbitrary(profile));
            case "IfcDerivedProfileDef" -> derived(profile, depth);
            case "IfcMirroredProfileDef" -> mirrored(profile, depth);
            case "IfcCompositeProfileDef" -> composite(profile, depth);
            case "IfcCenterLineProfileDef" ->
                List.of(CentreLine.thickened(
                        name(profile), curves.chain(profile.ref("Curve")), profile.real("Thickness"), fineness));
            default -> List.of(standard.read(profile, name(profile)));
        };
    }

    private static String name(IfcEntity profile) {
        String name = profile.text("ProfileName");
        return name.isBlank() ? profile.type() : name;
    }

    private Profile arbitrary(IfcEntity profile) {
        List<Ring> voids = new ArrayList<>();
        for (IfcEntity inner : profile.refs("InnerCurves")) {
            voids.add(curves.ring(inner));
        }
        return new Profile(name(profile), curves.ring(profile.ref("OuterCurve")), voids);
    }

    private List<Profile> derived(IfcEntity profile, int depth) {
        if (!profile.has("Operator")) {
            return mirrored(profile, depth);
        }
        return moved(profile, profile.model().transform(profile.ref("Operator")), depth);
    }

    /** The operator of a mirrored profile is derived by the schema: it turns x about. */
    private List<Profile> mirrored(IfcEntity profile, int depth) {
        return moved(profile, AffineTransformMatrix3D.createScale(Vector3D.of(-1, 1, 1)), depth);
    }

    private List<Profile> moved(IfcEntity profile, AffineTransformMatrix3D transform, int depth) {
        return read(profile.ref("ParentProfile"), depth + 1).stream()
                .map(parent -> parent.moved(transform))
                .toList();
    }

    private List<Profile> composite(IfcEntity profile, int depth) {
        List<Profile> result = new ArrayList<>();
        for (IfcEntity part : profile.refs("Profiles")) {
            result.addAll(read(part, depth + 1));
        }
        return result;
    }
}

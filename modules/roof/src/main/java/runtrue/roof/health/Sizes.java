package runtrue.roof.health;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.roof.ReadElement;
import runtrue.roof.Roof;
import runtrue.roof.RoofPlane;
import runtrue.roof.read.DropElements;
import runtrue.roof.support.Member;

/** Sizes and places that no building has: the mark of a wrong unit or of a lost origin. */
final class Sizes {
    private final DropElements elements;
    private final Roof roof;
    private final Lines lines;

    Sizes(DropElements elements, Roof roof, Lines lines) {
        this.elements = elements;
        this.roof = roof;
        this.lines = lines;
    }

    void check() {
        Map<String, Extent> roofs = new TreeMap<>();
        Map<String, Extent> all = new TreeMap<>();
        for (ReadElement e : elements.roofs()) {
            Extent extent = Extent.of(e.body().faces());
            roofs.merge(e.element().file(), extent, Extent::with);
            all.merge(e.element().file(), extent, Extent::with);
        }
        for (ReadElement e : elements.members()) {
            all.merge(e.element().file(), Extent.of(e.body().faces()), Extent::with);
        }
        // A frame has thousands of members, and finding an axis means going through all edges.
        List<String> details =
                elements.members().parallelStream().map(Sizes::ofMember).toList();
        for (int i = 0; i < details.size(); i++) {
            if (!details.get(i).isEmpty()) {
                lines.add(HealthKind.SIZE, elements.members().get(i).element(), details.get(i));
            }
        }
        roofs.forEach(this::roof);
        all.forEach(this::place);
        roof.planes().forEach(p -> p.plane().thickness().ifPresent(t -> thickness(p.plane(), t)));
    }

    private void thickness(RoofPlane plane, double thickness) {
        if (thickness > HealthLimit.THICKEST_ROOF.value() || thickness < HealthLimit.THINNEST_ROOF.value()) {
            String detail = String.format(Locale.ROOT, "it is %.2f mm thick", thickness * 1000);
            plane.elements().forEach(e -> lines.add(HealthKind.SIZE, e.element(), detail));
        }
    }

    private void roof(String file, Extent extent) {
        double longest = extent.longest();
        if (longest > HealthLimit.LARGEST_ROOF.value()) {
            lines.add(HealthKind.SIZE, file, String.format(Locale.ROOT, "its roof is %.0f m long", longest));
        } else if (longest < HealthLimit.SMALLEST_ROOF.value()) {
            lines.add(HealthKind.SIZE, file, String.format(Locale.ROOT, "its roof is %.1f mm long", longest * 1000));
        }
    }

    /** The least of the coordinates counts: a campus is large, but some of it is near its origin. */
    private void place(String file, Extent extent) {
        Vector3D middle = extent.low().add(extent.high()).multiply(0.5).add(elements.origin());
        double far = Math.hypot(middle.getX(), middle.getY());
        double reach = extent.longest() / 2;
        if (far - reach > HealthLimit.FARTHEST.value()) {
            lines.add(
                    HealthKind.FAR_AWAY,
                    file,
                    String.format(Locale.ROOT, "it lies %.1f km from the origin in plan", far / 1000));
        }
    }

    /** What is amiss with a member's size; empty when nothing is. */
    private static String ofMember(ReadElement element) {
        return Member.of(element).map(Sizes::sides).map(Sizes::amiss).orElse("");
    }

    private static String amiss(double[] sides) {
        if (sides[1] < HealthLimit.THINNEST_MEMBER.value()) {
            return String.format(Locale.ROOT, "its section is %.2f mm deep", sides[1] * 1000);
        } else if (sides[1] > HealthLimit.THICKEST_MEMBER.value()) {
            return String.format(Locale.ROOT, "its section is %.1f m deep", sides[1]);
        }
        return sides[0] > HealthLimit.LONGEST_MEMBER.value()
                ? String.format(Locale.ROOT, "it is %.0f m long", sides[0])
                : "";
    }

    /** Length along the axis, and the larger extent square to it. */
    private static double[] sides(Member member) {
        Vector3D side = member.axis().orthogonal();
        return new double[] {
            member.extent(member.axis()),
            Math.max(member.extent(side), member.extent(member.axis().cross(side)))
        };
    }
}

package runtrue.ifc.internal;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.jspecify.annotations.Nullable;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcException;

/** Chains of object placements, each link worked out once. In file units. */
final class Placements {
    /** Farther from the origin than this no building stands: 1e9 m is a million kilometres. */
    private static final double ABSURD_METRES = 1e9;

    private final double limit;
    private final Map<Integer, AffineTransformMatrix3D> known = new ConcurrentHashMap<>();

    /** Takes the metres in one length unit. */
    Placements(double metres) {
        limit = ABSURD_METRES / metres;
    }

    AffineTransformMatrix3D ofProduct(IfcEntity product) {
        IfcEntity placement = product.optionalRef("ObjectPlacement")
                .orElseThrow(() -> problem(product, "has no ObjectPlacement; where it stands is not known"));
        return world(placement);
    }

    private AffineTransformMatrix3D world(IfcEntity placement) {
        Deque<IfcEntity> chain = new ArrayDeque<>();
        Set<Integer> seen = new LinkedHashSet<>();
        AffineTransformMatrix3D base = AffineTransformMatrix3D.identity();
        IfcEntity link = placement;
        while (link != null) {
            AffineTransformMatrix3D done = known.get(link.id());
            if (done != null) {
                base = done;
                break;
            }
            if (!seen.add(link.id())) {
                throw cycle(link, seen);
            }
            chain.push(link);
            link = parent(link);
        }
        for (IfcEntity next : chain) {
            base = base.multiply(relative(next));
            checkPlace(next, base);
            known.put(next.id(), base);
        }
        return base;
    }

    private static @Nullable IfcEntity parent(IfcEntity placement) {
        return placement.optionalRef("PlacementRelTo").orElse(null);
    }

    private static AffineTransformMatrix3D relative(IfcEntity placement) {
        if (placement.isA("IfcLocalPlacement")) {
            return Axes.of(placement.ref("RelativePlacement"));
        }
        if (placement.isA("IfcLinearPlacement") && placement.has("CartesianPosition")) {
            return Axes.of(placement.ref("CartesianPosition"));
        }
        throw problem(placement, "is a placement that is not read; export with local placements");
    }

    private void checkPlace(IfcEntity placement, AffineTransformMatrix3D world) {
        Vector3D origin = world.apply(Vector3D.ZERO);
        double far = Math.max(Math.abs(origin.getX()), Math.max(Math.abs(origin.getY()), Math.abs(origin.getZ())));
        // Written so that a coordinate that is not a number fails too.
        if (!(far <= limit)) {
            throw problem(placement, "lies more than a million kilometres from the origin; check the coordinates");
        }
    }

    private static IfcException cycle(IfcEntity again, Set<Integer> seen) {
        String ids = seen.stream()
                .dropWhile(id -> id != again.id())
                .map(id -> "#" + id)
                .collect(Collectors.joining(", "));
        return problem(again, "is placed relative to itself, by way of " + ids);
    }

    private static IfcException problem(IfcEntity entity, String what) {
        return new IfcException(entity.model().file().name() + ": " + entity.label() + " " + what);
    }
}

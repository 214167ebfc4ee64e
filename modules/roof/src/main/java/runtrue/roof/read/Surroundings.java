package runtrue.roof.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.jspecify.annotations.Nullable;
import runtrue.ifc.Element;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcException;
import runtrue.ifc.IfcModel;
import runtrue.ifc.select.Grounds;
import runtrue.roof.ReadElement;
import runtrue.roof.Surround;
import runtrue.shape.Shape;
import runtrue.shape.ShapeReader;

/**
 * What stands in a drop besides roofs and possible supports. Of most of it no more is read than how far it extends; a
 * shape is made only when somebody asks for the place where it is. Safe for use by many threads, while the models are
 * open.
 */
final class Surroundings implements Surround {
    /**
     * No bodies, or bodies of the ground; and coverings, which like walls are seldom trimmed to the roof that they meet.
     * What fills an opening is accounted for by the opening.
     */
    private static final List<String> NO_THINGS = List.of(
            "IfcFeatureElement",
            "IfcVirtualElement",
            "IfcGeographicElement",
            "IfcFooting",
            "IfcPile",
            "IfcRoof",
            "IfcCovering");

    private final List<Thing> things = new ArrayList<>();
    private final ShapeReader shapes;
    private final Vector3D origin;

    private Surroundings(ShapeReader shapes, Vector3D origin) {
        this.shapes = shapes;
        this.origin = origin;
    }

    /** Everything of a model's building, but for those that were chosen as roof or support. */
    static Surroundings of(List<IfcModel> models, Set<IfcEntity> chosen, ShapeReader shapes, Vector3D origin) {
        Surroundings found = new Surroundings(shapes, origin);
        for (IfcModel model : models) {
            Set<IfcEntity> fillings = model.all("IfcRelFillsElement").stream()
                    .flatMap(r -> r.refs("RelatedBuildingElement").stream())
                    .collect(Collectors.toSet());
            for (IfcEntity entity : model.all("IfcElement")) {
                if (!chosen.contains(entity) && !fillings.contains(entity)) {
                    role(entity).ifPresent(role -> found.things.add(found.new Thing(entity, role)));
                }
            }
        }
        return found;
    }

    private static Optional<Role> role(IfcEntity entity) {
        if (entity.isA("IfcWall")) {
            return Optional.of(Role.WALL);
        } else if (entity.isA("IfcSlab")) {
            return Optional.of(Role.LAYER);
        }
        return NO_THINGS.stream().anyMatch(entity::isA) ? Optional.empty() : Optional.of(Role.THING);
    }

    @Override
    public List<ReadElement> within(Role role, Vector3D low, Vector3D high) {
        return things.parallelStream()
                .filter(t -> t.role == role && t.mayReach(low, high))
                .flatMap(t -> t.read().stream())
                .toList();
    }

    @Override
    public List<Element> unread(Role role, Vector3D low, Vector3D high) {
        return things.parallelStream()
                .filter(t -> t.role == role && t.mayReach(low, high) && t.isUnread())
                .map(t -> t.entity.model().describe(t.entity))
                .toList();
    }

    private final class Thing {
        private final IfcEntity entity;
        private final Role role;
        private final Once<Optional<List<Vector3D>>> corners;
        private final Once<Shape> shape;

        Thing(IfcEntity entity, Role role) {
            this.entity = entity;
            this.role = role;
            corners = new Once<>(() -> Corners.of(entity, origin));
            shape = new Once<>(() -> shapes.read(entity));
        }

        /** Whether its box and the one given overlap; what has no known box may be anywhere. */
        boolean mayReach(Vector3D low, Vector3D high) {
            Optional<List<Vector3D>> known = corners.get();
            return known.isEmpty()
                    || (overlaps(
                                    known.get().stream()
                                            .mapToDouble(Vector3D::getX)
                                            .toArray(),
                                    low.getX(),
                                    high.getX())
                            && overlaps(
                                    known.get().stream()
                                            .mapToDouble(Vector3D::getY)
                                            .toArray(),
                                    low.getY(),
                                    high.getY())
                            && overlaps(
                                    known.get().stream()
                                            .mapToDouble(Vector3D::getZ)
                                            .toArray(),
                                    low.getZ(),
                                    high.getZ()));
        }

        Optional<ReadElement> read() {
            return isVoid() || !(shape.get() instanceof Shape.Body found)
                    ? Optional.empty()
                    : Optional.of(new ReadElement(
                            entity.model().describe(entity), Grounds.CLASS, "stands near the roof", found));
        }

        /** Whether it has a body that was not read; an assembly has none of its own. */
        boolean isUnread() {
            return !isVoid()
                    && shape.get() instanceof Shape.Unread unread
                    && !unread.representation().isEmpty();
        }

        /** Placeholders for voids are no bodies that anything could lie on. */
        private boolean isVoid() {
            try {
                return entity.isA("IfcBuildingElementProxy")
                        && entity.model().predefinedType(entity).startsWith("PROVISIONFOR");
            } catch (IfcException e) {
                return true;
            }
        }
    }

    /** A value worked out when it is first asked for. */
    private static final class Once<T> {
        private final Supplier<T> source;
        private @Nullable T value;

        Once(Supplier<T> source) {
            this.source = source;
        }

        synchronized T get() {
            T known = value;
            if (known == null) {
                known = source.get();
                value = known;
            }
            return known;
        }
    }

    private static boolean overlaps(double[] values, double low, double high) {
        double least = Double.POSITIVE_INFINITY;
        double greatest = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            least = Math.min(least, value);
            greatest = Math.max(greatest, value);
        }
        return least <= high && greatest >= low;
    }
}

package runtrue.roof.read;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
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
    /** Products that may have a body that something could touch; IfcProxy is one of its own before IFC4. */
    private static final List<String> BODIES = List.of("IfcElement", "IfcProxy");

    /**
     * No bodies, or bodies of the ground; and coverings, which are seldom trimmed to the roof that they meet. What fills
     * an opening is accounted for by the opening.
     */
    private static final List<String> NO_THINGS = List.of(
            "IfcFeatureElement",
            "IfcVirtualElement",
            "IfcGeographicElement",
            "IfcFooting",
            "IfcPile",
            "IfcRoof",
            "IfcCovering");

    /** What may be fixed on sheets; solar devices and the like before IFC4 are flow terminals or energy conversion devices. */
    private static final List<String> FIXTURES = List.of(
            "IfcDistributionElement",
            "IfcBuildingElementProxy",
            "IfcProxy",
            "IfcDiscreteAccessory",
            "IfcElementAssembly",
            "IfcRailing",
            "IfcPlate");

    private final Map<Role, List<Thing>> things = new EnumMap<>(Role.class);
    private final ShapeReader shapes;

    private Surroundings(ShapeReader shapes) {
        this.shapes = shapes;
    }

    /**
     * Everything in the models that has a body, but for what was chosen as roof or support.
     *
     * @param unreadSupports those of the chosen ones that may carry and could not be read: somebody may ask where they are
     */
    static Surroundings of(
            List<IfcModel> models,
            Set<IfcEntity> chosen,
            Collection<IfcEntity> unreadSupports,
            ShapeReader shapes,
            Vector3D origin) {
        Surroundings found = new Surroundings(shapes);
        Set<IfcEntity> known = new HashSet<>(chosen);
        known.addAll(unreadSupports);
        for (IfcModel model : models) {
            Extents extents = new Extents(model, origin);
            model.all("IfcRelFillsElement").forEach(r -> known.addAll(r.refs("RelatedBuildingElement")));
            for (String name : BODIES) {
                for (IfcEntity entity : model.all(name)) {
                    if (!known.contains(entity) && NO_THINGS.stream().noneMatch(entity::isA)) {
                        found.add(found.new Thing(entity, roles(entity), extents));
                    }
                }
            }
            unreadSupports.stream()
                    .filter(support -> support.model() == model)
                    .forEach(support -> found.add(found.new Thing(support, EnumSet.of(Role.SUPPORT), extents)));
        }
        return found;
    }

    private void add(Thing thing) {
        thing.roles.forEach(
                role -> things.computeIfAbsent(role, r -> new ArrayList<>()).add(thing));
    }

    private static Set<Role> roles(IfcEntity entity) {
        Set<Role> roles = EnumSet.of(Role.THING);
        if (entity.isA("IfcWall")) {
            roles.add(Role.WALL);
        } else if (entity.isA("IfcSlab")) {
            roles.add(Role.LAYER);
        }
        if (FIXTURES.stream().anyMatch(entity::isA)) {
            roles.add(Role.FIXTURE);
        }
        return roles;
    }

    @Override
    public List<ReadElement> within(Role role, Where where) {
        return of(role, t -> t.mayMeet(where)).flatMap(t -> t.read().stream()).toList();
    }

    @Override
    public List<Element> unread(Role role, Where where) {
        return of(role, t -> t.extent.get().filter(where::mayMeet).isPresent() && t.isUnread())
                .map(t -> DropElements.identity(t.entity))
                .toList();
    }

    @Override
    public List<Element> unlocated(Role role) {
        return of(role, t -> t.extent.get().isEmpty() && t.isUnread())
                .map(t -> DropElements.identity(t.entity))
                .toList();
    }

    private Stream<Thing> of(Role role, Predicate<Thing> condition) {
        return things.getOrDefault(role, List.of()).parallelStream().filter(condition);
    }

    private final class Thing {
        private final IfcEntity entity;
        private final Set<Role> roles;
        private final Once<Optional<Box>> extent;
        private final Once<Shape> shape;

        Thing(IfcEntity entity, Set<Role> roles, Extents extents) {
            this.entity = entity;
            this.roles = roles;
            extent = new Once<>(() -> extents.of(entity));
            shape = new Once<>(() -> shapes.read(entity));
        }

        /** What has no known extent may be anywhere. */
        boolean mayMeet(Where where) {
            return extent.get().map(where::mayMeet).orElse(true);
        }

        Optional<ReadElement> read() {
            return isVoid() || !(shape.get() instanceof Shape.Body found)
                    ? Optional.empty()
                    : Optional.of(new ReadElement(
                            entity.model().describe(entity), Grounds.CLASS, "stands near the roof", found));
        }

        /** Whether it has a body that was not read; an assembly has none of its own. */
        boolean isUnread() {
            return roles.contains(Role.SUPPORT)
                    || (!isVoid()
                            && shape.get() instanceof Shape.Unread unread
                            && !unread.representation().isEmpty());
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
}

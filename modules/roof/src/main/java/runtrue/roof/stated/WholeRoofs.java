package runtrue.roof.stated;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import runtrue.ifc.Element;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcException;
import runtrue.ifc.IfcModel;
import runtrue.roof.PlaneLayout;
import runtrue.roof.ReadElement;
import runtrue.roof.Roof;
import runtrue.roof.RoofPlane;
import runtrue.roof.read.DropElements;

/** Roofs that are wholes of other elements, with what their planes measure together. */
final class WholeRoofs {
    /** A part of a part of a part: deeper than any model nests roofs. */
    private static final int DEEPEST = 10;

    private final Map<String, IfcModel> models = new HashMap<>();
    private final Map<Key, Whole> wholes = new LinkedHashMap<>();
    private final Roof roof;

    private record Key(String file, int stepId) {}

    /** A whole, and the elements under it that were read or not. */
    private static final class Whole {
        final IfcEntity entity;
        final Set<ReadElement> parts = Collections.newSetFromMap(new IdentityHashMap<>());
        int unread;

        Whole(IfcEntity entity) {
            this.entity = entity;
        }
    }

    /**
     * What a whole measures.
     *
     * @param reason why it cannot be said; empty when it can
     */
    record Measured(RoofAreas areas, List<String> planes, int parts, String reason) {}

    WholeRoofs(List<IfcModel> models, DropElements elements, Roof roof) {
        this.roof = roof;
        models.forEach(m -> this.models.put(m.file().name(), m));
        for (ReadElement element : elements.roofs()) {
            above(element.element())
                    .forEach(w -> whole(element.element().file(), w).parts.add(element));
        }
        elements.unread().stream()
                .filter(u -> u.roof())
                .forEach(u -> above(u.element()).forEach(w -> whole(u.element().file(), w).unread++));
    }

    /** Wholes that have no body of their own that was read, described, in the order of their parts. */
    List<Element> described(DropElements elements) {
        Set<Key> read = new HashSet<>();
        elements.roofs()
                .forEach(e -> read.add(new Key(e.element().file(), e.element().stepId())));
        List<Element> found = new ArrayList<>();
        wholes.forEach((key, whole) -> {
            if (!read.contains(key)) {
                found.add(whole.entity.model().describe(whole.entity));
            }
        });
        return found;
    }

    Measured measured(Element element) {
        Whole whole = wholes.get(new Key(element.file(), element.stepId()));
        if (whole == null) {
            throw new IllegalArgumentException(element.globalId() + " is no whole");
        }
        return measured(whole);
    }

    /** The nearest whole above a part that has other parts too. */
    Optional<RoofAreas> around(Element part) {
        for (IfcEntity above : above(part)) {
            Whole whole = wholes.get(new Key(part.file(), above.id()));
            if (whole != null && whole.parts.size() > 1) {
                Measured measured = measured(whole);
                return measured.reason().isEmpty() ? Optional.of(measured.areas()) : Optional.empty();
            }
        }
        return Optional.empty();
    }

    private Whole whole(String file, IfcEntity entity) {
        return wholes.computeIfAbsent(new Key(file, entity.id()), k -> new Whole(entity));
    }

    private Measured measured(Whole whole) {
        if (whole.unread > 0) {
            return failed(whole, whole.unread + " of its parts could not be read");
        }
        RoofAreas sum = RoofAreas.NONE;
        Set<String> planes = new TreeSet<>();
        for (PlaneLayout layout : roof.planes()) {
            RoofPlane plane = layout.plane();
            long own = plane.elements().stream().filter(whole.parts::contains).count();
            if (own > 0 && own < plane.elements().size()) {
                return failed(whole, "one of its planes runs on over elements that are no parts of it");
            } else if (own > 0) {
                planes.add(plane.id());
                sum = sum.plus(
                        RoofAreas.ofSurface(plane.area(), plane.grossArea(), plane.planArea(), plane.grossPlanArea()));
            }
        }
        boolean setAside = roof.unplaced().stream().anyMatch(u -> !u.counted() && whole.parts.contains(u.element()));
        return setAside
                ? failed(whole, "some of its parts gave no plane to measure")
                : new Measured(sum, List.copyOf(planes), whole.parts.size(), "");
    }

    private static Measured failed(Whole whole, String reason) {
        return new Measured(RoofAreas.NONE, List.of(), whole.parts.size(), reason);
    }

    /** What the element is a part of, from the inside out. A broken chain ends there; reading the element has told of it. */
    private List<IfcEntity> above(Element element) {
        List<IfcEntity> chain = new ArrayList<>();
        IfcModel model = models.get(element.file());
        if (model == null) {
            return chain;
        }
        try {
            IfcEntity whole = model.whole(model.entity(element.stepId()));
            while (whole != null && whole.isA("IfcElement") && chain.size() < DEEPEST) {
                chain.add(whole);
                whole = model.whole(whole);
            }
        } catch (IfcException e) {
            return chain;
        }
        return chain;
    }
}

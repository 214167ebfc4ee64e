package runtrue.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import runtrue.ifc.IfcEntity;
import runtrue.shape.solid.Drawn;

/**
 * A representation of a product that may be its body.
 *
 * @param label for example {@code Body/SweptSolid: IfcExtrudedAreaSolid}
 * @param items without lines and texts
 */
record Representation(String label, List<IfcEntity> items) {
    private static final List<String> IDENTIFIERS = List.of("BODY", "FACETATION", "", "SURFACE", "BODY-FALLBACK");

    /** Representations that are drawn beside a body and are none. */
    private static final Set<String> NO_BODIES = Set.of(
            "AXIS",
            "FOOTPRINT",
            "BOX",
            "ANNOTATION",
            "PLAN",
            "PROFILE",
            "REFERENCE",
            "CLEARANCE",
            "LIGHTING",
            "COG",
            "SURVEYPOINTS");

    /** What a representation with no name, or an unknown one, may be to count as a body. */
    private static final Set<String> BODY_TYPES = Set.of(
            "SWEPTSOLID",
            "ADVANCEDSWEPTSOLID",
            "BREP",
            "ADVANCEDBREP",
            "CSG",
            "CLIPPING",
            "TESSELLATION",
            "SURFACEMODEL",
            "SOLIDMODEL",
            "MAPPEDREPRESENTATION",
            "SURFACE3D",
            "");

    /**
     * The representations to try, best first: the body, its facets, a nameless one of a body's type, a surface, and last
     * those under a name of the authoring program's own (early files have such).
     */
    static List<Representation> bodies(IfcEntity product) {
        List<IfcEntity> all = all(product);
        List<String> identifiers = new ArrayList<>(all.size());
        for (IfcEntity representation : all) {
            identifiers.add(identifier(representation));
        }
        List<Representation> result = new ArrayList<>(1);
        for (String identifier : IDENTIFIERS) {
            for (int i = 0; i < all.size(); i++) {
                if (identifiers.get(i).equals(identifier)
                        && (!identifier.isEmpty() || BODY_TYPES.contains(type(all.get(i))))) {
                    add(all.get(i), result);
                }
            }
        }
        for (int i = 0; i < all.size(); i++) {
            String identifier = identifiers.get(i);
            if (!IDENTIFIERS.contains(identifier)
                    && !NO_BODIES.contains(identifier)
                    && BODY_TYPES.contains(type(all.get(i)))) {
                add(all.get(i), result);
            }
        }
        return result;
    }

    private static void add(IfcEntity representation, List<Representation> result) {
        List<IfcEntity> items = new ArrayList<>(1);
        for (IfcEntity item : representation.refs("Items")) {
            if (!Drawn.isLineWork(item) && !item.isA("IfcBoundingBox")) {
                items.add(item);
            }
        }
        if (!items.isEmpty()) {
            result.add(new Representation(label(representation, items), items));
        }
    }

    /** The reason for a product without any body. */
    static Shape.Unread none(IfcEntity product) {
        List<String> others =
                all(product).stream().map(Representation::shortLabel).distinct().toList();
        if (others.isEmpty()) {
            return Remedy.nothingDrawn(product.model().parts(product).size());
        }
        String label = String.join(", ", others);
        return new Shape.Unread(
                "It has no body representation, only " + label
                        + ", and no material layer or profile set usage that a body could be made of; export it with its body.",
                label);
    }

    private static List<IfcEntity> all(IfcEntity product) {
        Optional<IfcEntity> shape = product.optionalRef("Representation");
        return shape.isPresent() ? shape.get().refs("Representations") : List.of();
    }

    private static String identifier(IfcEntity representation) {
        return representation.text("RepresentationIdentifier").strip().toUpperCase(Locale.ROOT);
    }

    private static String type(IfcEntity representation) {
        return representation.text("RepresentationType").strip().toUpperCase(Locale.ROOT);
    }

    private static String shortLabel(IfcEntity representation) {
        return representation.text("RepresentationIdentifier") + "/" + representation.text("RepresentationType");
    }

    private static String label(IfcEntity representation, List<IfcEntity> items) {
        Set<String> types = new TreeSet<>();
        for (IfcEntity item : items) {
            types.add(item.type());
        }
        return shortLabel(representation) + ": " + String.join(", ", types);
    }
}

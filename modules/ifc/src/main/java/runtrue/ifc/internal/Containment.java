package runtrue.ifc.internal;

import org.jspecify.annotations.Nullable;
import runtrue.ifc.IfcEntity;

/** Where in the spatial structure elements are: their storey and building. */
final class Containment {
    /** Deeper than this a decomposition goes round in circles. */
    private static final int DEEPEST = 100;

    /** Names; empty when there is none. In infrastructure models facilities and their parts take these places. */
    record Place(String building, String storey) {}

    private final StepModel model;

    Containment(StepModel model) {
        this.model = model;
    }

    Place of(IfcEntity element) {
        IfcEntity storey = null;
        IfcEntity building = null;
        IfcEntity part = null;
        IfcEntity facility = null;
        IfcEntity structure = structureOf(element);
        for (int depth = 0; structure != null && depth < DEEPEST; depth++) {
            if (structure.isA("IfcBuildingStorey")) {
                storey = storey == null ? structure : storey;
            } else if (structure.isA("IfcBuilding")) {
                // A building may be split into parts that are buildings: the outermost is the one people mean.
                building = structure;
            } else if (structure.isA("IfcFacilityPart")) {
                part = part == null ? structure : part;
            } else if (structure.isA("IfcFacility")) {
                facility = structure;
            }
            structure = model.whole(structure);
        }
        return new Place(name(building == null ? facility : building), name(storey == null ? part : storey));
    }

    /** A part that is not itself contained is where its whole is. */
    private @Nullable IfcEntity structureOf(IfcEntity element) {
        IfcEntity part = element;
        for (int depth = 0; part != null && depth < DEEPEST; depth++) {
            int structure = model.relations().one(Relation.CONTAINED, part.id());
            if (structure != 0) {
                return model.entity(structure);
            }
            if (part.isA("IfcSpatialElement")) {
                return part;
            }
            part = model.whole(part);
        }
        return null;
    }

    private static String name(@Nullable IfcEntity structure) {
        if (structure == null) {
            return "";
        }
        String name = structure.text("Name");
        String known = name.isEmpty() ? structure.text("LongName") : name;
        return known.isEmpty() ? structure.text("GlobalId") : known;
    }
}

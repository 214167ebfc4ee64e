package runtrue.geometryserver;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcModel;

/** Relations of a model that put openings into elements, and parts under wholes: by instance number. */
final class Voids {
    private final IfcModel model;
    private final Map<Integer, List<Integer>> relations = new HashMap<>();

    Voids(IfcModel model) {
        this.model = model;
        for (IfcEntity relation : model.all("IfcRelVoidsElement")) {
            relation.refs("RelatingBuildingElement")
                    .forEach(element -> relations
                            .computeIfAbsent(element.id(), id -> new ArrayList<>())
                            .add(relation.id()));
        }
    }

    /** Relations that void an element. */
    List<Integer> of(IfcEntity element) {
        return relations.getOrDefault(element.id(), List.of());
    }

    /** The relation that makes one element a part of another. */
    Optional<IfcEntity> aggregation(IfcEntity whole, IfcEntity part) {
        return model.all("IfcRelAggregates").stream()
                .filter(r -> r.refs("RelatingObject").stream().anyMatch(e -> e.id() == whole.id()))
                .filter(r -> r.refs("RelatedObjects").stream().anyMatch(e -> e.id() == part.id()))
                .findFirst();
    }
}

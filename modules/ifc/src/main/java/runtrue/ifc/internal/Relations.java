package runtrue.ifc.internal;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import runtrue.ifc.schema.SchemaClass;
import runtrue.step.StepException;

/**
 * Relationships as maps in both directions, each made from the bytes when first asked for: a check of one roof needs
 * five of them, and no relationship instance is ever decoded.
 */
final class Relations {
    private final StepModel model;
    private final Map<Relation, Lazy<IntMultimap>> related = new EnumMap<>(Relation.class);
    private final Map<Relation, Lazy<IntMultimap>> relating = new EnumMap<>(Relation.class);

    Relations(StepModel model) {
        this.model = model;
        for (Relation relation : Relation.values()) {
            related.put(relation, new Lazy<>(() -> read(relation, true)));
            relating.put(relation, new Lazy<>(() -> read(relation, false)));
        }
    }

    /** From the one to the many, for example whole to parts; in file order. */
    int[] many(Relation relation, int one) {
        return map(related, relation).get(one);
    }

    /** From one of the many to the ones, for example element to its property sets; in file order. */
    int[] ones(Relation relation, int member) {
        return map(relating, relation).get(member);
    }

    /** From one of the many to the first one, 0 when there is none. */
    int one(Relation relation, int member) {
        return map(relating, relation).first(member);
    }

    private static IntMultimap map(Map<Relation, Lazy<IntMultimap>> maps, Relation relation) {
        return Objects.requireNonNull(maps.get(relation)).get();
    }

    private IntMultimap read(Relation relation, boolean fromOne) {
        IntList keys = new IntList(1024);
        IntList values = new IntList(1024);
        IntList ones = new IntList(4);
        IntList members = new IntList(64);
        for (String keyword : model.keywordsOf(relation.className)) {
            SchemaClass schemaClass = model.classOf(keyword);
            int oneIndex = schemaClass.indexOf(relation.one);
            int manyIndex = schemaClass.indexOf(relation.many);
            for (int id : model.file().idsOf(keyword)) {
                collect(id, oneIndex, ones);
                collect(id, manyIndex, members);
                pair(fromOne ? ones : members, fromOne ? members : ones, keys, values);
            }
        }
        return new IntMultimap(keys, values);
    }

    private void collect(int relationship, int attribute, IntList targets) {
        targets.clear();
        try {
            model.file().references(relationship, attribute, target -> add(relationship, target, targets));
        } catch (StepException e) {
            model.note("Relationship #" + relationship + " is passed over: " + e.getMessage());
        }
    }

    private void add(int relationship, int target, IntList targets) {
        if (model.file().contains(target)) {
            targets.add(target);
        } else {
            model.note("#" + relationship + " relates #" + target + ", which is not in the file; passed over");
        }
    }

    /** All with all: IFC4 lets one relationship assign several property sets at once. */
    private static void pair(IntList from, IntList to, IntList keys, IntList values) {
        for (int i = 0; i < from.size(); i++) {
            for (int j = 0; j < to.size(); j++) {
                keys.add(from.get(i));
                values.add(to.get(j));
            }
        }
    }
}

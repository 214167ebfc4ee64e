package runtrue.geometryserver;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcException;
import runtrue.ifc.IfcModel;
import runtrue.step.StepException;
import runtrue.step.StepFile;
import runtrue.step.StepInstance;
import runtrue.step.StepValue;

/**
 * A STEP file of a few elements of a model with the same instance numbers: start with {@link #add}. It holds the project
 * (units and contexts), each element with all that it refers to (placement, representation), and the openings of the
 * element and of the wholes that it is a part of. Elements that lead to a missing or broken record or to a circular
 * placement are refused, because the program drops them without a word or never comes back from them.
 */
final class ReducedFile {
    /** Wholes of wholes are followed so far; deeper ones are a circle. */
    private static final int MOST_WHOLES = 20;

    private final IfcModel model;
    private final StepFile file;
    private final Voids voids;
    private final int limit;
    private final Set<Integer> written = new HashSet<>();
    private final StringBuilder data = new StringBuilder();
    private final StepText text = new StepText(data);

    /** Parts by the aggregation that they are listed in. */
    private final Map<Integer, Set<Integer>> parts = new TreeMap<>();

    /**
     * A file without elements.
     *
     * @param limit greatest number of characters of its records
     * @throws ProgramException when not even the project can be written
     */
    ReducedFile(IfcModel model, Voids voids, int limit) throws ProgramException {
        this.model = model;
        this.file = model.file();
        this.voids = voids;
        this.limit = limit;
        try {
            commit(closure(model.all("IfcProject").stream().map(IfcEntity::id).toList()));
        } catch (IfcException | StepException e) {
            throw new ProgramException(String.valueOf(e.getMessage()), e);
        }
    }

    /**
     * Adds one element.
     *
     * @return false when the file would become too large; it is as before then
     * @throws ProgramException when the element cannot be given to the program, with the reason
     */
    boolean add(IfcEntity product) throws ProgramException {
        try {
            model.placement(product);
            List<Integer> roots = new ArrayList<>(List.of(product.id()));
            roots.addAll(openings(product));
            Map<Integer, Integer> aggregations = new TreeMap<>();
            IfcEntity part = product;
            for (int i = 0; i < MOST_WHOLES; i++) {
                IfcEntity whole = model.whole(part);
                if (whole == null) {
                    break;
                }
                addWhole(whole, part, roots, aggregations);
                part = whole;
            }
            if (!commit(closure(roots))) {
                return false;
            }
            aggregations.forEach((relation, id) ->
                    parts.computeIfAbsent(relation, r -> new TreeSet<>()).add(id));
            return true;
        } catch (IfcException | StepException e) {
            throw new ProgramException(String.valueOf(e.getMessage()), e);
        }
    }

    /** An opening of the whole goes through its parts. */
    private void addWhole(IfcEntity whole, IfcEntity part, List<Integer> roots, Map<Integer, Integer> aggregations) {
        List<Integer> relations = openings(whole);
        if (!relations.isEmpty()) {
            voids.aggregation(whole, part).ifPresent(relation -> {
                roots.add(whole.id());
                roots.add(part.id());
                relation.optionalRef("OwnerHistory").ifPresent(owner -> roots.add(owner.id()));
                roots.addAll(relations);
                aggregations.put(relation.id(), part.id());
            });
        }
    }

    private List<Integer> openings(IfcEntity element) {
        model.openings(element).forEach(model::placement);
        return voids.of(element);
    }

    /** Records that the roots lead to, without those that are written already. */
    private Collection<StepInstance> closure(List<Integer> roots) {
        Map<Integer, StepInstance> found = new LinkedHashMap<>();
        Deque<Integer> open = new ArrayDeque<>(roots);
        while (!open.isEmpty()) {
            int id = open.remove();
            if (!written.contains(id) && !found.containsKey(id)) {
                StepInstance record = file.instance(id);
                found.put(id, record);
                record.attributes().forEach(value -> follow(value, open));
            }
        }
        return found.values();
    }

    private static void follow(StepValue value, Deque<Integer> open) {
        if (value instanceof StepValue.Reference reference) {
            open.add(reference.id());
        } else if (value instanceof StepValue.ListOf list) {
            list.items().forEach(item -> follow(item, open));
        } else if (value instanceof StepValue.Typed typed) {
            follow(typed.value(), open);
        }
    }

    private boolean commit(Collection<StepInstance> records) {
        int before = data.length();
        for (StepInstance record : records) {
            text.append(record);
            if (data.length() > limit) {
                data.setLength(before);
                return false;
            }
        }
        records.forEach(record -> written.add(record.id()));
        return true;
    }

    /** The whole file, ASCII. */
    byte[] bytes() {
        StringBuilder whole = new StringBuilder("ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION(('reduced'),'2;1');\n"
                + "FILE_NAME('reduced.ifc','',(''),(''),'','','');\nFILE_SCHEMA(('");
        whole.append(model.schema()).append("'));\nENDSEC;\nDATA;\n").append(data);
        StepText tail = new StepText(whole);
        parts.forEach((relation, ids) -> tail.append(aggregation(file.instance(relation), ids)));
        return whole.append("ENDSEC;\nEND-ISO-10303-21;\n").toString().getBytes(StandardCharsets.US_ASCII);
    }

    /** The relation with those parts alone that are in the file. RelatedObjects is its last attribute in all schemas. */
    private static StepInstance aggregation(StepInstance relation, Set<Integer> ids) {
        List<StepValue> attributes = new ArrayList<>(relation.attributes());
        attributes.set(
                attributes.size() - 1,
                new StepValue.ListOf(ids.stream()
                        .map(id -> (StepValue) new StepValue.Reference(id))
                        .toList()));
        return new StepInstance(relation.id(), relation.keyword(), attributes);
    }
}

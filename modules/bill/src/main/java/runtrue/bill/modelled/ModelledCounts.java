package runtrue.bill.modelled;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.bill.Bill;
import runtrue.ifc.Element;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcModel;
import runtrue.roof.Roof;
import runtrue.roof.RoofPlane;
import runtrue.roof.read.Extents;
import runtrue.rules.buildup.BuildUp;
import runtrue.rules.buildup.BuildUpItem;
import runtrue.shape.ShapeReader;
import runtrue.shape.Tolerances;

/** Counts fasteners, accessories and single sheets that are modelled, by plane and kind. */
public final class ModelledCounts {
    private static final List<String> FASTENERS =
            List.of("IfcFastener", "IfcMechanicalFastener", "IfcDiscreteAccessory");

    private final RoofPlaces places;
    private final Counterparts counterparts;
    private final Map<Key, Group> groups = new TreeMap<>(Key.ORDER);

    private record Key(boolean sheets, String kind, String ifcClass, int planeNumber, String plane) {
        static final Comparator<Key> ORDER = Comparator.comparing(Key::sheets)
                .thenComparing(Key::kind)
                .thenComparing(Key::ifcClass)
                .thenComparing(Key::planeNumber);
    }

    private static final class Group {
        private long count;
        private long occurrences;
        private final Set<String> how = new TreeSet<>();
        private final Set<String> globalIds = new LinkedHashSet<>();
    }

    private final List<String> planes;

    private ModelledCounts(Roof roof, Bill bill, BuildUp buildUp) {
        places = new RoofPlaces(roof);
        counterparts = new Counterparts(bill, buildUp);
        planes = roof.planes().stream().map(p -> p.plane().id()).toList();
    }

    /**
     * By kind, then by plane in the order of the roof; what lies on none comes last.
     *
     * @param models of the drop, still open
     * @param bill of the roof, by the build-up
     */
    public static List<ModelledCount> of(List<IfcModel> models, Roof roof, Bill bill, BuildUp buildUp) {
        ModelledCounts counts = new ModelledCounts(roof, bill, buildUp);
        Vector3D origin = roof.settings().origin();
        SingleSheets sheets = new SingleSheets(roof, counts.places, ShapeReader.of(Tolerances.standard(), origin));
        Map<String, IfcModel> issued = new HashMap<>();
        for (IfcModel model : models) {
            Extents extents = new Extents(model, origin);
            Set<IfcEntity> fasteners = new LinkedHashSet<>();
            FASTENERS.forEach(name -> fasteners.addAll(model.all(name)));
            fasteners.stream()
                    .map(f -> Occurrence.of(f, extents, origin))
                    .filter(o -> isNew(issued, o.element(), model))
                    .forEach(counts::add);
            sheets.in(model, extents).stream()
                    .filter(s -> isNew(issued, s.element(), model))
                    .forEach(counts::add);
        }
        return counts.all();
    }

    /** What is issued in two files is one thing; a GlobalId that one file uses twice is a fault of that file, not one thing. */
    private static boolean isNew(Map<String, IfcModel> issued, Element element, IfcModel model) {
        return element.globalId().isEmpty()
                || issued.merge(element.globalId(), model, (first, again) -> first) == model;
    }

    private void add(Occurrence occurrence) {
        List<Vector3D> at = occurrence.places();
        if (at.size() == occurrence.count()) {
            at.forEach(place -> add(occurrence, places.at(place), 1));
        } else {
            add(occurrence, at.stream().findFirst().flatMap(places::at), occurrence.count());
        }
    }

    private void add(Occurrence occurrence, Optional<RoofPlane> plane, long count) {
        add(false, occurrence.kind(), occurrence.element(), plane, occurrence.how(), count);
    }

    private void add(SingleSheets.Placed sheet) {
        add(true, "sheet", sheet.element(), Optional.of(sheet.plane()), Occurrence.How.ONE, 1);
    }

    private void add(
            boolean sheets, String kind, Element element, Optional<RoofPlane> plane, Occurrence.How how, long count) {
        String id = plane.map(RoofPlane::id).orElse("");
        int number = id.isEmpty() ? planes.size() : planes.indexOf(id);
        Group group = groups.computeIfAbsent(new Key(sheets, kind, element.ifcClass(), number, id), k -> new Group());
        group.count += count;
        group.occurrences += group.globalIds.contains(element.globalId()) ? 0 : 1;
        group.how.add(how.label());
        group.globalIds.add(element.globalId());
    }

    private List<ModelledCount> all() {
        Map<Key, List<BuildUpItem>> compared = new LinkedHashMap<>();
        groups.keySet()
                .forEach(key -> compared.put(
                        key, key.sheets() ? counterparts.ofSheets() : counterparts.ofFasteners(key.kind())));
        List<ModelledCount> all = new ArrayList<>();
        groups.forEach((key, group) -> {
            List<BuildUpItem> items = key.plane().isEmpty() ? List.of() : compared.getOrDefault(key, List.of());
            all.add(new ModelledCount(
                    key.plane(),
                    key.kind(),
                    key.ifcClass(),
                    group.count,
                    group.occurrences,
                    String.join("; ", group.how),
                    items.stream().map(BuildUpItem::id).toList(),
                    items.isEmpty()
                            ? OptionalDouble.empty()
                            : OptionalDouble.of(counterparts.derived(items, key.plane())),
                    remark(key, items, compared),
                    List.copyOf(group.globalIds)));
        });
        return all;
    }

    private static String remark(Key key, List<BuildUpItem> items, Map<Key, List<BuildUpItem>> compared) {
        if (key.plane().isEmpty()) {
            return "lies on no roof plane, or its place is not known";
        } else if (items.isEmpty()) {
            return "the bill counts nothing of this name";
        }
        List<String> others = compared.entrySet().stream()
                .filter(e -> !e.getKey().equals(key) && e.getKey().plane().equals(key.plane()))
                .filter(e -> !Collections.disjoint(e.getValue(), items))
                .map(e -> e.getKey().kind())
                .distinct()
                .toList();
        return others.isEmpty() ? "" : "the same items are compared with " + String.join(", ", others);
    }
}

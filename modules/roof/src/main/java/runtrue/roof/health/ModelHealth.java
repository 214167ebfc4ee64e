package runtrue.roof.health;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import runtrue.ifc.Element;
import runtrue.ifc.IfcModel;
import runtrue.roof.ReadElement;
import runtrue.roof.Roof;
import runtrue.roof.read.DropElements;
import runtrue.roof.read.UnreadElement;

/**
 * Looks over what was read of a drop for all that a modeller should put right before the roof is ordered by it. It judges
 * nothing: what a rule says of the roof is a finding, what is said here is about the model.
 */
public final class ModelHealth {
    private final List<IfcModel> models;
    private final DropElements elements;
    private final Roof roof;
    private final Lines lines = new Lines();

    private ModelHealth(List<IfcModel> models, DropElements elements, Roof roof) {
        this.models = models;
        this.elements = elements;
        this.roof = roof;
    }

    /** Lines by importance, then by kind and file. Same drop, same lines. */
    public static List<HealthLine> of(List<IfcModel> models, DropElements elements, Roof roof) {
        ModelHealth health = new ModelHealth(models, elements, roof);
        health.unread();
        health.bodies();
        health.data();
        health.globalIds();
        health.trueNorth();
        new Sizes(elements, roof, health.lines).check();
        new Twins(elements, roof, health.lines).check();
        return health.lines.sorted();
    }

    private void unread() {
        for (UnreadElement u : elements.unread()) {
            String role = u.roof() ? "roof: " : "possible support: ";
            lines.add(HealthKind.UNREAD, u.element(), role + u.why().reason());
        }
        roof.unplaced().stream()
                .filter(u -> !u.counted())
                .forEach(u -> lines.add(HealthKind.WITHOUT_PLANE, u.element().element(), u.reason()));
    }

    /** Of members, only those that carry the roof: what a stair is made of is not the roof's business. */
    private Stream<ReadElement> ofTheRoof() {
        Set<Element> supports = Collections.newSetFromMap(new IdentityHashMap<>());
        roof.planes()
                .forEach(p -> p.supports().forEach(l -> l.pieces().forEach(piece -> supports.add(piece.element()))));
        return Stream.concat(
                elements.roofs().stream(), elements.members().stream().filter(m -> supports.contains(m.element())));
    }

    private void bodies() {
        ofTheRoof().forEach(e -> {
            if (!e.body().remarks().isEmpty()) {
                lines.add(
                        HealthKind.RESERVATION,
                        e.element(),
                        String.join("; ", e.body().remarks()));
            }
            if (!e.body().closed()) {
                lines.add(HealthKind.OPEN_BODY, e.element(), e.body().representation());
            }
        });
    }

    private void data() {
        Set<ReadElement> thick = Collections.newSetFromMap(new IdentityHashMap<>());
        roof.planes().stream()
                .filter(p -> p.plane().thickness().isPresent())
                .forEach(p -> thick.addAll(p.plane().elements()));
        for (ReadElement e : elements.roofs()) {
            boolean layers =
                    e.element().layers().stream().anyMatch(l -> l.thickness().isPresent());
            if (!e.body().closed() && !layers && !thick.contains(e)) {
                lines.add(HealthKind.NO_THICKNESS, e.element(), "a surface, and no layer with a thickness");
            }
            if (e.element().storey().isEmpty()) {
                String building = e.element().building();
                lines.add(HealthKind.NO_STOREY, e.element(), building.isEmpty() ? "and in no building" : "");
            }
        }
        ofTheRoof()
                .filter(e -> e.element().layers().isEmpty())
                .forEach(e -> lines.add(HealthKind.NO_MATERIAL, e.element(), ""));
    }

    /** Over all files of the drop: a copy may sit in another file. */
    private void globalIds() {
        Map<String, List<Element>> byId = new LinkedHashMap<>();
        Stream.of(
                        elements.roofs().stream().map(ReadElement::element),
                        elements.members().stream().map(ReadElement::element),
                        elements.unread().stream().map(UnreadElement::element))
                .flatMap(s -> s)
                .filter(e -> !e.globalId().isEmpty())
                .forEach(e -> byId.computeIfAbsent(e.globalId(), k -> new ArrayList<>())
                        .add(e));
        byId.values().stream()
                .filter(shared -> shared.size() > 1)
                .forEach(shared -> shared.forEach(
                        e -> lines.add(HealthKind.SAME_GLOBAL_ID, e, "shared with " + others(shared, e))));
    }

    @SuppressWarnings("ReferenceEquality") // two elements of a damaged file may be equal in all they say
    private static String others(List<Element> shared, Element one) {
        return String.join(
                ", ",
                shared.stream()
                        .filter(e -> e != one)
                        .map(e -> Names.of(e, one.file()))
                        .toList());
    }

    /** Where a file holds the roof; the structure's north is not asked for. */
    private void trueNorth() {
        for (IfcModel model : models) {
            String file = model.file().name();
            boolean hasRoof =
                    elements.roofs().stream().anyMatch(e -> e.element().file().equals(file));
            if (hasRoof && model.trueNorth().isEmpty()) {
                lines.add(HealthKind.NO_TRUE_NORTH, file, "");
            }
        }
    }
}

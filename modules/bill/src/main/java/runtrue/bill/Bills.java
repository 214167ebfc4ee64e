package runtrue.bill;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import runtrue.bill.count.RoofSubjects;
import runtrue.bill.offcut.MayServe;
import runtrue.bill.offcut.Offcuts;
import runtrue.roof.Roof;
import runtrue.roof.Zone;
import runtrue.rules.DropSettings;
import runtrue.rules.OrderLengths;
import runtrue.rules.RoofSystem;
import runtrue.rules.buildup.BuildUp;
import runtrue.rules.buildup.BuildUpItem;
import runtrue.rules.buildup.CountedOn;
import runtrue.rules.buildup.ItemKind;

/** Works out the quantities of a roof. */
public final class Bills {
    private Bills() {}

    /**
     * Lines in the order of the build-up. An edge that two planes share counts once, with the first of them.
     *
     * @param roof as laid out with the system's cover width
     * @param zones of its planes, as far as any could be formed
     */
    public static Bill of(Roof roof, List<Zone> zones, RoofSystem system, DropSettings settings, BuildUp buildUp) {
        RoofSubjects subjects = new RoofSubjects(roof, zones, system, settings, buildUp);
        Amounts amounts = new Amounts(buildUp);
        List<BillLine> lines = new ArrayList<>();
        for (BuildUpItem item : buildUp.items()) {
            lines.addAll(
                    item.kind() == ItemKind.SHEET
                            ? new SheetBill(item, subjects, amounts, roof, settings, name(item, system, settings))
                                    .lines()
                            : new ItemBill(item, subjects, amounts).lines());
        }
        List<String> missing = new ArrayList<>(lacking(buildUp, subjects));
        missing.addAll(amounts.missing());
        missing.addAll(unplaced(roof));
        return new Bill(
                lines,
                Figures.of(roof, lines, buildUp, system, settings),
                missing,
                offcuts(roof, system, settings, buildUp));
    }

    /** Of sheets that are each ordered in their own length. */
    private static List<MayServe> offcuts(Roof roof, RoofSystem system, DropSettings settings, BuildUp buildUp) {
        boolean ordered = buildUp.items().stream()
                .anyMatch(i -> i.kind() == ItemKind.SHEET
                        && i.coverWidth().isEmpty()
                        && i.packing().isEmpty());
        if (!ordered) {
            return List.of();
        }
        Map<String, OrderLengths> lengths = new LinkedHashMap<>();
        roof.planes().forEach(p -> lengths.put(p.plane().id(), new OrderLengths(p, roof.edges(), system)));
        return Offcuts.of(
                roof,
                settings.setOut(),
                (layout, sheet) -> Optional.ofNullable(
                                lengths.get(layout.plane().id()))
                        .map(l -> l.of(sheet))
                        .orElse(sheet.blank()),
                settings.si("transport_length"));
    }

    /** The roof's own sheets by profile, thickness, metal, finish and colour; others as the build-up names them. */
    private static String name(BuildUpItem item, RoofSystem system, DropSettings settings) {
        return item.coverWidth().isPresent() ? item.name() : item.name() + " " + SheetName.of(system, settings);
    }

    /** One sentence for each plane and reason, with all items that it keeps from being counted. */
    private static List<String> lacking(BuildUp buildUp, RoofSubjects subjects) {
        Map<String, List<String>> items = new LinkedHashMap<>();
        for (BuildUpItem item : buildUp.items()) {
            if (item.on() != CountedOn.DROP && item.on() != CountedOn.EDGE) {
                subjects.lacking(item.on())
                        .forEach(reason -> items.computeIfAbsent(reason, r -> new ArrayList<>())
                                .add(item.name()));
            }
        }
        List<String> sentences = new ArrayList<>();
        items.forEach((reason, names) -> sentences.add(String.join(", ", names) + " of " + reason));
        return sentences;
    }

    private static List<String> unplaced(Roof roof) {
        return roof.unplaced().stream()
                .filter(u -> !u.counted())
                .map(u -> "everything of " + u.element().element().ifcClass() + " \""
                        + u.element().element().name() + "\" ("
                        + u.element().element().globalId() + "): " + u.reason())
                .toList();
    }
}

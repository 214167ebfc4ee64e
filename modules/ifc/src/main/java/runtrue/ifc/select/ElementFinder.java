package runtrue.ifc.select;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcException;
import runtrue.ifc.IfcModel;

/** Finds the roof elements and the possible supports of a model by a {@link Selection}: start with {@link #find}. */
public final class ElementFinder {
    private static final String ASSEMBLY = "IfcElementAssembly";

    private final IfcModel model;
    private final Selection selection;
    private final Map<Integer, FoundElement> roofs = new TreeMap<>();
    private final Map<Integer, FoundElement> supports = new TreeMap<>();
    private final FoundWords words = new FoundWords();
    private final Map<Integer, BrokenElement> broken = new TreeMap<>();
    private final Set<String> notes = new LinkedHashSet<>();

    private ElementFinder(IfcModel model, Selection selection) {
        this.model = model;
        this.selection = selection;
    }

    /** Only elements of classes that the selection names are decoded. Same model, same answer. */
    public static FoundElements find(IfcModel model, Selection selection) {
        ElementFinder finder = new ElementFinder(model, selection);
        finder.findRoofs();
        finder.findSupports();
        return new FoundElements(
                List.copyOf(finder.roofs.values()),
                List.copyOf(finder.supports.values()),
                List.copyOf(finder.broken.values()),
                List.copyOf(finder.notes));
    }

    /** What is typed as roof and the parts of it go before what only a name tells. */
    private void findRoofs() {
        findRoofs(selection.roofs().stream()
                .filter(selector -> selector.name().isEmpty())
                .toList());
        findRoofs(selection.roofs().stream()
                .filter(selector -> selector.name().isPresent())
                .toList());
        List<FoundElement> containers = roofs.values().stream()
                .filter(roof -> isMereContainer(roof.entity()))
                .toList();
        roofs.values().removeAll(containers);
    }

    private void findRoofs(List<Selector> selectors) {
        List<IfcEntity> found = new ArrayList<>();
        for (IfcEntity element : candidates(selectors)) {
            if (!roofs.containsKey(element.id())) {
                evidence(element, selectors, true).ifPresent(evidence -> {
                    roofs.put(element.id(), new FoundElement(element, evidence));
                    found.add(element);
                });
            }
        }
        found.forEach(this::addParts);
    }

    /** Empty when no selector holds, one that excludes does, or the record cannot be read, which counts as broken. */
    private Optional<Evidence> evidence(IfcEntity element, List<Selector> selectors, boolean roof) {
        try {
            Candidate candidate = new Candidate(element, words);
            return candidate
                    .evidence(selectors)
                    .filter(evidence -> candidate.evidence(selection.excluded()).isEmpty());
        } catch (IfcException e) {
            notes.add(element.label() + " cannot be read and is left out: " + e.getMessage());
            broken.putIfAbsent(
                    element.id(), new BrokenElement(element, roof, "its record cannot be read: " + e.getMessage()));
            return Optional.empty();
        }
    }

    /** Parts of parts too: a roof may be made of roofs that hold the slabs. Plates among framing connect it. */
    private void addParts(IfcEntity roof) {
        Deque<IfcEntity> wholes = new ArrayDeque<>(List.of(roof));
        Set<Integer> seen = new TreeSet<>(Set.of(roof.id()));
        String[] classes = selection.roofParts().toArray(String[]::new);
        while (!wholes.isEmpty()) {
            IfcEntity whole = wholes.remove();
            boolean framing = whole.isA(ASSEMBLY) && model.parts(whole).stream().anyMatch(ElementFinder::isFraming);
            for (IfcEntity part : model.parts(whole)) {
                if (!seen.add(part.id())) {
                    continue;
                }
                wholes.add(part);
                List<Selector> parts = List.of(Selector.ofClass(classes), Selector.ofNoSubtypeOf(Selection.BARE));
                evidence(part, framing && part.isA("IfcPlate") ? List.of() : parts, true)
                        .ifPresent(evidence -> roofs.putIfAbsent(
                                part.id(), new FoundElement(part, Grounds.PART, "part of " + named(roof))));
            }
        }
    }

    private static boolean isFraming(IfcEntity element) {
        return element.isA("IfcBeam") || element.isA("IfcMember") || element.isA("IfcColumn");
    }

    private static String named(IfcEntity roof) {
        String name = roof.text("Name");
        return name.isEmpty() ? roof.label() : roof.type() + " \"" + name + "\"";
    }

    /**
     * Without a body of its own, its parts speak for it. A roof without such parts stays, to be reported as unread; an
     * assembly is made of its parts alone, and one of framing is none.
     */
    private boolean isMereContainer(IfcEntity roof) {
        return !Bodies.has(roof) && (roof.isA(ASSEMBLY) || hasRoofPart(roof, new TreeSet<>()));
    }

    private boolean hasRoofPart(IfcEntity whole, Set<Integer> seen) {
        if (!seen.add(whole.id())) {
            return false;
        }
        for (IfcEntity part : model.parts(whole)) {
            boolean body = Bodies.has(part) || Bodies.followFromMaterial(part);
            if ((roofs.containsKey(part.id()) && body) || hasRoofPart(part, seen)) {
                return true;
            }
        }
        return false;
    }

    private void findSupports() {
        for (IfcEntity element : candidates(selection.supports())) {
            if (!roofs.containsKey(element.id())) {
                evidence(element, selection.supports(), false)
                        .ifPresent(evidence -> supports.put(element.id(), new FoundElement(element, evidence)));
            }
        }
    }

    private List<IfcEntity> candidates(List<Selector> selectors) {
        Map<Integer, IfcEntity> candidates = new TreeMap<>();
        for (Selector selector : selectors) {
            Set<String> classes = selector.classes().isEmpty() ? Set.of("IfcElement") : selector.classes();
            for (String className : classes) {
                model.all(className).stream()
                        .filter(selector::admits)
                        .forEach(element -> candidates.putIfAbsent(element.id(), element));
            }
        }
        return new ArrayList<>(candidates.values());
    }
}

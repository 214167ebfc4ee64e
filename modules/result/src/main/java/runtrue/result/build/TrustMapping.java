package runtrue.result.build;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import runtrue.ifc.Element;
import runtrue.ifc.stated.StatedKind;
import runtrue.result.ElementRef;
import runtrue.result.Measure;
import runtrue.result.ReadMethod;
import runtrue.result.StatedValue;
import runtrue.roof.PlaneLayout;
import runtrue.roof.ReadElement;
import runtrue.roof.Roof;

/** How elements were read, and what the models state of them, in the result's words and units. */
final class TrustMapping {
    private TrustMapping() {}

    /** Elements of planes in the order of the planes, then supports in the order of the members; each once. */
    static List<ReadMethod> methods(Roof roof, List<ReadElement> members) {
        IdentityHashMap<Element, Set<String>> roofs = new IdentityHashMap<>();
        IdentityHashMap<Element, Set<String>> supports = new IdentityHashMap<>();
        List<ReadElement> ordered = new ArrayList<>();
        for (PlaneLayout layout : roof.planes()) {
            String id = layout.plane().id();
            for (ReadElement element : layout.plane().elements()) {
                if (!roofs.containsKey(element.element())) {
                    ordered.add(element);
                }
                roofs.computeIfAbsent(element.element(), e -> new TreeSet<>()).add(id);
            }
            layout.supports()
                    .forEach(line -> line.pieces()
                            .forEach(piece -> supports.computeIfAbsent(piece.element(), e -> new TreeSet<>())
                                    .add(id)));
        }
        List<ReadMethod> methods = new ArrayList<>();
        ordered.forEach(e -> methods.add(method(e, "roof", roofs.getOrDefault(e.element(), Set.of()))));
        for (ReadElement member : members) {
            Set<String> carried = supports.get(member.element());
            if (carried != null) {
                methods.add(method(member, "support", carried));
            }
        }
        return methods;
    }

    static ReadMethod method(ReadElement read, String role, Set<String> planes) {
        boolean closed = read.body().closed();
        List<String> remarks = new ArrayList<>(read.body().remarks());
        if (!closed) {
            remarks.add(
                    role.equals("roof")
                            ? "not closed: its upper side was assumed to be the roof"
                            : "not closed: its outermost corners were assumed to bound it");
        }
        return new ReadMethod(
                PlaneMapping.element(read.element(), read.evidence()),
                role,
                List.copyOf(planes),
                closed && !read.body().assumed() ? "derived" : "assumed",
                read.body().representation(),
                read.body().engine(),
                closed,
                remarks);
    }

    static StatedValue stated(runtrue.roof.stated.StatedValue value) {
        StatedKind kind = value.stated().kind();
        ElementRef element = PlaneMapping.element(value.element(), "");
        boolean compared = value.derived().isPresent();
        return new StatedValue(
                element,
                value.roof() ? "roof" : "support",
                value.planes(),
                kind.label(),
                value.stated().source(),
                value.stated().inherited(),
                value.stated().unitStated(),
                measure(kind, value.value()),
                measure(kind, value.derived()),
                value.derivedFrom(),
                measure(kind, value.difference()),
                compared ? Optional.of(measure(kind, value.tolerance())) : Optional.empty(),
                verdict(value),
                compared ? value.mistake().sentence() : value.reason());
    }

    private static String verdict(runtrue.roof.stated.StatedValue value) {
        if (value.derived().isEmpty()) {
            return "not compared";
        }
        return value.contradicts() ? "contradicts" : "agrees";
    }

    private static Optional<Measure> measure(StatedKind kind, OptionalDouble si) {
        return si.isPresent() ? Optional.of(measure(kind, si.getAsDouble())) : Optional.empty();
    }

    private static Measure measure(StatedKind kind, double si) {
        return switch (kind) {
            case PITCH -> new Measure(Rounded.degrees(si), "deg");
            case AREA -> new Measure(Rounded.of(si), "m2");
            case LENGTH -> new Measure(Rounded.of(si), "m");
            case THICKNESS -> new Measure(Rounded.of(si * 1000), "mm");
        };
    }
}

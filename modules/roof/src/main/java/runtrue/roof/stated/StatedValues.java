package runtrue.roof.stated;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.Element;
import runtrue.ifc.IfcModel;
import runtrue.ifc.Units;
import runtrue.ifc.stated.StatedKind;
import runtrue.ifc.stated.StatedQuantities;
import runtrue.ifc.stated.StatedQuantity;
import runtrue.roof.PlaneLayout;
import runtrue.roof.ReadElement;
import runtrue.roof.Roof;
import runtrue.roof.SupportLine;
import runtrue.roof.SupportPiece;
import runtrue.roof.read.DropElements;
import runtrue.roof.support.Member;

/** Every value that the model states of its roof elements, whole roofs and supports, beside the derived one. */
public final class StatedValues {
    private final DropElements elements;
    private final Roof roof;
    private final StatedTolerances tolerances;
    private final Map<String, Units> units = new HashMap<>();

    /** By identity: two elements of a damaged file may be equal in all they say. */
    private final IdentityHashMap<Element, Set<String>> planes = new IdentityHashMap<>();

    private final List<StatedValue> values = new ArrayList<>();

    private StatedValues(List<IfcModel> models, DropElements elements, Roof roof, StatedTolerances tolerances) {
        this.elements = elements;
        this.roof = roof;
        this.tolerances = tolerances;
        models.forEach(m -> units.put(m.file().name(), m.units()));
        for (PlaneLayout layout : roof.planes()) {
            String id = layout.plane().id();
            layout.plane().elements().forEach(e -> at(e.element()).add(id));
            layout.supports()
                    .forEach(l -> l.pieces().forEach(p -> at(p.element()).add(id)));
        }
    }

    /**
     * Values in the order of the elements: roof elements, whole roofs, members that support a plane. Elements that state
     * nothing of the kind give nothing.
     *
     * @param models of the drop, as the elements were read from
     */
    public static List<StatedValue> of(
            List<IfcModel> models, DropElements elements, Roof roof, StatedTolerances tolerances) {
        StatedValues made = new StatedValues(models, elements, roof, tolerances);
        WholeRoofs wholes = new WholeRoofs(models, elements, roof);
        elements.roofs().forEach(e -> made.roofElement(e, wholes));
        wholes.described(elements).forEach(w -> made.whole(w, wholes.measured(w)));
        made.members();
        return List.copyOf(made.values);
    }

    private Set<String> at(Element element) {
        return planes.computeIfAbsent(element, k -> new TreeSet<>());
    }

    private Units unitsOf(Element element) {
        return units.getOrDefault(element.file(), new Units(1, 1, 1, 1));
    }

    /** The body is measured only where there is something to compare it with. */
    private void roofElement(ReadElement read, WholeRoofs wholes) {
        List<StatedQuantity> stated = StatedQuantities.ofRoof(read.element(), unitsOf(read.element()));
        if (stated.isEmpty()) {
            return;
        }
        ElementMeasures measures = ElementMeasures.of(read, roof.settings().tolerances());
        AreaCheck areas = new AreaCheck(tolerances, measures.areas(), wholes.around(read.element()));
        double pitch =
                measures.slopes().isEmpty() ? 0 : measures.slopes().get(0).pitch();
        for (StatedQuantity quantity : stated) {
            Comparison comparison = switch (quantity.kind()) {
                case AREA -> areas.compare(quantity);
                case PITCH -> new PitchCheck(tolerances).compare(quantity, measures.slopes());
                case THICKNESS -> new LengthCheck(tolerances).thickness(quantity, measures.thicknesses(), pitch);
                case LENGTH -> Comparison.none(quantity.value(), "a roof element has no axis to measure along");
            };
            add(read.element(), true, quantity, comparison, at(read.element()));
        }
    }

    /** Of a whole, only areas: pitch and thickness are its parts' own. */
    private void whole(Element whole, WholeRoofs.Measured measured) {
        AreaCheck areas = new AreaCheck(tolerances, measured.areas(), Optional.empty());
        for (StatedQuantity quantity : StatedQuantities.ofRoof(whole, unitsOf(whole))) {
            if (quantity.kind() == StatedKind.AREA) {
                Comparison comparison = measured.reason().isEmpty()
                        ? areas.compare(quantity)
                        : Comparison.none(quantity.value(), measured.reason());
                add(whole, true, quantity, comparison, Set.copyOf(measured.planes()));
            }
        }
    }

    /** Of all that might be supports, those that are: the others are not the roof's business. */
    private void members() {
        Set<Element> supports = Collections.newSetFromMap(new IdentityHashMap<>());
        roof.planes().stream()
                .flatMap(l -> l.supports().stream())
                .map(SupportLine::pieces)
                .flatMap(List::stream)
                .map(SupportPiece::element)
                .forEach(supports::add);
        elements.members().stream().filter(m -> supports.contains(m.element())).forEach(this::member);
    }

    private void member(ReadElement read) {
        List<StatedQuantity> stated = StatedQuantities.ofMember(read.element(), unitsOf(read.element()));
        Optional<Member> member = stated.isEmpty() ? Optional.empty() : Member.of(read);
        if (member.isEmpty()) {
            return;
        }
        Vector3D axis = member.get().axis();
        double slope = Math.asin(Math.min(1, Math.abs(axis.getZ())));
        for (StatedQuantity quantity : stated) {
            Comparison comparison = quantity.kind() == StatedKind.PITCH
                    ? new PitchCheck(tolerances).compare(quantity, slope, "slope of its axis")
                    : new LengthCheck(tolerances)
                            .length(quantity, member.get().extent(axis), depth(member.get()), slope);
            add(read.element(), false, quantity, comparison, at(read.element()));
        }
    }

    private static double depth(Member member) {
        Vector3D side = member.axis().orthogonal();
        return Math.max(member.extent(side), member.extent(member.axis().cross(side)));
    }

    private void add(Element element, boolean ofRoof, StatedQuantity stated, Comparison made, Set<String> in) {
        values.add(new StatedValue(
                element,
                ofRoof,
                stated,
                made.value(),
                made.derived(),
                made.derivedFrom(),
                made.tolerance(),
                made.mistake(),
                made.reason(),
                in.stream().sorted().toList()));
    }
}

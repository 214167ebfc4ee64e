package runtrue.samples.ifc;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What hangs on elements: properties, material layers, types, openings, and grids. */
public final class Attachments {
    private final IfcFile file;
    private final StepWriter step;

    Attachments(IfcFile file) {
        this.file = file;
        this.step = file.step();
    }

    /** The common set of slabs with a stated pitch, radians. */
    public void statedPitch(List<Place> slabs, String name, double pitch) {
        StepRef angle = property("PitchAngle", new Step.Typed("IFCPLANEANGLEMEASURE", file.angle(pitch)));
        StepRef external = property("IsExternal", new Step.Typed("IFCBOOLEAN", true));
        StepRef set = step.entity(
                "IFCPROPERTYSET",
                file.guid("Pset_SlabCommon/" + name),
                file.owner(),
                "Pset_SlabCommon",
                Step.UNSET,
                List.of(angle, external));
        many("IFCRELDEFINESBYPROPERTIES", name, slabs, set);
    }

    /** The base quantities of a slab with nothing but a gross area, in the file's area unit. */
    public void statedGrossArea(Place slab, String name, double area) {
        StepRef gross = file.schema().isFromIfc4()
                ? step.entity("IFCQUANTITYAREA", "GrossArea", Step.UNSET, Step.UNSET, area, Step.UNSET)
                : step.entity("IFCQUANTITYAREA", "GrossArea", Step.UNSET, Step.UNSET, area);
        StepRef set = step.entity(
                "IFCELEMENTQUANTITY",
                file.guid("Qto_SlabBaseQuantities/" + name),
                file.owner(),
                "Qto_SlabBaseQuantities",
                Step.UNSET,
                Step.UNSET,
                List.of(gross));
        many("IFCRELDEFINESBYPROPERTIES", "quantities of " + name, List.of(slab), set);
    }

    /**
     * A set of base quantities with nothing but a length, in the file's length unit (from IFC4).
     *
     * @param set name of the set
     * @param quantity name of the length in it
     */
    public void statedLength(Place element, String name, String set, String quantity, double length) {
        StepRef value =
                step.entity("IFCQUANTITYLENGTH", quantity, Step.UNSET, Step.UNSET, file.length(length), Step.UNSET);
        StepRef quantities = step.entity(
                "IFCELEMENTQUANTITY",
                file.guid(set + "/" + name),
                file.owner(),
                set,
                Step.UNSET,
                Step.UNSET,
                List.of(value));
        many("IFCRELDEFINESBYPROPERTIES", "quantities of " + name, List.of(element), quantities);
    }

    /** What elements are made of (from IFC4). */
    public void material(List<Place> elements, String name, String material) {
        many(
                "IFCRELASSOCIATESMATERIAL",
                "material of " + name,
                elements,
                step.shared("IFCMATERIAL", material, Step.UNSET, Step.UNSET));
    }

    /**
     * A build-up.
     *
     * @param layers thickness in metres by material, in order
     */
    public void layers(List<Place> elements, String name, Map<String, Double> layers) {
        List<StepRef> written = new ArrayList<>();
        layers.forEach((material, thickness) -> written.add(layer(material, file.length(thickness))));
        StepRef set = file.schema().isFromIfc4()
                ? step.entity("IFCMATERIALLAYERSET", written, name, Step.UNSET)
                : step.entity("IFCMATERIALLAYERSET", written, name);
        many("IFCRELASSOCIATESMATERIAL", name, elements, set);
    }

    /**
     * A type that owns the shape its elements map.
     *
     * @param entity IFCSLABTYPE or IFCMEMBERTYPE
     */
    public void type(String entity, String name, String predefinedType, StepRef map, List<Place> elements) {
        StepRef type = step.entity(
                entity,
                file.guid(entity + "/" + name),
                file.owner(),
                name,
                Step.UNSET,
                Step.UNSET,
                Step.UNSET,
                List.of(map),
                Step.UNSET,
                Step.UNSET,
                Step.enumeration(predefinedType));
        many("IFCRELDEFINESBYTYPE", name, elements, type);
    }

    /** An opening in an element, given in that element's own axes. */
    public Place opening(Place slab, String name, Body hole) {
        Place opening = file.element("IFCOPENINGELEMENT", name)
                .predefinedType("OPENING")
                .body(hole)
                .addAsPart(slab);
        one("IFCRELVOIDSELEMENT", name, slab, opening);
        return opening;
    }

    /** The same with a skylight filling it (from IFC4). */
    public void rooflight(Place slab, String name, Body hole, Body light, double height, double width) {
        Place opening = opening(slab, name, hole);
        Place window = file.element("IFCWINDOW", name)
                .body(light)
                .further(List.of(
                        Step.UNSET,
                        file.length(height),
                        file.length(width),
                        Step.enumeration("SKYLIGHT"),
                        Step.UNSET,
                        Step.UNSET))
                .addAsPart(opening);
        one("IFCRELFILLSELEMENT", name, opening, window);
    }

    /** Makes an element contained in a place after all. */
    public void contain(Place place, Place element) {
        file.contain(place.entity(), element.entity());
    }

    /**
     * A rectangular grid in the building's axes.
     *
     * @param across positions along x by axis tag, the axes running along y
     * @param along positions along y by axis tag, the axes running along x
     */
    public void grid(Place place, Map<String, Double> across, Map<String, Double> along) {
        double margin = 2;
        double[] x = range(across, margin);
        double[] y = range(along, margin);
        List<StepRef> curves = new ArrayList<>();
        List<StepRef> us = new ArrayList<>();
        List<StepRef> vs = new ArrayList<>();
        across.forEach((tag, at) -> us.add(axis(tag, curves, at, y[0], at, y[1])));
        along.forEach((tag, at) -> vs.add(axis(tag, curves, x[0], at, x[1], at)));
        StepRef set = step.entity("IFCGEOMETRICCURVESET", curves);
        List<Object> attributes = new ArrayList<>(List.of(us, vs, Step.UNSET));
        if (file.schema().isFromIfc4()) {
            attributes.add(Step.enumeration("RECTANGULAR"));
        }
        file.element("IFCGRID", "Grid")
                .footPrint(new Body("GeometricCurveSet", set))
                .further(attributes)
                .addTo(place);
    }

    private StepRef axis(String tag, List<StepRef> curves, double x0, double y0, double x1, double y1) {
        Profiles profiles = file.profiles();
        StepRef curve = profiles.polyline(List.of(profiles.point(x0, y0), profiles.point(x1, y1)));
        curves.add(curve);
        return step.entity("IFCGRIDAXIS", tag, curve, true);
    }

    private static double[] range(Map<String, Double> positions, double margin) {
        double[] sorted = positions.values().stream()
                .mapToDouble(Double::doubleValue)
                .sorted()
                .toArray();
        return new double[] {sorted[0] - margin, sorted[sorted.length - 1] + margin};
    }

    private StepRef property(String name, Object value) {
        return step.entity("IFCPROPERTYSINGLEVALUE", name, Step.UNSET, value, Step.UNSET);
    }

    private StepRef layer(String material, double thickness) {
        if (file.schema().isFromIfc4()) {
            StepRef written = step.shared("IFCMATERIAL", material, Step.UNSET, Step.UNSET);
            return step.entity(
                    "IFCMATERIALLAYER", written, thickness, Step.UNSET, material, Step.UNSET, Step.UNSET, Step.UNSET);
        }
        return step.entity("IFCMATERIALLAYER", step.shared("IFCMATERIAL", material), thickness, Step.UNSET);
    }

    private void many(String entity, String name, List<Place> elements, StepRef definition) {
        List<StepRef> related = elements.stream().map(Place::entity).toList();
        step.entity(entity, file.guid(entity + "/" + name), file.owner(), Step.UNSET, Step.UNSET, related, definition);
    }

    private void one(String entity, String name, Place relating, Place related) {
        step.entity(
                entity,
                file.guid(entity + "/" + name),
                file.owner(),
                Step.UNSET,
                Step.UNSET,
                relating.entity(),
                related.entity());
    }
}

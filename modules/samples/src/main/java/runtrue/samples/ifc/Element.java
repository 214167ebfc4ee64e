package runtrue.samples.ifc;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * An element on its way into the file: set what it has, then call {@link #addTo} or {@link #addAsPart}. Knows which
 * schema gives an entity a PredefinedType.
 */
public final class Element {
    private static final Set<String> TYPED_IN_IFC2X3 = Set.of("IFCSLAB", "IFCROOF");

    private final IfcFile file;
    private final String entity;
    private final String name;
    private String identity;
    private Object objectType = Step.UNSET;
    private Object predefinedType = Step.UNSET;
    private Object description = Step.UNSET;
    private Frame frame = Frame.WORLD;
    private Optional<StepRef> shape = Optional.empty();
    private List<Object> further = List.of();

    Element(IfcFile file, String entity, String name) {
        this.file = file;
        this.entity = entity;
        this.name = name;
        this.identity = entity + "/" + name;
    }

    /** Used where the schema has the attribute for this entity; the object type says it elsewhere. */
    public Element predefinedType(String type) {
        predefinedType = Step.enumeration(type);
        return this;
    }

    public Element objectType(String type) {
        objectType = type;
        return this;
    }

    public Element description(String text) {
        description = text;
        return this;
    }

    /** Own axes, in the axes of what it is added to. */
    public Element frame(Frame own) {
        frame = own;
        return this;
    }

    public Element body(Body body) {
        shape = Optional.of(shape(file.bodyContext(), "Body", body));
        return this;
    }

    public Element footPrint(Body body) {
        shape = Optional.of(shape(file.footPrintContext(), "FootPrint", body));
        return this;
    }

    /** Gives it the GlobalId of the element of this entity and another name: a fault written on purpose. */
    public Element withGlobalIdOf(String otherName) {
        identity = entity + "/" + otherName;
        return this;
    }

    /** Adds it as contained in a building or storey. */
    public Place addTo(Place place) {
        Place added = addAsPart(place);
        file.contain(place.entity(), added.entity());
        return added;
    }

    /** Adds it placed relative to {@code place} and contained nowhere: a part, an opening. */
    public Place addAsPart(Place place) {
        StepRef placement = file.localPlacement(
                place.placement(), frame.moved(place.origin().times(-1)));
        List<Object> attributes = new ArrayList<>(List.of(
                file.guid(identity),
                file.owner(),
                name,
                description,
                objectType,
                placement,
                shape.<Object>map(s -> s).orElse(Step.UNSET)));
        attributes.addAll(ownAttributes());
        return new Place(file.step().entity(entity, attributes.toArray()), placement, Vec.ZERO);
    }

    /** Attributes that follow the representation, in place of Tag and PredefinedType. */
    Element further(List<Object> values) {
        further = values;
        return this;
    }

    private List<Object> ownAttributes() {
        if (!further.isEmpty()) {
            return further;
        }
        boolean typed = file.schema().isFromIfc4() || TYPED_IN_IFC2X3.contains(entity);
        return typed ? List.of(Step.UNSET, predefinedType) : List.of(Step.UNSET);
    }

    private StepRef shape(StepRef context, String identifier, Body body) {
        StepRef representation =
                file.step().entity("IFCSHAPEREPRESENTATION", context, identifier, body.type(), List.of(body.item()));
        return file.step().entity("IFCPRODUCTDEFINITIONSHAPE", Step.UNSET, Step.UNSET, List.of(representation));
    }
}

package runtrue.samples.ifc;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * One IFC file being written: header, project, units, contexts, spatial structure and relations. All lengths are given in
 * metres and angles in radians; the file's own units are applied here. Dates and GlobalIds are fixed.
 */
public final class IfcFile {
    /** 2026-01-01T00:00:00Z. */
    private static final int CREATED = 1_767_225_600;

    private final String fileName;
    private final Schema schema;
    private final LengthUnit lengthUnit;
    private final AngleUnit angleUnit;
    private final StepWriter step = new StepWriter();
    private final Map<StepRef, List<StepRef>> contained = new LinkedHashMap<>();
    private final StepRef context;
    private final StepRef body;
    private final StepRef footPrint;
    private final StepRef project;
    private final Object owner;

    /**
     * Starts a file with its project.
     *
     * @param trueNorth radians clockwise from +Y, empty when the file is not to state it
     */
    public IfcFile(
            String fileName,
            Schema schema,
            LengthUnit lengthUnit,
            AngleUnit angleUnit,
            String projectName,
            OptionalDouble trueNorth) {
        this.fileName = fileName;
        this.schema = schema;
        this.lengthUnit = lengthUnit;
        this.angleUnit = angleUnit;
        this.owner = schema.isFromIfc4() ? Step.UNSET : ownerHistory();
        Object north = trueNorth.isEmpty() ? Step.UNSET : trueNorth(trueNorth.getAsDouble());
        double precision = lengthUnit.of(1e-5);
        context = step.entity(
                "IFCGEOMETRICREPRESENTATIONCONTEXT", Step.UNSET, "Model", 3, precision, axes(Frame.WORLD), north);
        body = subContext("Body", "MODEL_VIEW");
        footPrint = subContext("FootPrint", "MODEL_VIEW");
        StepRef units = new UnitWriter(step).assignment(lengthUnit, angleUnit);
        project = step.entity(
                "IFCPROJECT",
                guid("project"),
                owner,
                projectName,
                "Invented for demonstration and tests",
                Step.UNSET,
                Step.UNSET,
                Step.UNSET,
                List.of(context),
                units);
    }

    /** The site and a building on it, placed in the file's world axes. */
    public Place building(String name, Frame where) {
        StepRef sitePlacement = localPlacement(Step.UNSET, Frame.WORLD);
        StepRef site = spatial("IFCSITE", "Ottermoor Lock Estate", sitePlacement, unset(5));
        StepRef placement = localPlacement(sitePlacement, where);
        StepRef building = spatial("IFCBUILDING", name, placement, unset(3));
        relation("IFCRELAGGREGATES", "site of project", project, List.of(site));
        relation("IFCRELAGGREGATES", "building of site", site, List.of(building));
        return new Place(building, placement, Vec.ZERO);
    }

    /** A storey; frames of what stands in it are still given in the building's axes. */
    public Place storey(Place building, String name, double elevation) {
        Vec origin = Vec.Z.times(elevation);
        StepRef placement = localPlacement(building.placement(), Frame.at(origin));
        StepRef storey = spatial("IFCBUILDINGSTOREY", name, placement, List.of(lengthUnit.of(elevation)));
        relation("IFCRELAGGREGATES", "storey " + name, building.entity(), List.of(storey));
        return new Place(storey, placement, origin);
    }

    /** Starts an element; see {@link Element}. */
    public Element element(String entity, String name) {
        return new Element(this, entity, name);
    }

    public Bodies bodies() {
        return new Bodies(this);
    }

    public Profiles profiles() {
        return new Profiles(this);
    }

    /** Makes parts of a whole: slabs of a roof. */
    public void aggregate(Place whole, String name, List<Place> parts) {
        relation(
                "IFCRELAGGREGATES",
                name,
                whole.entity(),
                parts.stream().map(Place::entity).toList());
    }

    /** Attaches properties, data and materials; see {@link Attachments}. */
    public Attachments attachments() {
        return new Attachments(this);
    }

    /** Ends the file. Call once. */
    public String text() {
        int number = 0;
        for (Map.Entry<StepRef, List<StepRef>> place : contained.entrySet()) {
            String id = guid("IFCRELCONTAINEDINSPATIALSTRUCTURE/" + ++number);
            step.entity(
                    "IFCRELCONTAINEDINSPATIALSTRUCTURE",
                    id,
                    owner,
                    Step.UNSET,
                    Step.UNSET,
                    place.getValue(),
                    place.getKey());
        }
        return step.file(header());
    }

    Schema schema() {
        return schema;
    }

    StepWriter step() {
        return step;
    }

    Object owner() {
        return owner;
    }

    double length(double metres) {
        return lengthUnit.of(metres);
    }

    double angle(double radians) {
        return angleUnit.of(radians);
    }

    /** The GlobalId for a name that is used once in this file. */
    String guid(String name) {
        return GlobalIds.of(fileName + "/" + name);
    }

    StepRef bodyContext() {
        return body;
    }

    StepRef footPrintContext() {
        return footPrint;
    }

    void contain(StepRef place, StepRef element) {
        contained.computeIfAbsent(place, p -> new ArrayList<>()).add(element);
    }

    /** A relation of one thing to many, its attributes in the order of IfcRelAggregates. */
    void relation(String entity, String name, StepRef relating, List<StepRef> related) {
        step.entity(entity, guid(entity + "/" + name), owner, Step.UNSET, Step.UNSET, relating, related);
    }

    StepRef point(Vec point) {
        return step.shared("IFCCARTESIANPOINT", List.of(length(point.x()), length(point.y()), length(point.z())));
    }

    StepRef direction(Vec direction) {
        return step.shared("IFCDIRECTION", List.of(direction.x(), direction.y(), direction.z()));
    }

    StepRef axes(Frame frame) {
        return step.shared("IFCAXIS2PLACEMENT3D", point(frame.origin()), direction(frame.z()), direction(frame.x()));
    }

    StepRef localPlacement(Object parent, Frame frame) {
        return step.entity("IFCLOCALPLACEMENT", parent, axes(frame));
    }

    private StepRef spatial(String entity, String name, StepRef placement, List<?> further) {
        List<Object> attributes = new ArrayList<>(List.of(
                guid(entity + "/" + name),
                owner,
                name,
                Step.UNSET,
                Step.UNSET,
                placement,
                Step.UNSET,
                Step.UNSET,
                Step.enumeration("ELEMENT")));
        attributes.addAll(further);
        return step.entity(entity, attributes.toArray());
    }

    private static List<Step.Token> unset(int count) {
        return Collections.nCopies(count, Step.UNSET);
    }

    private StepRef ownerHistory() {
        StepRef person = step.entity(
                "IFCPERSON",
                Step.UNSET,
                "Sample",
                "Writer",
                Step.UNSET,
                Step.UNSET,
                Step.UNSET,
                Step.UNSET,
                Step.UNSET);
        StepRef organization =
                step.entity("IFCORGANIZATION", Step.UNSET, "Runtrue", Step.UNSET, Step.UNSET, Step.UNSET);
        StepRef user = step.entity("IFCPERSONANDORGANIZATION", person, organization, Step.UNSET);
        StepRef application =
                step.entity("IFCAPPLICATION", organization, "1", "Runtrue sample writer", "runtrue-samples");
        return step.entity(
                "IFCOWNERHISTORY",
                user,
                application,
                Step.UNSET,
                Step.enumeration("ADDED"),
                Step.UNSET,
                Step.UNSET,
                Step.UNSET,
                CREATED);
    }

    private StepRef trueNorth(double clockwise) {
        return step.entity("IFCDIRECTION", List.of(StrictMath.sin(clockwise), StrictMath.cos(clockwise)));
    }

    private StepRef subContext(String identifier, String view) {
        return step.entity(
                "IFCGEOMETRICREPRESENTATIONSUBCONTEXT",
                identifier,
                "Model",
                Step.DERIVED,
                Step.DERIVED,
                Step.DERIVED,
                Step.DERIVED,
                context,
                Step.UNSET,
                Step.enumeration(view),
                Step.UNSET);
    }

    private String header() {
        String comment = "Comment [Invented data for demonstration and tests]";
        return "FILE_DESCRIPTION(" + Step.text(List.of(schema.view(), comment)) + ",'2;1');\n"
                + "FILE_NAME(" + Step.text(fileName) + ",'2026-01-01T00:00:00',('Runtrue samples'),('Runtrue'),"
                + "'Runtrue sample writer 1','Runtrue sample writer 1','');\n"
                + "FILE_SCHEMA((" + Step.text(schema.identifier()) + "));\n";
    }
}

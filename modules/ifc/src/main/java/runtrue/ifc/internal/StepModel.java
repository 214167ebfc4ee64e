package runtrue.ifc.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReferenceArray;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.jspecify.annotations.Nullable;
import runtrue.ifc.Element;
import runtrue.ifc.GridAxis;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcException;
import runtrue.ifc.IfcModel;
import runtrue.ifc.Units;
import runtrue.ifc.schema.Schema;
import runtrue.ifc.schema.SchemaClass;
import runtrue.step.StepFile;

/** A model on top of an indexed file. Everything beyond units and contexts is worked out when first asked for. */
public final class StepModel implements IfcModel {
    /** Entities lately used, by the low bits of their number: shared points and profiles are decoded once, not each time. */
    private static final int REMEMBERED = 1 << 12;

    private final StepFile file;
    private final Schema schema;
    private final NoteList notes = new NoteList();
    private final Map<String, SchemaClass> unknownClasses = new ConcurrentHashMap<>();
    private final AtomicReferenceArray<@Nullable StepEntity> recent = new AtomicReferenceArray<>(REMEMBERED);
    private final Relations relations;
    private final Units units;
    private final OptionalDouble precision;
    private final OptionalDouble trueNorth;
    private final Placements placements;
    private final Describer describer;
    private final Lazy<List<String>> sortedKeywords;
    private final Lazy<List<GridAxis>> grids;
    private final Lazy<List<String>> duplicates;

    private StepModel(StepFile file, Schema schema) {
        this.file = file;
        this.schema = schema;
        sortedKeywords = new Lazy<>(() -> List.copyOf(new TreeSet<>(file.keywords())));
        relations = new Relations(this);
        List<IfcEntity> projects = all("IfcProject");
        UnitReader unitReader = new UnitReader(notes);
        Map<String, UnitFactor> factors = ProjectUnits.read(this, projects, unitReader, notes);
        units = unitReader.units(factors);
        ContextReader contexts = new ContextReader(projects, notes);
        OptionalDouble stated = contexts.precision();
        precision = stated.isEmpty() ? stated : OptionalDouble.of(stated.getAsDouble() * units.length());
        trueNorth = contexts.trueNorth();
        contexts.noteMovedWorlds();
        placements = new Placements(units.length());
        describer = new Describer(this, new Measures(factors, unitReader));
        grids = new Lazy<>(() -> new GridReader(this).axes());
        duplicates = new Lazy<>(() -> DuplicateIds.in(this));
    }

    /** Opens a file by the first schema that it names. */
    public static StepModel of(StepFile file) {
        List<String> stated = file.header().schemas();
        if (stated.isEmpty()) {
            throw new IfcException(file.name() + ": FILE_SCHEMA names no schema; export the model again as IFC");
        }
        Schema schema = Schema.of(stated.get(0))
                .orElseThrow(() -> new IfcException(file.name() + ": schema " + stated.get(0)
                        + " is not read; export the model as IFC2X3, IFC4 or IFC4X3"));
        return new StepModel(file, schema);
    }

    Schema schemaTable() {
        return schema;
    }

    Relations relations() {
        return relations;
    }

    void note(String note) {
        notes.add(note);
    }

    /** Class of a keyword; one that the schema lacks is a class by itself, without attributes. */
    SchemaClass classOf(String keyword) {
        SchemaClass known = schema.find(keyword);
        return known != null ? known : unknownClasses.computeIfAbsent(keyword, this::unknownClass);
    }

    private SchemaClass unknownClass(String keyword) {
        notes.add("Class " + keyword + " is not in schema " + schema.name() + "; its instances are passed over.");
        return new SchemaClass(keyword, null, List.of());
    }

    /** Keywords in the file that are the class or a subtype, sorted. */
    List<String> keywordsOf(String className) {
        String here = schema.nameHere(className);
        List<String> found = new ArrayList<>();
        for (String keyword : sortedKeywords.get()) {
            if (classOf(keyword).isA(here)) {
                found.add(keyword);
            }
        }
        return found;
    }

    @Override
    public StepFile file() {
        return file;
    }

    @Override
    public String schema() {
        return schema.name();
    }

    @Override
    public Units units() {
        return units;
    }

    @Override
    public OptionalDouble precision() {
        return precision;
    }

    @Override
    public OptionalDouble trueNorth() {
        return trueNorth;
    }

    @Override
    public IfcEntity entity(int id) {
        int slot = id & (REMEMBERED - 1);
        StepEntity known = recent.get(slot);
        if (known != null && known.id() == id) {
            return known;
        }
        if (!file.contains(id)) {
            throw new IfcException(file.name() + ": #" + id + " is not in the file");
        }
        StepEntity made = new StepEntity(this, id, classOf(file.keyword(id)));
        recent.set(slot, made);
        return made;
    }

    @Override
    public List<IfcEntity> all(String className) {
        List<IfcEntity> found = new ArrayList<>();
        for (int id : idsOf(className)) {
            found.add(entity(id));
        }
        return found;
    }

    /** Sorted. */
    int[] idsOf(String className) {
        List<String> keywords = keywordsOf(className);
        int[] ids = keywords.stream()
                .flatMapToInt(keyword -> Arrays.stream(file.idsOf(keyword)))
                .toArray();
        Arrays.sort(ids);
        return ids;
    }

    @Override
    public AffineTransformMatrix3D placement(IfcEntity product) {
        return placements.ofProduct(product);
    }

    @Override
    public AffineTransformMatrix3D transform(IfcEntity axisPlacementOrOperator) {
        return Axes.of(axisPlacementOrOperator);
    }

    @Override
    public List<IfcEntity> parts(IfcEntity whole) {
        List<IfcEntity> parts = entities(relations.many(Relation.AGGREGATES, whole.id()));
        for (IfcEntity nested : entities(relations.many(Relation.NESTS, whole.id()))) {
            // Nesting also holds ports and tasks, which are no parts of a building.
            if (nested.isA("IfcElement") && !parts.contains(nested)) {
                parts.add(nested);
            }
        }
        return parts;
    }

    @Override
    public @Nullable IfcEntity whole(IfcEntity part) {
        int aggregate = relations.one(Relation.AGGREGATES, part.id());
        if (aggregate == 0 && part.isA("IfcElement")) {
            aggregate = relations.one(Relation.NESTS, part.id());
        }
        return aggregate == 0 ? null : entity(aggregate);
    }

    @Override
    public List<IfcEntity> openings(IfcEntity element) {
        return entities(relations.many(Relation.VOIDS, element.id()));
    }

    @Override
    public List<IfcEntity> fillings(IfcEntity opening) {
        return entities(relations.many(Relation.FILLS, opening.id()));
    }

    @Override
    public @Nullable IfcEntity typeOf(IfcEntity object) {
        int type = relations.one(Relation.TYPES, object.id());
        return type == 0 ? null : entity(type);
    }

    @Override
    public List<IfcEntity> materials(IfcEntity object) {
        int[] own = relations.ones(Relation.MATERIALS, object.id());
        IfcEntity type = own.length == 0 ? typeOf(object) : null;
        return entities(type == null ? own : relations.ones(Relation.MATERIALS, type.id()));
    }

    private List<IfcEntity> entities(int[] ids) {
        List<IfcEntity> entities = new ArrayList<>(ids.length);
        for (int id : ids) {
            entities.add(entity(id));
        }
        return entities;
    }

    @Override
    public String predefinedType(IfcEntity object) {
        return Describer.predefinedType(object, typeOf(object));
    }

    @Override
    public Element describe(IfcEntity element) {
        return describer.describe(element);
    }

    @Override
    public List<GridAxis> gridAxes() {
        return grids.get();
    }

    @Override
    public List<String> notes() {
        List<String> shared = duplicates.get();
        List<String> all = notes.sorted();
        all.addAll(shared);
        return all;
    }
}

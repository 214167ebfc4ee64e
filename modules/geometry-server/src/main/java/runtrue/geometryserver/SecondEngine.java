package runtrue.geometryserver;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcModel;
import runtrue.shape.ElementShapes;
import runtrue.shape.Shape;
import runtrue.shape.Tolerances;

/**
 * The built-in reader and the program behind it: start with {@link #of}. Which of the two read an element stands in its
 * {@link Shape.Body#engine}; what the program failed at is a note of the reading, and the built-in reader's answer stays.
 */
public final class SecondEngine implements ElementShapes {
    private final ElementShapes first;
    private final EngineUse use;
    private final GeometryServer server;
    private final Comparison.Tolerance tolerance;
    private final Consumer<Comparison> compared;

    private SecondEngine(
            ElementShapes first,
            EngineUse use,
            GeometryServer server,
            Comparison.Tolerance tolerance,
            Consumer<Comparison> compared) {
        this.first = first;
        this.use = use;
        this.server = server;
        this.tolerance = tolerance;
        this.compared = compared;
    }

    /**
     * Who reads for a check. For {@link EngineUse#BUILT_IN} the first engine alone.
     *
     * @param compared takes every element that both engines read, when they are to be compared
     */
    public static ElementShapes of(
            ElementShapes first,
            EngineUse use,
            GeometryServer server,
            Comparison.Tolerance tolerance,
            Consumer<Comparison> compared) {
        return use == EngineUse.BUILT_IN ? first : new SecondEngine(first, use, server, tolerance, compared);
    }

    @Override
    public Reading read(List<IfcEntity> elements, Tolerances tolerances, Vector3D origin) {
        Reading reading = first.read(elements, tolerances, origin);
        Map<IfcModel, List<Integer>> wanted = wanted(elements, reading.shapes());
        if (wanted.isEmpty()) {
            return reading;
        }
        List<Shape> shapes = new ArrayList<>(reading.shapes());
        List<String> notes = new ArrayList<>(reading.notes());
        MeshShape meshShape = new MeshShape(tolerances, origin, server.engine());
        wanted.forEach((model, places) -> {
            EngineNotes told = new EngineNotes(model.file().name(), server.engine(), tolerance);
            if (server.reads(model)) {
                read(model, places, elements, shapes, meshShape, told);
            } else {
                told.cannotRead(model.schema(), use, places.size());
            }
            notes.addAll(told.notes(use));
        });
        return new Reading(shapes, notes);
    }

    /** Places in the list of those elements that the program is asked for, by model, in order. */
    private Map<IfcModel, List<Integer>> wanted(List<IfcEntity> elements, List<Shape> shapes) {
        Map<IfcModel, List<Integer>> wanted = new LinkedHashMap<>();
        for (int i = 0; i < shapes.size(); i++) {
            boolean asked = shapes.get(i) instanceof Shape.Unread unread
                    // Without a representation there is nothing to read for anybody.
                    ? !unread.representation().isEmpty()
                    : use != EngineUse.FILL_IN;
            if (asked) {
                IfcModel model = elements.get(i).model();
                wanted.computeIfAbsent(model, m -> new ArrayList<>()).add(i);
            }
        }
        return wanted;
    }

    private void read(
            IfcModel model,
            List<Integer> places,
            List<IfcEntity> elements,
            List<Shape> shapes,
            MeshShape meshShape,
            EngineNotes told) {
        GeometryServer.Answer answer =
                server.meshes(model, places.stream().map(elements::get).toList());
        answer.trouble().forEach(told::trouble);
        for (int place : places) {
            IfcEntity element = elements.get(place);
            Shape ours = shapes.get(place);
            ProgramMesh mesh = answer.meshes().get(element.id());
            Shape theirs = mesh == null
                    ? new Shape.Unread(answer.missing().getOrDefault(element.id(), ""), representation(ours))
                    : meshShape.of(mesh, element, representation(ours));
            shapes.set(place, chosen(element, ours, theirs, told));
        }
    }

    private Shape chosen(IfcEntity element, Shape ours, Shape theirs, EngineNotes told) {
        if (theirs instanceof Shape.Unread why) {
            if (ours instanceof Shape.Unread unread) {
                return told.neither(unread, why);
            }
            told.onlyFirst(element, why);
            return ours;
        }
        Shape.Body body = (Shape.Body) theirs;
        if (ours instanceof Shape.Unread) {
            told.filledIn(element);
            return body;
        }
        if (use == EngineUse.COMPARE) {
            Comparison comparison = Comparison.of(element, (Shape.Body) ours, body, tolerance);
            told.compared(comparison);
            compared.accept(comparison);
            return ours;
        }
        told.replaced();
        return body;
    }

    private static String representation(Shape shape) {
        return shape instanceof Shape.Body body ? body.representation() : ((Shape.Unread) shape).representation();
    }
}

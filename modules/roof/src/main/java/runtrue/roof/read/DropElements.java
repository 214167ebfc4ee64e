package runtrue.roof.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.Element;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcException;
import runtrue.ifc.IfcModel;
import runtrue.ifc.select.BrokenElement;
import runtrue.ifc.select.ElementFinder;
import runtrue.ifc.select.FoundElement;
import runtrue.ifc.select.FoundElements;
import runtrue.ifc.select.Selection;
import runtrue.roof.ReadElement;
import runtrue.roof.Surround;
import runtrue.shape.ElementShapes;
import runtrue.shape.Shape;
import runtrue.shape.ShapeReader;
import runtrue.shape.Tolerances;

/**
 * The elements of a drop with their shapes, files in the order given, elements by instance number.
 *
 * @param unread chosen as roof or support, but without a shape that could be read
 * @param surround everything else that may matter near a roof; it is read while the models are open only
 * @param origin in whole world metres, near the roof; all shapes are moved by it
 * @param notes one sentence each
 */
public record DropElements(
        List<ReadElement> roofs,
        List<ReadElement> members,
        List<UnreadElement> unread,
        Surround surround,
        Vector3D origin,
        List<String> notes) {
    public DropElements {
        roofs = List.copyOf(roofs);
        members = List.copyOf(members);
        unread = List.copyOf(unread);
        notes = List.copyOf(notes);
    }

    /** As below, by the built-in reader. */
    public static DropElements read(List<IfcModel> models, Selection selection, Tolerances tolerances) {
        return read(models, selection, tolerances, ElementShapes.builtIn());
    }

    /** Elements of all files of a drop; work is done on all processors of the pool that calls this. */
    public static DropElements read(
            List<IfcModel> models, Selection selection, Tolerances tolerances, ElementShapes shapes) {
        Chosen chosen = Chosen.of(models, selection);
        Vector3D origin = origin(chosen.roofs(), tolerances);
        ElementShapes.Reading reading = shapes.read(
                Stream.concat(chosen.roofs().stream(), chosen.supports().stream())
                        .map(FoundElement::entity)
                        .toList(),
                tolerances,
                origin);
        int split = chosen.roofs().size();
        List<Shape> found = reading.shapes();
        List<Shaped> roofs = shaped(chosen.roofs(), found.subList(0, split));
        List<Shaped> supports = shaped(
                chosen.supports(),
                found.subList(split, split + chosen.supports().size()));
        List<UnreadElement> unread = new ArrayList<>();
        chosen.broken().forEach(b -> unread.add(unread(b)));
        unread.addAll(unread(roofs, true));
        unread.addAll(unread(supports, false));
        Surround surround = Surroundings.of(
                models,
                chosen.entities(),
                unreadSupports(chosen.broken(), supports),
                ShapeReader.of(tolerances, origin),
                origin);
        List<String> notes =
                Stream.concat(chosen.notes().stream(), reading.notes().stream()).toList();
        return new DropElements(read(roofs), read(supports), unread, surround, origin, notes);
    }

    /** What the selection finds in all models of a drop. */
    private record Chosen(
            List<FoundElement> roofs, List<FoundElement> supports, List<BrokenElement> broken, List<String> notes) {
        static Chosen of(List<IfcModel> models, Selection selection) {
            Chosen chosen = new Chosen(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
            for (IfcModel model : models) {
                FoundElements found = ElementFinder.find(model, selection);
                chosen.roofs.addAll(found.roofs());
                chosen.supports.addAll(found.supports());
                chosen.broken.addAll(found.broken());
                found.notes().forEach(n -> chosen.notes.add(model.file().name() + ": " + n));
            }
            return chosen;
        }

        Set<IfcEntity> entities() {
            return Stream.concat(roofs.stream(), supports.stream())
                    .map(FoundElement::entity)
                    .collect(Collectors.toSet());
        }
    }

    private static List<IfcEntity> unreadSupports(List<BrokenElement> broken, List<Shaped> supports) {
        return Stream.concat(
                        broken.stream().filter(b -> !b.roof()).map(BrokenElement::entity),
                        supports.stream()
                                .filter(s -> s.shape() instanceof Shape.Unread)
                                .map(s -> s.found().entity()))
                .toList();
    }

    /** The first corner of the first roof that can be read, to the metre: far-off site coordinates lose no digits then. */
    private static Vector3D origin(List<FoundElement> roofs, Tolerances tolerances) {
        ShapeReader unmoved = ShapeReader.of(tolerances, Vector3D.ZERO);
        for (FoundElement roof : roofs) {
            if (unmoved.read(roof.entity()) instanceof Shape.Body body
                    && !body.faces().isEmpty()) {
                Vector3D corner = body.faces().get(0).outline().get(0);
                return Vector3D.of(Math.rint(corner.getX()), Math.rint(corner.getY()), Math.rint(corner.getZ()));
            }
        }
        return placed(roofs);
    }

    /** Where the first roof is placed: another engine may read what this one cannot, and as far off. */
    private static Vector3D placed(List<FoundElement> roofs) {
        return roofs.stream()
                .map(roof -> place(roof.entity()))
                .filter(Vector3D::isFinite)
                .findFirst()
                .map(at -> Vector3D.of(Math.rint(at.getX()), Math.rint(at.getY()), Math.rint(at.getZ())))
                .orElse(Vector3D.ZERO);
    }

    /** In metres; not finite when the model does not say: whoever reads the shape meets the same fault and reports it. */
    private static Vector3D place(IfcEntity roof) {
        try {
            IfcModel model = roof.model();
            return model.placement(roof)
                    .apply(Vector3D.ZERO)
                    .multiply(model.units().length());
        } catch (IfcException e) {
            return Vector3D.NaN;
        }
    }

    private record Shaped(FoundElement found, Shape shape) {}

    private static List<Shaped> shaped(List<FoundElement> found, List<Shape> shapes) {
        return IntStream.range(0, found.size())
                .mapToObj(i -> new Shaped(found.get(i), shapes.get(i)))
                .toList();
    }

    private static List<ReadElement> read(List<Shaped> shaped) {
        return shaped.parallelStream()
                .filter(s -> s.shape() instanceof Shape.Body)
                .map(s -> new ReadElement(
                        s.found().entity().model().describe(s.found().entity()),
                        s.found().grounds(),
                        evidence(s.found(), (Shape.Body) s.shape()),
                        (Shape.Body) s.shape()))
                .toList();
    }

    /** Whoever reads why an element was chosen also reads that its shape is not the built-in reader's. */
    private static String evidence(FoundElement found, Shape.Body body) {
        return body.builtIn() ? found.evidence() : found.evidence() + "; shape read by " + body.engine();
    }

    /** Nobody can tell whether it is roof: it must not go missing, so it is listed as not read. */
    private static UnreadElement unread(BrokenElement broken) {
        IfcEntity entity = broken.entity();
        return new UnreadElement(
                identity(entity), "cannot be told", broken.roof(), new Shape.Unread(broken.reason(), ""));
    }

    /** As much of an element as its broken record gives. */
    static Element identity(IfcEntity entity) {
        try {
            return entity.model().describe(entity);
        } catch (IfcException e) {
            return new Element(
                    "",
                    entity.model().file().name(),
                    entity.id(),
                    entity.type(),
                    "",
                    "",
                    "",
                    "",
                    "",
                    "",
                    "",
                    "",
                    "",
                    List.of(),
                    List.of(),
                    Map.of());
        }
    }

    private static List<UnreadElement> unread(List<Shaped> shaped, boolean roof) {
        List<UnreadElement> unread = new ArrayList<>();
        for (Shaped s : shaped) {
            if (s.shape() instanceof Shape.Unread why) {
                unread.add(new UnreadElement(
                        s.found().entity().model().describe(s.found().entity()),
                        s.found().evidence(),
                        roof,
                        why));
            }
        }
        return unread;
    }
}

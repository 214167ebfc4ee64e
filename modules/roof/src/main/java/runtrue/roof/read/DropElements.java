package runtrue.roof.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
import runtrue.shape.Shape;
import runtrue.shape.ShapeReader;
import runtrue.shape.Tolerances;

/**
 * The elements of a drop with their shapes, files in the order given, elements by instance number.
 *
 * @param unread chosen as roof or support, but without a shape that could be read
 * @param origin in whole world metres, near the roof; all shapes are moved by it
 * @param notes one sentence each
 */
public record DropElements(
        List<ReadElement> roofs,
        List<ReadElement> members,
        List<UnreadElement> unread,
        Vector3D origin,
        List<String> notes) {
    public DropElements {
        roofs = List.copyOf(roofs);
        members = List.copyOf(members);
        unread = List.copyOf(unread);
        notes = List.copyOf(notes);
    }

    /** Elements of all files of a drop; shapes are read on all processors of the pool that calls this. */
    public static DropElements read(List<IfcModel> models, Selection selection, Tolerances tolerances) {
        List<FoundElement> roofs = new ArrayList<>();
        List<FoundElement> supports = new ArrayList<>();
        List<UnreadElement> broken = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (IfcModel model : models) {
            FoundElements found = ElementFinder.find(model, selection);
            roofs.addAll(found.roofs());
            supports.addAll(found.supports());
            found.broken().forEach(b -> broken.add(unread(b)));
            found.notes().forEach(n -> notes.add(model.file().name() + ": " + n));
        }
        Vector3D origin = origin(roofs, tolerances);
        ShapeReader shapes = ShapeReader.of(tolerances, origin);
        List<Shaped> roofShapes = shaped(roofs, shapes);
        List<Shaped> supportShapes = shaped(supports, shapes);
        List<UnreadElement> unread = new ArrayList<>(broken);
        unread.addAll(unread(roofShapes, true));
        unread.addAll(unread(supportShapes, false));
        return new DropElements(read(roofShapes), read(supportShapes), unread, origin, notes);
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
        return Vector3D.ZERO;
    }

    private record Shaped(FoundElement found, Shape shape) {}

    private static List<Shaped> shaped(List<FoundElement> found, ShapeReader shapes) {
        return found.parallelStream()
                .map(f -> new Shaped(f, shapes.read(f.entity())))
                .toList();
    }

    private static List<ReadElement> read(List<Shaped> shaped) {
        return shaped.parallelStream()
                .filter(s -> s.shape() instanceof Shape.Body)
                .map(s -> new ReadElement(
                        s.found().entity().model().describe(s.found().entity()),
                        s.found().evidence(),
                        (Shape.Body) s.shape()))
                .toList();
    }

    /** Nobody can tell whether it is roof: it must not go missing, so it is listed as not read. */
    private static UnreadElement unread(BrokenElement broken) {
        IfcEntity entity = broken.entity();
        return new UnreadElement(
                identity(entity), "cannot be told", broken.roof(), new Shape.Unread(broken.reason(), ""));
    }

    /** As much of an element as its broken record gives. */
    private static Element identity(IfcEntity entity) {
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

package runtrue.bill.modelled;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.Element;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcModel;
import runtrue.roof.Roof;
import runtrue.roof.RoofPlane;
import runtrue.roof.Surround.Box;
import runtrue.roof.read.Extents;
import runtrue.shape.Face;
import runtrue.shape.Shape;
import runtrue.shape.ShapeReader;

/** Plates and coverings that are drawn sheet by sheet: each no wider across the fall than one sheet, and longer along it. */
final class SingleSheets {
    private static final List<String> CLASSES = List.of("IfcPlate", "IfcCovering");

    /** Other coverings lie under the sheets or inside. */
    private static final Set<String> MAY_BE_SHEETS =
            Set.of("", "ROOFING", "CLADDING", "SHEET", "NOTDEFINED", "USERDEFINED");

    /** A sheet is drawn with its side laps, beyond its cover width. */
    private static final double WIDER = 1.5;

    private final Roof roof;
    private final RoofPlaces places;
    private final ShapeReader shapes;
    private final Map<String, Shape.Body> read = new HashMap<>();

    SingleSheets(Roof roof, RoofPlaces places, ShapeReader shapes) {
        this.roof = roof;
        this.places = places;
        this.shapes = shapes;
        roof.planes().stream()
                .flatMap(p -> p.plane().elements().stream())
                .forEach(e -> read.put(key(e.element()), e.body()));
    }

    /** A sheet and its plane. */
    record Placed(Element element, RoofPlane plane) {}

    List<Placed> in(IfcModel model, Extents extents) {
        List<Placed> sheets = new ArrayList<>();
        for (String name : CLASSES) {
            for (IfcEntity entity : model.all(name)) {
                if (MAY_BE_SHEETS.contains(model.predefinedType(entity))) {
                    sheet(entity, extents).ifPresent(sheets::add);
                }
            }
        }
        return sheets;
    }

    private Optional<Placed> sheet(IfcEntity entity, Extents extents) {
        Optional<Vector3D> middle = extents.of(entity).map(SingleSheets::middle);
        Optional<RoofPlane> plane = middle.flatMap(places::at);
        if (plane.isEmpty()) {
            return Optional.empty();
        }
        Element element = entity.model().describe(entity);
        Shape.Body known = read.get(key(element));
        Shape shape = known == null ? shapes.read(entity) : known;
        return shape instanceof Shape.Body body && isSheet(body, plane.get())
                ? Optional.of(new Placed(element, plane.get()))
                : Optional.empty();
    }

    private static Vector3D middle(Box box) {
        return box.low().add(box.high()).multiply(0.5);
    }

    /** Along the fall it is longer than across, and than one cover width: splice plates and the like are not. */
    private boolean isSheet(Shape.Body body, RoofPlane plane) {
        DoubleSummaryStatistics across = new DoubleSummaryStatistics();
        DoubleSummaryStatistics along = new DoubleSummaryStatistics();
        for (Face face : body.faces()) {
            for (Vector3D corner : face.outline()) {
                across.accept(plane.u(corner));
                along.accept(plane.v(corner));
            }
        }
        double width = across.getMax() - across.getMin();
        double length = along.getMax() - along.getMin();
        double cover = roof.settings().coverWidth();
        return width <= WIDER * cover && length >= Math.max(width, cover);
    }

    private static String key(Element element) {
        return element.file() + "#" + element.stepId();
    }
}

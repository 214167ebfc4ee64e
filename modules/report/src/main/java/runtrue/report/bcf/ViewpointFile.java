package runtrue.report.bcf;

import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;
import runtrue.report.scene.Camera;
import runtrue.report.scene.View;
import runtrue.result.Direction;
import runtrue.result.ElementRef;
import runtrue.result.Point;

/** A viewpoint: camera, what is selected and hidden, and a cross that marks the place in the model. */
final class ViewpointFile {
    private static final Pattern GLOBAL_ID = Pattern.compile("[0-9A-Za-z_$]{22}");

    /** Half a line of the cross, metres: to be seen in a view of some ten metres. */
    private static final double ARM = 0.5;

    private final String id;
    private final View view;
    private final BcfVersion version;
    private final Xml xml = new Xml("VisualizationInfo");

    private ViewpointFile(String id, View view, BcfVersion version) {
        this.id = id;
        this.view = view;
        this.version = version;
    }

    static byte[] of(String id, View view, BcfVersion version) {
        ViewpointFile file = new ViewpointFile(id, view, version);
        file.write();
        return file.xml.bytes();
    }

    /** The format takes no others. */
    static boolean isGlobalId(String text) {
        return GLOBAL_ID.matcher(text).matches();
    }

    private void write() {
        xml.attribute("Guid", id);
        xml.element("Components", () -> {
            components("Selection", view.selected());
            xml.element("Visibility", () -> {
                xml.attribute("DefaultVisibility", "true");
                components("Exceptions", view.hidden());
            });
        });
        xml.element("OrthogonalCamera", () -> {
            triple("CameraViewPoint", view.camera().eye());
            direction("CameraDirection", view.camera().ahead());
            direction("CameraUpVector", view.camera().up());
            xml.text("ViewToWorldScale", number(view.camera().height()));
            if (version == BcfVersion.V3_0) {
                xml.text("AspectRatio", number(Camera.ASPECT));
            }
        });
        view.place().ifPresent(this::cross);
    }

    private void components(String name, List<ElementRef> elements) {
        List<String> ids = elements.stream()
                .map(ElementRef::globalId)
                .filter(ViewpointFile::isGlobalId)
                .distinct()
                .toList();
        if (!ids.isEmpty()) {
            xml.element(name, () -> ids.forEach(id -> xml.element("Component", () -> xml.attribute("IfcGuid", id))));
        }
    }

    private void cross(Point at) {
        xml.element("Lines", () -> {
            line(at, ARM, 0, 0);
            line(at, 0, ARM, 0);
            line(at, 0, 0, ARM);
        });
    }

    private void line(Point at, double x, double y, double z) {
        xml.element("Line", () -> {
            triple("StartPoint", new Point(at.xMetres() - x, at.yMetres() - y, at.zMetres() - z));
            triple("EndPoint", new Point(at.xMetres() + x, at.yMetres() + y, at.zMetres() + z));
        });
    }

    private void direction(String name, Direction direction) {
        triple(name, new Point(direction.x(), direction.y(), direction.z()));
    }

    private void triple(String name, Point xyz) {
        xml.element(name, () -> {
            xml.text("X", number(xyz.xMetres()));
            xml.text("Y", number(xyz.yMetres()));
            xml.text("Z", number(xyz.zMetres()));
        });
    }

    /** To a micrometre; never in the notation with an exponent, which not every reader takes. */
    private static String number(double value) {
        return BigDecimal.valueOf(Math.rint(value * 1e6) / 1e6)
                .stripTrailingZeros()
                .toPlainString();
    }
}

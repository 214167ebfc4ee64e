package runtrue.shape.solid;

import java.util.List;
import runtrue.ifc.IfcEntity;

/** Items that have no faces by nature: lines, points and texts drawn along with a body. */
public final class Drawn {
    private Drawn() {}

    /** The surfaces among the elements of a geometric set, which may hold lines and points too. */
    static List<IfcEntity> surfaces(IfcEntity set) {
        return set.refs("Elements").stream()
                .filter(element -> element.isA("IfcSurface"))
                .toList();
    }

    public static boolean isLineWork(IfcEntity item) {
        return item.isA("IfcCurve")
                || item.isA("IfcPoint")
                || (item.isA("IfcGeometricSet") && surfaces(item).isEmpty())
                || item.isA("IfcTextLiteral")
                || item.isA("IfcAnnotationFillArea")
                || item.isA("IfcStyledItem");
    }
}

package runtrue.shape.solid;

import runtrue.ifc.IfcEntity;

/** Items that have no faces by nature: lines, points and texts drawn along with a body. */
public final class Drawn {
    private Drawn() {}

    public static boolean isLineWork(IfcEntity item) {
        return item.isA("IfcCurve")
                || item.isA("IfcPoint")
                || item.isA("IfcGeometricSet")
                || item.isA("IfcTextLiteral")
                || item.isA("IfcAnnotationFillArea")
                || item.isA("IfcStyledItem");
    }
}

package runtrue.ifc.internal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.GridAxis;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcException;

/** Axes of all grids, in world metres. An axis that cannot be read is noted and left out. */
final class GridReader {
    private final StepModel model;
    private final GridCurves curves;

    GridReader(StepModel model) {
        this.model = model;
        curves = new GridCurves(model.units());
    }

    List<GridAxis> axes() {
        List<GridAxis> axes = new ArrayList<>();
        for (IfcEntity grid : model.all("IfcGrid")) {
            try {
                AffineTransformMatrix3D placement = model.placement(grid);
                for (String family : List.of("UAxes", "VAxes", "WAxes")) {
                    grid.refs(family).forEach(axis -> add(grid, axis, placement, axes));
                }
            } catch (IfcException e) {
                model.note("Grid " + grid.label() + " is left out: " + e.getMessage());
            }
        }
        return List.copyOf(axes);
    }

    private void add(IfcEntity grid, IfcEntity axis, AffineTransformMatrix3D placement, List<GridAxis> axes) {
        try {
            List<Vector3D> points = new ArrayList<>();
            for (Vector3D point : curves.points(axis.ref("AxisCurve"))) {
                points.add(placement.apply(point).multiply(model.units().length()));
            }
            if (axis.enumeration("SameSense").equals("F")) {
                Collections.reverse(points);
            }
            axes.add(new GridAxis(grid.text("Name"), axis.text("AxisTag"), points));
        } catch (IfcException e) {
            model.note("Grid axis " + axis.label() + " is left out: " + e.getMessage());
        }
    }
}

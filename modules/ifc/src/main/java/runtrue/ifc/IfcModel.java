package runtrue.ifc;

import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import runtrue.ifc.internal.StepModel;
import runtrue.step.StepFile;

/** An IFC2X3, IFC4 or IFC4X3 model: start with {@link #of}. Safe for use by many threads. */
public interface IfcModel {
    /** Reads units, contexts and the schema; throws {@link IfcException} when it is not one that is known. */
    static IfcModel of(StepFile file) {
        return StepModel.of(file);
    }

    StepFile file();

    /** {@code IFC2X3}, {@code IFC4} or {@code IFC4X3}; earlier and later names of the same schema are mapped. */
    String schema();

    Units units();

    /** Precision of the model context in metres; empty when not stated. */
    OptionalDouble precision();

    /** Direction of true north in radians, clockwise from the model's +Y; empty when not stated. */
    OptionalDouble trueNorth();

    IfcEntity entity(int id);

    /** All instances of a class and its subtypes, by instance number. */
    List<IfcEntity> all(String className);

    /** Object axes to world axes, in file units. Throws {@link IfcException} for cycles and missing or absurd placements. */
    AffineTransformMatrix3D placement(IfcEntity product);

    /** An IfcAxis2Placement2D/3D (2D lifted to z = 0), IfcCartesianTransformationOperator2D/3D(nonUniform), in file units. */
    AffineTransformMatrix3D transform(IfcEntity axisPlacementOrOperator);

    /** Parts by aggregation (IfcRelAggregates, IfcRelNests of elements), in file order. */
    List<IfcEntity> parts(IfcEntity whole);

    /** The whole that it is a part of, or null. */
    @org.jspecify.annotations.Nullable
    IfcEntity whole(IfcEntity part);

    /** Opening elements that void the element. */
    List<IfcEntity> openings(IfcEntity element);

    /** Elements that fill an opening. */
    List<IfcEntity> fillings(IfcEntity opening);

    /** Type object, or null. */
    @org.jspecify.annotations.Nullable
    IfcEntity typeOf(IfcEntity object);

    /**
     * PredefinedType in upper case: what the object itself says, unless that is nothing or NOTDEFINED and its type object
     * knows better. Empty when neither states one.
     */
    String predefinedType(IfcEntity object);

    /** Material selections (materials, sets, usages) associated with an object, or else with its type; in file order. */
    List<IfcEntity> materials(IfcEntity object);

    /** Identity, containment, properties, materials and classification of one element. */
    Element describe(IfcEntity element);

    List<GridAxis> gridAxes();

    /** What was odd in the file, one sentence each: duplicate GlobalIds, missing units and the like. */
    List<String> notes();
}

package runtrue.geometryserver;

import org.ifcopenshell.IfcGeomServerClientEntity;

/**
 * One element as the program gives it.
 *
 * @param stepId instance number in the file
 * @param xyz three coordinates a point, the file's length unit, the element's own axes; 32-bit floats
 * @param corners three point numbers a triangle, counter-clockwise seen from outside
 * @param matrix own axes to world, 16 numbers by columns, translation in 12 to 14; 32-bit floats too
 */
@SuppressWarnings("ArrayRecordComponent") // read once, compared never
record ProgramMesh(int stepId, String globalId, float[] xyz, int[] corners, double[] matrix) {
    static ProgramMesh of(IfcGeomServerClientEntity entity) {
        return new ProgramMesh(
                entity.getId(), entity.getGuid(), entity.getPositions(), entity.getIndices(), entity.getMatrix());
    }
}

package runtrue.result;

import java.util.List;

/**
 * One model file of the drop.
 *
 * @param name display name
 * @param sizeBytes of the file as found
 * @param sha256 of its bytes, lower-case hexadecimal
 * @param authoringProgram as the file states it; empty when it does not
 * @param project GlobalId of its IfcProject; empty when it has none or the file could not be opened
 * @param lengthUnitMetres metres in one length unit of the file; 0 when the file could not be opened
 * @param timeStamp as the file's header states it
 * @param instances number of instances in the file
 * @param roofElements elements read as roof
 * @param memberElements elements read as possible supports
 * @param unreadElements elements chosen but not read
 * @param notes what was odd in the file, one sentence each
 */
public record FileInfo(
        String name,
        long sizeBytes,
        String sha256,
        String schema,
        String authoringProgram,
        String project,
        double lengthUnitMetres,
        String timeStamp,
        long instances,
        int roofElements,
        int memberElements,
        int unreadElements,
        List<String> notes) {
    public FileInfo {
        notes = List.copyOf(notes);
    }

    /** Whether the file could be read at all; only then does it have a length unit. */
    public boolean opened() {
        return lengthUnitMetres > 0;
    }
}

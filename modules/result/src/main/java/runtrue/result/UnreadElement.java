package runtrue.result;

/**
 * An element that was chosen as roof or member but that gave no shape or no plane.
 *
 * @param role {@code roof} or {@code member}
 * @param representation for example {@code Body/AdvancedBrep: IfcAdvancedBrep}; empty when it has none
 * @param reason one sentence that a coordinator can act on
 */
public record UnreadElement(
        String globalId,
        String name,
        String ifcClass,
        String file,
        int stepId,
        String storey,
        String role,
        String representation,
        String reason) {}

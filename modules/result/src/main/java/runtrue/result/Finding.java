package runtrue.result;

import java.util.List;
import java.util.Optional;

/**
 * A judgement that a person must see: does not conform, not assessed, or conceded.
 *
 * @param id stable from drop to drop
 * @param rule id of the rule
 * @param subject what was judged, for people
 * @param plane id of the plane; empty when the subject is the drop or an element without plane
 * @param planeName its name
 * @param storey of the elements, or else of the plane
 * @param files that the elements come from
 * @param gridPlace nearest grid lines; empty when there is no grid or no place
 * @param place in world coordinates
 * @param margin how far on the good side, negative when it does not conform
 * @param comparison {@code at least} or {@code at most}
 * @param limitSource where the limit comes from
 * @param cure what would cure it; empty unless it does not conform
 * @param reason why it was not assessed, or who conceded it and why
 * @param facts that the outcome rests on, with their evidence
 */
public record Finding(
        String id,
        String rule,
        String title,
        Severity severity,
        Outcome outcome,
        String subject,
        String plane,
        String planeName,
        String storey,
        List<String> files,
        List<ElementRef> elements,
        String gridPlace,
        Optional<Point> place,
        Optional<Measure> measured,
        Optional<Measure> limit,
        Optional<Measure> margin,
        String comparison,
        String limitSource,
        String message,
        String cure,
        String reason,
        List<String> facts) {
    public Finding {
        files = List.copyOf(files);
        elements = List.copyOf(elements);
        facts = List.copyOf(facts);
    }
}

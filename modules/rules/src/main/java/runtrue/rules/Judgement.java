package runtrue.rules;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.Element;

/**
 * The outcome of one rule for one subject.
 *
 * @param id stable from drop to drop: made from rule, plane and place, not from order
 * @param rule id of the rule
 * @param subject what was judged, for people: {@code internal span between lines 4 and 5}
 * @param plane id of the plane, empty when the subject is the drop or an element without plane
 * @param elements that the finding is about (purlins, slabs)
 * @param place in world metres; empty when it has none
 * @param measured empty when not assessed
 * @param limit empty when not assessed
 * @param margin how far on the good side in the measure's unit, negative when it does not conform
 * @param comparison {@code at least} or {@code at most}
 * @param limitSource where the limit comes from: table, system, standard
 * @param message one sentence with the figures
 * @param cure what would cure it, empty unless it does not conform
 * @param reason why it was not assessed or who conceded, else empty
 * @param facts the facts that the outcome rests on, as {@code name = value unit (evidence)}
 */
public record Judgement(
        String id,
        String rule,
        String title,
        Severity severity,
        Outcome outcome,
        String subject,
        String plane,
        List<Element> elements,
        Optional<Vector3D> place,
        Optional<Quantity> measured,
        Optional<Quantity> limit,
        Optional<Quantity> margin,
        String comparison,
        String limitSource,
        String message,
        String cure,
        String reason,
        List<String> facts) {
    public Judgement {
        elements = List.copyOf(elements);
        facts = List.copyOf(facts);
    }

    /** The same with one more sentence in the message. */
    public Judgement adding(String sentence) {
        return new Judgement(
                id,
                rule,
                title,
                severity,
                outcome,
                subject,
                plane,
                elements,
                place,
                measured,
                limit,
                margin,
                comparison,
                limitSource,
                message + " " + sentence,
                cure,
                reason,
                facts);
    }
}

package runtrue.result;

import java.util.List;
import java.util.Optional;

/**
 * A value that a model states, beside the one that the geometry gives. Geometry wins.
 *
 * @param role {@code roof} or {@code support}
 * @param planes ids of the planes that the element is part of or carries
 * @param quantity {@code pitch}, {@code area}, {@code length} or {@code thickness}
 * @param source set and property that states it, or {@code material layers}
 * @param inherited whether it came from the type object
 * @param unitStated whether the file gives the value a unit
 * @param stated as stated, in the unit that people read
 * @param derived by the geometry; absent when there is nothing to compare with
 * @param derivedFrom what was measured
 * @param difference distance between the two
 * @param tolerance distance that rounding explains
 * @param verdict {@code agrees}, {@code contradicts} or {@code not compared}
 * @param remark what is wrong with it, as far as can be told, or why it was not compared
 */
public record StatedValue(
        ElementRef element,
        String role,
        List<String> planes,
        String quantity,
        String source,
        boolean inherited,
        boolean unitStated,
        Measure stated,
        Optional<Measure> derived,
        String derivedFrom,
        Optional<Measure> difference,
        Optional<Measure> tolerance,
        String verdict,
        String remark) {
    public StatedValue {
        planes = List.copyOf(planes);
    }
}

package runtrue.result;

import java.util.List;

/**
 * How the shape of an element was come by.
 *
 * @param role {@code roof} or {@code support}
 * @param planes ids of the planes that the element is part of or carries
 * @param basis {@code derived} from its body, or {@code assumed} in part or, where no body is drawn, from its
 *     material usage as a whole; {@code remarks} says what
 * @param representation for example {@code Body/SweptSolid: IfcExtrudedAreaSolid}
 * @param engine that made faces of it
 * @param closed whether every edge of its faces is shared by two of them
 * @param remarks what was put right, left out or assumed
 */
public record ReadMethod(
        ElementRef element,
        String role,
        List<String> planes,
        String basis,
        String representation,
        String engine,
        boolean closed,
        List<String> remarks) {
    public ReadMethod {
        planes = List.copyOf(planes);
        remarks = List.copyOf(remarks);
    }
}

package runtrue.rules.judge.subject;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.Element;
import runtrue.rules.cel.Facts;
import runtrue.rules.cel.SubjectKind;

/**
 * Something that rules are applied to.
 *
 * @param name for people, as it reads at the start of a sentence's middle: {@code sheet 3 of south plane}
 * @param plane id, empty when it belongs to none
 * @param place in world metres
 * @param key tells it from its like within the plane, the same from drop to drop
 * @param lacking why there is no such thing to judge, else empty: then every rule of the kind is not assessed
 * @param series for parts that may be told of together when they fare alike ({@code sheet}), else empty
 * @param number within the series
 * @param stretch where it lies, for spans
 */
public record Subject(
        SubjectKind kind,
        String name,
        String plane,
        List<Element> elements,
        Optional<Vector3D> place,
        String key,
        Facts facts,
        String lacking,
        String series,
        int number,
        Optional<Stretch> stretch) {
    public Subject {
        elements = List.copyOf(elements);
    }

    public Subject(
            SubjectKind kind,
            String name,
            String plane,
            List<Element> elements,
            Optional<Vector3D> place,
            String key,
            Facts facts) {
        this(kind, name, plane, elements, place, key, facts, "", "", 0, Optional.empty());
    }

    public Subject inSeries(String word, int position) {
        return new Subject(kind, name, plane, elements, place, key, facts, lacking, word, position, stretch);
    }

    public Subject over(Stretch where) {
        return new Subject(kind, name, plane, elements, place, key, facts, lacking, series, number, Optional.of(where));
    }

    /** The absence of any subject of a kind. */
    public static Subject lacking(SubjectKind kind, Subject of, String reason) {
        return new Subject(
                kind, of.name, of.plane, of.elements, of.place, "none", of.facts, reason, "", 0, Optional.empty());
    }
}

package runtrue.rules.judge.subject;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import runtrue.ifc.stated.StatedKind;
import runtrue.roof.stated.StatedValue;
import runtrue.rules.cel.Facts;
import runtrue.rules.cel.SubjectKind;

/** A stated value as a subject. It belongs to an element, not to a plane: a slab may give several planes, or share one. */
public final class StatedSubject {
    private StatedSubject() {}

    public static Subject of(StatedValue value, Facts base) {
        Facts facts = base.inner()
                .know("stated.quantity", value.stated().kind().label(), "")
                .know("stated.source", value.stated().source(), "")
                .know("stated.element", name(value), "")
                .know("stated.role", value.roof() ? "roof" : "support", "")
                .know("stated.unit_stated", value.stated().unitStated(), "")
                .know("stated.compared", value.derived().isPresent(), "")
                .know("stated.reason", value.reason(), "")
                .know("stated.derived_from", value.derivedFrom(), "")
                .know("stated.mistake", value.mistake().sentence(), "");
        for (StatedKind kind : StatedKind.values()) {
            if (kind == value.stated().kind()) {
                numbers(facts, value);
            } else {
                others(facts, kind, value);
            }
        }
        String source = value.stated().source();
        String key =
                value.element().file() + "#" + source + "#" + value.mistake().name();
        return new Subject(
                        SubjectKind.STATED,
                        source + " of " + name(value),
                        "",
                        List.of(value.element()),
                        Optional.empty(),
                        key,
                        facts)
                .inSeries(source, 0);
    }

    private static String name(StatedValue value) {
        String name = value.element().name();
        return value.element().ifcClass() + (name.isEmpty() ? " without a name" : " \"" + name + "\"");
    }

    private static void numbers(Facts facts, StatedValue value) {
        String name = "stated." + value.stated().kind().label();
        facts.know(name, value.value(), value.stated().source());
        String why = "is not known: " + value.reason();
        known(facts, name + "_derived", value.derived(), value.derivedFrom(), why);
        known(facts, name + "_difference", value.difference(), "", why);
        if (value.derived().isPresent()) {
            facts.know(name + "_tolerance", value.tolerance(), "tolerances of the program");
        } else {
            facts.miss(name + "_tolerance", why);
        }
    }

    private static void known(Facts facts, String name, OptionalDouble number, String evidence, String why) {
        if (number.isPresent()) {
            facts.know(name, number.getAsDouble(), evidence);
        } else {
            facts.miss(name, why);
        }
    }

    private static void others(Facts facts, StatedKind kind, StatedValue value) {
        for (String end : List.of("", "_derived", "_difference", "_tolerance")) {
            facts.miss(
                    "stated." + kind.label() + end,
                    "is not stated here: the value is a "
                            + value.stated().kind().label());
        }
    }
}

package runtrue.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import runtrue.ifc.select.PropertyMatch;
import runtrue.ifc.select.Selection;
import runtrue.ifc.select.Selector;
import runtrue.rules.SelectorSettings;

/** What counts as roof and support: the project's own selectors before the standard ones. */
public final class Selections {
    private Selections() {}

    /** The standard selection behind the given one. */
    public static Selection of(SelectorSettings own) {
        Selection standard = Selection.standard();
        return new Selection(
                joined(own.roofs(), standard.roofs()),
                standard.roofParts(),
                joined(own.supports(), standard.supports()),
                joined(own.excluded(), standard.excluded()));
    }

    private static List<Selector> joined(List<SelectorSettings.Selector> own, List<Selector> standard) {
        List<Selector> joined =
                new ArrayList<>(own.stream().map(Selections::selector).toList());
        joined.addAll(standard);
        return joined;
    }

    private static Selector selector(SelectorSettings.Selector own) {
        Selector any = new Selector(Set.of(), Set.of(), Optional.empty(), Optional.empty(), Optional.empty());
        return switch (own.subject()) {
            case NAME, TYPE_NAME -> any.withName(own.pattern());
            case CLASS -> Selector.ofClass(own.pattern().pattern());
            case CLASSIFICATION -> any.withClassification(own.pattern());
            case PROPERTY ->
                new Selector(
                        Set.of(),
                        Set.of(),
                        Optional.empty(),
                        Optional.of(new PropertyMatch(own.property(), own.pattern())),
                        Optional.empty());
        };
    }
}

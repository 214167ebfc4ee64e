package runtrue.cli;

import java.util.ArrayList;
import java.util.List;
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
        return new Selector(
                own.className().isEmpty() ? Set.of() : Set.of(own.className()),
                Set.of(),
                own.name(),
                own.value().map(value -> new PropertyMatch(own.property(), value)),
                own.classification());
    }
}

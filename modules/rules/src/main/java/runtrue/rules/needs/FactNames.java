package runtrue.rules.needs;

import java.util.Collection;
import java.util.List;
import runtrue.rules.cel.FactCatalogue;
import runtrue.rules.cel.FactSpec;
import runtrue.rules.yaml.NearMiss;
import runtrue.rules.yaml.Problems;
import runtrue.rules.yaml.YamlValue;
import runtrue.rules.yaml.YamlValue.Scalar;

/**
 * Names of facts; one may end in {@code *}, which stands for any ending.
 *
 * @param patterns as written
 */
record FactNames(List<String> patterns) {
    FactNames {
        patterns = List.copyOf(patterns);
    }

    /** Reads a list; what is no fact of the catalogue goes to the problems. */
    static FactNames read(List<YamlValue> items, Problems problems) {
        List<String> known =
                FactCatalogue.standard().all().stream().map(FactSpec::name).toList();
        for (YamlValue item : items) {
            if (item instanceof Scalar scalar && known.stream().noneMatch(name -> fits(scalar.text(), name))) {
                problems.add(
                        scalar.place(), "unknown fact \"" + scalar.text() + "\"" + NearMiss.hint(scalar.text(), known));
            }
        }
        return new FactNames(items.stream()
                .filter(Scalar.class::isInstance)
                .map(item -> ((Scalar) item).text())
                .toList());
    }

    boolean meet(Collection<String> facts) {
        return facts.stream().anyMatch(this::hold);
    }

    boolean hold(String fact) {
        return patterns.stream().anyMatch(pattern -> fits(pattern, fact));
    }

    private static boolean fits(String pattern, String fact) {
        return pattern.endsWith("*")
                ? fact.startsWith(pattern.substring(0, pattern.length() - 1))
                : fact.equals(pattern);
    }
}

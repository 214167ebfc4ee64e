package runtrue.rules.extend;

import runtrue.rules.yaml.YamlValue.Mapping;

/**
 * One file of a chain.
 *
 * @param top what stands in it
 */
public record Layer(RuleFile file, Mapping top) {
    /** In place of a version: the settings of a drop have none. */
    static final String OF_SETTINGS = "0.0.0";

    /** Whether these are the changes that the settings of a drop make. */
    boolean ofSettings() {
        return version().equals(OF_SETTINGS) && file.path().isEmpty();
    }

    public String name() {
        return top.text("rule_set").orElse("");
    }

    public String version() {
        return top.text("version").orElse("");
    }
}

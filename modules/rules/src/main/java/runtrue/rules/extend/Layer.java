package runtrue.rules.extend;

import runtrue.rules.yaml.YamlValue.Mapping;

/**
 * One file of a chain.
 *
 * @param top what stands in it
 */
public record Layer(RuleFile file, Mapping top) {
    public String name() {
        return top.text("rule_set").orElse("");
    }

    public String version() {
        return top.text("version").orElse("");
    }
}

/**
 * YAML and JSON Schema with exact positions: start with {@link runtrue.rules.yaml.YamlFile}. Nothing here knows what a rule is.
 */
@NullMarked
package runtrue.rules.yaml;

import org.jspecify.annotations.NullMarked;

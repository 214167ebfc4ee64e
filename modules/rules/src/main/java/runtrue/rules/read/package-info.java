/**
 * Reads rule sets, roof systems and settings from YAML. Nothing here is for other modules: they start with
 * {@link runtrue.rules.RuleSets}, {@link runtrue.rules.RoofSystems} and {@link runtrue.rules.SettingsFiles}.
 */
@NullMarked
package runtrue.rules.read;

import org.jspecify.annotations.NullMarked;

package runtrue.result;

import com.fasterxml.jackson.annotation.JsonValue;

/**
 * A setting in force.
 *
 * @param value as text with its unit
 * @param file that states it; empty unless {@code origin} is a file
 */
public record Setting(String name, String value, Origin origin, String file) {
    /** Where a setting came from. */
    public enum Origin implements Labelled {
        DEFAULT("default"),
        FILE("file"),
        COMMAND_LINE("command line");

        private final String label;

        Origin(String label) {
            this.label = label;
        }

        @Override
        @JsonValue
        public String label() {
            return label;
        }
    }
}

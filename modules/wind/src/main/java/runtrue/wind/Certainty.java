package runtrue.wind;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** How sure a published value is that the program carries, surest first. */
public enum Certainty {
    GIVEN("as given for the project"),
    SEEN("read in a reproduction of the standard"),
    TRANSCRIPTION("read in an open transcription only"),
    CORRECTED("corrected from a transcription that contradicts itself, unconfirmed"),
    MEMORY("from memory, to be checked in a licensed copy");

    private final String words;

    Certainty(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    public Certainty lessSure(Certainty other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /** Of its lower-case name in a data file; {@code where} is the file and line for the message. */
    public static Certainty of(String name, String where) {
        for (Certainty c : values()) {
            if (c.name().toLowerCase(Locale.ROOT).equals(name)) {
                return c;
            }
        }
        String known = Arrays.stream(values())
                .map(c -> c.name().toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(", "));
        throw new WindException(where + ": the status is '" + name + "'; allowed are " + known + ".");
    }
}

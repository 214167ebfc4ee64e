package runtrue.result;

import java.util.List;

/**
 * The roof system that the rules and the bill rest on.
 *
 * @param source who published the values, or that they are invented for the demo
 * @param values by name
 * @param texts by name
 */
public record RoofSystemInfo(
        String name, String title, String source, String file, List<Value> values, List<Text> texts) {
    public RoofSystemInfo {
        values = List.copyOf(values);
        texts = List.copyOf(texts);
    }

    /** A value with its unit. */
    public record Value(String name, Measure measure) {}

    /** A text, for example the material. */
    public record Text(String name, String text) {}
}

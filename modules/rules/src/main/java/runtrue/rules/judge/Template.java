package runtrue.rules.judge;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sentences of a rule set with placeholders in braces: {@code {measured}}, {@code {plane.name}}. */
public final class Template {
    /** Placeholders besides the facts. */
    public static final List<String> NAMES = List.of("subject", "measured", "limit", "margin", "laps");

    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([^{}]*)}");

    private Template() {}

    /** A placeholder and the index of its brace in the text. */
    public record Placeholder(String name, int index) {}

    public static List<Placeholder> placeholders(String text) {
        List<Placeholder> found = new ArrayList<>();
        Matcher matcher = PLACEHOLDER.matcher(text);
        while (matcher.find()) {
            found.add(new Placeholder(matcher.group(1), matcher.start()));
        }
        return found;
    }

    /** The text with every placeholder replaced. */
    static String fill(String text, UnaryOperator<String> values) {
        return PLACEHOLDER.matcher(text).replaceAll(m -> Matcher.quoteReplacement(values.apply(m.group(1))));
    }
}

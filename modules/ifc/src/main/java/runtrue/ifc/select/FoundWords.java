package runtrue.ifc.select;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What patterns found in texts. Remembered, because names of types and objects repeat throughout a model, and a pattern
 * of many words costs far more than looking up what it said before.
 */
final class FoundWords {
    private final Map<Pattern, Map<String, String>> known = new HashMap<>();

    /** The word found, or the empty text. */
    String in(String text, Pattern pattern) {
        return known.computeIfAbsent(pattern, key -> new HashMap<>()).computeIfAbsent(text, key -> find(key, pattern));
    }

    /** Patterns may name the telling part {@code word}, where they look at more of the text than that. */
    private static String find(String text, Pattern pattern) {
        Matcher matcher = pattern.matcher(text);
        if (!matcher.find()) {
            return "";
        }
        String word = pattern.pattern().contains("(?<word>") ? matcher.group("word") : matcher.group();
        return word.isEmpty() ? text : word;
    }
}

package runtrue.rules.cel;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Puts the checker's messages into words that speak of rules. */
final class Wording {
    private static final Pattern NO_OVERLOAD =
            Pattern.compile("found no matching overload for '(.*?)' applied to '\\((.*?)\\)'.*", Pattern.DOTALL);
    private static final Map<String, String> TYPES =
            Map.of("double", "number", "string", "text", "bool", "truth value");

    private Wording() {}

    static String of(String message) {
        Matcher overload = NO_OVERLOAD.matcher(message);
        if (overload.matches()) {
            String function =
                    overload.group(1).replace("_", " ").replace("@", "").strip();
            String types = overload.group(2);
            for (Map.Entry<String, String> type : TYPES.entrySet()) {
                types = types.replaceAll("\\b" + type.getKey() + "\\b", type.getValue());
            }
            return "\"" + function + "\" cannot take (" + types + ")";
        }
        return "not a valid expression: " + message.strip().replaceAll("\\s+", " ");
    }
}

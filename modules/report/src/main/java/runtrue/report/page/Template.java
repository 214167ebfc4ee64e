package runtrue.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The page's frame: text with slots, written {@code {{name}}}. */
final class Template {
    private static final Pattern SLOT = Pattern.compile("\\{\\{([a-z]+)}}");

    private Template() {}

    /** What is written where the page differs, or what is kept in a file of its own. */
    enum Slot {
        POLICY,
        STYLE,
        PLANS,
        DATA,
        MODULES,
        LICENCE,
        BOOT,
        END
    }

    /** Text up to a slot, and the slot. */
    record Part(String text, Slot slot) {}

    static List<Part> page() {
        return parts(Front.frame());
    }

    /** Splits a text at its slots; fails when it names one that is not known. */
    static List<Part> parts(String text) {
        List<Part> parts = new ArrayList<>();
        Matcher slots = SLOT.matcher(text);
        int from = 0;
        while (slots.find()) {
            parts.add(new Part(
                    text.substring(from, slots.start()),
                    Slot.valueOf(slots.group(1).toUpperCase(Locale.ROOT))));
            from = slots.end();
        }
        parts.add(new Part(text.substring(from), Slot.END));
        return parts;
    }
}

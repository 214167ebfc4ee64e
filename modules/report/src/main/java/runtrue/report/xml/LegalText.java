package runtrue.report.xml;

/** Texts of whatever origin as XML 1.0 can hold them. */
public final class LegalText {
    private LegalText() {}

    /** XML has no way to write most control characters or half a surrogate pair: these become U+FFFD. */
    public static String of(String text) {
        if (text.codePoints().allMatch(LegalText::isLegal)) {
            return text;
        }
        StringBuilder kept = new StringBuilder();
        text.codePoints().forEach(c -> kept.appendCodePoint(isLegal(c) ? c : 0xFFFD));
        return kept.toString();
    }

    /** As it is, or cut to a length in UTF-16 units with a sign at its end; never within a letter that takes two. */
    public static String shortened(String text, int most) {
        if (text.length() <= most) {
            return text;
        }
        int end = Character.isHighSurrogate(text.charAt(most - 2)) ? most - 2 : most - 1;
        return text.substring(0, end) + "…";
    }

    private static boolean isLegal(int c) {
        boolean plain = c >= 0x20 && c < 0xD800;
        boolean beyondSurrogates = c > 0xDFFF && c != 0xFFFE && c != 0xFFFF;
        return plain || beyondSurrogates || c == '\t' || c == '\n';
    }
}

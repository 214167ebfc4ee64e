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

    private static boolean isLegal(int c) {
        boolean plain = c >= 0x20 && c < 0xD800;
        boolean beyondSurrogates = c > 0xDFFF && c != 0xFFFE && c != 0xFFFF;
        return plain || beyondSurrogates || c == '\t' || c == '\n';
    }
}

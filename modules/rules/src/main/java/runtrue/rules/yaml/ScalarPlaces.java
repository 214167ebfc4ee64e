package runtrue.rules.yaml;

import runtrue.rules.yaml.YamlValue.Scalar;

/**
 * Finds a character of a scalar's value in the file. YAML folds and indents, but leaves visible characters in their
 * order, so counting those leads from one to the other; escapes in double quotes are the exception, and fall back to
 * the scalar's start.
 */
final class ScalarPlaces {
    private ScalarPlaces() {}

    static Place of(Scalar scalar, int index) {
        String source = scalar.source();
        int start = bodyStart(source);
        if (!visible(source, start).startsWith(visible(scalar.text(), 0))) {
            return scalar.place();
        }
        int wanted = visible(
                        scalar.text().substring(0, Math.min(index, scalar.text().length())), 0)
                .length();
        int at = start;
        for (int seen = 0; at < source.length(); at++) {
            if (!Character.isWhitespace(source.charAt(at)) && seen++ == wanted) {
                break;
            }
        }
        return place(scalar.place(), source, at);
    }

    /** Past an opening quote or the header line of a block. */
    private static int bodyStart(String source) {
        if (source.startsWith("'") || source.startsWith("\"")) {
            return 1;
        }
        if (source.startsWith("|") || source.startsWith(">")) {
            return source.indexOf('\n') + 1;
        }
        return 0;
    }

    private static String visible(String text, int from) {
        StringBuilder kept = new StringBuilder();
        for (int i = from; i < text.length(); i++) {
            if (!Character.isWhitespace(text.charAt(i))) {
                kept.append(text.charAt(i));
            }
        }
        return kept.toString();
    }

    private static Place place(Place start, String source, int at) {
        int line = start.line();
        int column = start.column();
        for (int i = 0; i < at; i++) {
            boolean ends = source.charAt(i) == '\n';
            line += ends ? 1 : 0;
            column = ends ? 1 : column + 1;
        }
        return new Place(start.file(), line, column);
    }
}

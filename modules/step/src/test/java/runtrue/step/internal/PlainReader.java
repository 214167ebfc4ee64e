package runtrue.step.internal;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import runtrue.step.StepInstance;
import runtrue.step.StepValue;

/**
 * A slow, obvious reader of the DATA sections of a correct file: the judge of the fast one. It cuts the whole text into
 * tokens by one pattern, then reads them one by one.
 */
final class PlainReader {
    private static final Pattern TOKEN = Pattern.compile(
            "'(?:[^']|'')*'|/\\*.*?\\*/|\"[^\"]*\"|\\.[A-Za-z_]\\w*\\."
                    + "|[-+]?[0-9]*\\.?[0-9]+\\.?[0-9]*(?:[Ee][-+]?[0-9]+)?|#[0-9]+|[A-Za-z_!][\\w-]*|[$*=;,()]|\\s+",
            Pattern.DOTALL);
    private static final Pattern ESCAPE = Pattern.compile(
            "''|\\\\\\\\|\\\\X\\\\([0-9A-F]{2})|\\\\X2\\\\((?:[0-9A-F]{4})*)\\\\X0\\\\|\\\\X4\\\\((?:[0-9A-F]{8})*)\\\\X0\\\\");

    private final List<String> tokens = new ArrayList<>();
    private int at;

    private PlainReader(String text) {
        Matcher matcher = TOKEN.matcher(text);
        int place = 0;
        while (matcher.find()) {
            if (matcher.start() != place) {
                throw new IllegalArgumentException("no token at " + place);
            }
            place = matcher.end();
            if (!matcher.group().isBlank() && !matcher.group().startsWith("/*")) {
                tokens.add(matcher.group());
            }
        }
    }

    /** Simple instances by number, in file order. */
    static Map<Integer, StepInstance> instances(String text) {
        PlainReader reader = new PlainReader(text);
        Map<Integer, StepInstance> instances = new LinkedHashMap<>();
        while (reader.at < reader.tokens.size()) {
            String token = reader.next();
            if (token.startsWith("#") && reader.tokens.get(reader.at).equals("=")) {
                reader.at++;
                int id = Integer.parseInt(token.substring(1));
                if (!reader.tokens.get(reader.at).equals("(")) {
                    String keyword = reader.next().toUpperCase(Locale.ROOT);
                    instances.putIfAbsent(id, new StepInstance(id, keyword, reader.list()));
                }
            }
        }
        return instances;
    }

    private String next() {
        return tokens.get(at++);
    }

    private List<StepValue> list() {
        List<StepValue> values = new ArrayList<>();
        at++;
        while (!tokens.get(at).equals(")")) {
            if (tokens.get(at).equals(",")) {
                at++;
            }
            values.add(value());
        }
        at++;
        return values;
    }

    private StepValue value() {
        String token = tokens.get(at);
        if (token.equals("(")) {
            return new StepValue.ListOf(list());
        }
        at++;
        char first = token.charAt(0);
        if (first == '$') {
            return new StepValue.Omitted();
        } else if (first == '*') {
            return new StepValue.Derived();
        } else if (first == '#') {
            return new StepValue.Reference(Integer.parseInt(token.substring(1)));
        } else if (first == '\'') {
            return new StepValue.Text(text(token.substring(1, token.length() - 1)));
        } else if (first == '"') {
            return new StepValue.Binary(token.substring(1, token.length() - 1));
        } else if (token.matches("\\.[A-Za-z_].*")) {
            return new StepValue.Enumeration(
                    token.substring(1, token.length() - 1).toUpperCase(Locale.ROOT));
        } else if (Character.isLetter(first)) {
            return new StepValue.Typed(token.toUpperCase(Locale.ROOT), list().get(0));
        } else if (token.matches("[-+]?[0-9]+")) {
            return new StepValue.Whole(Long.parseLong(token));
        }
        return new StepValue.Real(
                token.startsWith("-")
                        ? -new BigDecimal(token.substring(1)).doubleValue()
                        : new BigDecimal(token).doubleValue());
    }

    private static String text(String written) {
        Matcher escape = ESCAPE.matcher(written.replace("\n", "").replace("\r", ""));
        return escape.replaceAll(found ->
                Matcher.quoteReplacement(character(found.group(), found.group(1), found.group(2), found.group(3))));
    }

    private static String character(String all, @Nullable String one, @Nullable String twos, @Nullable String fours) {
        StringBuilder text = new StringBuilder();
        if (one != null) {
            text.append((char) Integer.parseInt(one, 16));
        } else if (twos != null) {
            for (int i = 0; i < twos.length(); i += 4) {
                text.append((char) Integer.parseInt(twos.substring(i, i + 4), 16));
            }
        } else if (fours != null) {
            for (int i = 0; i < fours.length(); i += 8) {
                text.appendCodePoint(Integer.parseInt(fours.substring(i, i + 8), 16));
            }
        } else {
            text.append(all.charAt(0));
        }
        return text.toString();
    }
}

package runtrue.rules.yaml;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Finds what a person most likely meant. */
public final class NearMiss {
    private NearMiss() {}

    /** The nearest name by edits, if it is near enough to be a slip; ties go to the first by alphabet. */
    public static Optional<String> of(String written, Collection<String> known) {
        int allowed = Math.max(1, written.length() / 3);
        return known.stream()
                .sorted()
                .min(Comparator.comparingInt(name -> edits(written, name)))
                .filter(name -> edits(written, name) <= allowed);
    }

    /** {@code ; did you mean "x"?} or nothing. */
    public static String hint(String written, Collection<String> known) {
        return of(written, known)
                .map(name -> "; did you mean \"" + name + "\"?")
                .orElse("");
    }

    /** Levenshtein distance. */
    static int edits(String a, String b) {
        int[] before = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            before[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] now = new int[b.length() + 1];
            now[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int swap = before[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                now[j] = Math.min(swap, Math.min(before[j], now[j - 1]) + 1);
            }
            before = now;
        }
        return before[b.length()];
    }
}

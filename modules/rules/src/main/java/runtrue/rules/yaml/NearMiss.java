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

    /** Letters left out, added or taken for another, and neighbours that changed places, each counted as one. */
    static int edits(String a, String b) {
        int[][] edits = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    edits[i][j] = i + j;
                    continue;
                }
                int other = edits[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                edits[i][j] = Math.min(other, Math.min(edits[i - 1][j], edits[i][j - 1]) + 1);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    edits[i][j] = Math.min(edits[i][j], edits[i - 2][j - 2] + 1);
                }
            }
        }
        return edits[a.length()][b.length()];
    }
}

package runtrue.report.quantities;

import java.util.ArrayList;
import java.util.List;

/** Numbers in short, for example {@code 1–4, 7}. */
final class NumberRuns {
    private NumberRuns() {}

    /** Of numbers that rise. */
    static String of(List<Integer> numbers) {
        List<String> runs = new ArrayList<>();
        int start = 0;
        for (int i = 1; i <= numbers.size(); i++) {
            if (i == numbers.size() || numbers.get(i) != numbers.get(i - 1) + 1) {
                int first = numbers.get(start);
                int last = numbers.get(i - 1);
                runs.add(first == last ? "" + first : first + "–" + last);
                start = i;
            }
        }
        return String.join(", ", runs);
    }
}

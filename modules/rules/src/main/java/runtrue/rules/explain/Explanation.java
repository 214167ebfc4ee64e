package runtrue.rules.explain;

import java.util.ArrayList;
import java.util.List;

/**
 * Something explained step by step, as text.
 *
 * @param title one line
 */
public record Explanation(String title, List<Step> steps) {
    public Explanation {
        steps = List.copyOf(steps);
    }

    /**
     * One step.
     *
     * @param lines each without line ends; what belongs below the line before is indented by two blanks
     */
    public record Step(String title, List<String> lines) {
        public Step {
            lines = List.copyOf(lines);
        }
    }

    /** All of it, steps numbered, for a terminal or a text file. */
    public List<String> lines() {
        List<String> all = new ArrayList<>();
        all.add(title);
        int number = 0;
        for (Step step : steps) {
            all.add("");
            all.add(++number + ". " + step.title());
            step.lines().forEach(line -> all.add("   " + line));
        }
        return all;
    }
}

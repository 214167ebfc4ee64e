package runtrue.result.build;

import java.util.List;

/**
 * Rates as a person wrote them.
 *
 * @param file for people
 */
public record RateList(String file, List<Entry> entries) {
    public RateList {
        entries = List.copyOf(entries);
    }

    /**
     * One rate.
     *
     * @param item id of an item or of a line, or a line's description
     * @param unit that the rate is for: a unit, or the word for what is counted
     * @param line in the file, from 1
     */
    public record Entry(String item, String unit, double rate, String currency, int line) {}
}

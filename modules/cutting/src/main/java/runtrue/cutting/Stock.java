package runtrue.cutting;

/**
 * What pieces are cut from, without a limit in number. Millimetres.
 *
 * @param length of a bar
 * @param kerf lost between two pieces, 0 for shears
 * @param leastOffcut shortest rest of a bar that is worth keeping
 */
public record Stock(int length, int kerf, int leastOffcut) {
    /** Longest bar or cut that is taken, with its kerf; bounds the memory of the search. */
    static final int LONGEST = 100_000;

    public Stock {
        if (length <= 0 || kerf < 0 || leastOffcut < 0 || (long) length + kerf > LONGEST) {
            throw new IllegalArgumentException("Stock of " + length + " mm, kerf " + kerf + " mm, least offcut "
                    + leastOffcut
                    + " mm: the length must be above 0, the others not below 0, and length with kerf at most "
                    + LONGEST + " mm");
        }
    }

    /** Bar in which each piece, with one kerf added to it, takes its share: the last cut may be the bar's end. */
    int capacity() {
        return length + kerf;
    }
}

package runtrue.step.internal;

import java.util.Arrays;

/**
 * Finds the ordinal of an instance number. Dense numbers (as authoring programs write them) go into a bit set with a
 * running count a word, 1.5 bits a possible number, whose count of bits below a number is its place in order; sparse
 * numbers are searched for by halving. Where a file is in order, the place in order is the ordinal and nothing more is
 * kept; else there are four bytes a record for it.
 */
final class IdTable {
    static final int NONE = -1;
    /** Most bytes of bit set and counts a record, beyond which halving is taken. */
    private static final int DENSE_BYTES = 8;

    private static final int WORD_BYTES = 12;

    private final RecordSequence records;
    private final ScanNotes notes;
    /** Bits of the numbers that occur; empty when the numbers are sparse. */
    private long[] bits = {};
    /** Numbers below the word. */
    private int[] below = {};
    /** One more than the ordinal of each place in order, 0 for none yet; empty when the file is in order. */
    private int[] ordinals = {};

    private int distinct;

    /** @param notes takes the numbers that occur more than once; the first record of each counts */
    IdTable(RecordSequence records, ScanNotes notes) {
        this.records = records;
        this.notes = notes;
        this.distinct = records.size();
        int largest = -1;
        boolean inOrder = true;
        for (RecordBlock block : records.blocks()) {
            inOrder &= block.inOrder && block.ids[0] > largest;
            largest = Math.max(largest, block.largest);
        }
        int words = (largest >>> 6) + 1;
        if ((long) words * WORD_BYTES <= (long) records.size() * DENSE_BYTES + 4096) {
            fillBits(words);
            if (!inOrder) {
                orderByRank();
            }
        } else if (!inOrder) {
            orderBySorting();
        }
    }

    /** Number of different instance numbers. */
    int size() {
        return distinct;
    }

    /** The record of an instance number, or {@link #NONE}. */
    int ordinal(int id) {
        if (bits.length == 0) {
            return search(id);
        }
        int word = id >>> 6;
        if (word >= bits.length || (bits[word] & (1L << id)) == 0) {
            return NONE;
        }
        int rank = rank(id);
        return ordinals.length == 0 ? rank : ordinals[rank] - 1;
    }

    private int rank(int id) {
        int word = id >>> 6;
        return below[word] + Long.bitCount(bits[word] & ((1L << id) - 1));
    }

    private void fillBits(int words) {
        long[] set = new long[words];
        for (RecordBlock block : records.blocks()) {
            block.mark(set);
        }
        bits = set;
        below = new int[words];
        for (int i = 1; i < words; i++) {
            below[i] = below[i - 1] + Long.bitCount(set[i - 1]);
        }
        distinct = words == 0 ? 0 : below[words - 1] + Long.bitCount(set[words - 1]);
    }

    private void orderByRank() {
        ordinals = new int[distinct];
        for (int i = 0; i < records.blocks().length; i++) {
            orderByRank(records.blocks()[i], records.firstOf(i));
        }
    }

    private void orderByRank(RecordBlock block, int first) {
        for (int i = 0; i < block.count; i++) {
            int rank = rank(block.ids[i]);
            if (ordinals[rank] == 0) {
                ordinals[rank] = first + i + 1;
            } else {
                notes.add(ScanNotes.Kind.DUPLICATE, records.position(first + i), block.ids[i]);
            }
        }
    }

    private void orderBySorting() {
        long[] pairs = new long[records.size()];
        for (int ordinal = 0; ordinal < pairs.length; ordinal++) {
            pairs[ordinal] = (long) records.id(ordinal) << 32 | ordinal;
        }
        Arrays.sort(pairs);
        ordinals = new int[pairs.length];
        distinct = 0;
        for (int i = 0; i < pairs.length; i++) {
            int id = (int) (pairs[i] >>> 32);
            if (i > 0 && id == (int) (pairs[i - 1] >>> 32)) {
                notes.add(ScanNotes.Kind.DUPLICATE, records.position((int) pairs[i]), id);
            } else {
                ordinals[distinct++] = (int) pairs[i] + 1;
            }
        }
        ordinals = Arrays.copyOf(ordinals, distinct);
    }

    private int search(int id) {
        int low = 0;
        int high = distinct - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            int ordinal = ordinals.length == 0 ? middle : ordinals[middle] - 1;
            int found = records.id(ordinal);
            if (found == id) {
                return ordinal;
            }
            if (found < id) {
                low = middle + 1;
            } else {
                high = middle - 1;
            }
        }
        return NONE;
    }
}

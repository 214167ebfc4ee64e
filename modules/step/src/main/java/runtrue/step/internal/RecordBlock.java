package runtrue.step.internal;

/**
 * Index entries of records that follow one another in one piece: ten bytes a record. Blocks are filled one after the
 * other and never copied, so growing costs nothing and the results of several threads are joined by listing their blocks.
 */
final class RecordBlock {
    final Piece piece;
    final int[] ids;
    /** Where the {@code #} stands in the piece. */
    final int[] offsets;
    /** Numbers of the segment's {@link KeywordTable}. */
    final char[] keywords;
    /** For each of those, the number in the file's table. */
    char[] codes = {};

    int count;
    /** Whether each number is larger than the one before it. */
    boolean inOrder = true;

    int largest = -1;
    /** Where the last record's text ends at the latest, in the piece. */
    int end;

    RecordBlock(Piece piece, int capacity) {
        this.piece = piece;
        ids = new int[capacity];
        offsets = new int[capacity];
        keywords = new char[capacity];
    }

    int keyword(int slot) {
        return codes[keywords[slot]];
    }

    boolean full() {
        return count == ids.length;
    }

    void add(int id, int keyword, int offset) {
        inOrder &= id > largest;
        largest = Math.max(largest, id);
        ids[count] = id;
        keywords[count] = (char) keyword;
        offsets[count] = offset;
        count++;
    }

    /** Sets the bit of each instance number. */
    void mark(long[] bits) {
        for (int i = 0; i < count; i++) {
            bits[ids[i] >>> 6] |= 1L << ids[i];
        }
    }

    /** Counts the records of each entity name, one place up. */
    void countKeywords(int[] counts) {
        for (int i = 0; i < count; i++) {
            counts[codes[keywords[i]] + 1]++;
        }
    }

    /** Puts each instance number at the next place of its entity name. */
    void listByKeyword(int[] next, int[] target) {
        for (int i = 0; i < count; i++) {
            target[next[codes[keywords[i]]]++] = ids[i];
        }
    }
}

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
    /** Numbers of the {@link KeywordTable}. */
    final char[] keywords;

    int count;
    /** Where the last record's text ends at the latest, in the piece. */
    int end;

    RecordBlock(Piece piece, int capacity) {
        this.piece = piece;
        ids = new int[capacity];
        offsets = new int[capacity];
        keywords = new char[capacity];
    }

    boolean full() {
        return count == ids.length;
    }

    void add(int id, int keyword, int offset) {
        ids[count] = id;
        keywords[count] = (char) keyword;
        offsets[count] = offset;
        count++;
    }
}

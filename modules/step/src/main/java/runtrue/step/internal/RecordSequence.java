package runtrue.step.internal;

import java.util.List;

/**
 * The blocks of a whole file as one sequence of records in file order, numbered from 0 (the ordinal). All blocks but the
 * last of a piece or segment are full, so the block of an ordinal is found by a division and at most a few steps.
 */
final class RecordSequence {
    private final RecordBlock[] blocks;
    private final int[] first;
    private final int shift;

    /** @param blockRecords records in a full block, a power of two */
    RecordSequence(List<RecordBlock> blocks, int blockRecords) {
        this.blocks = blocks.toArray(new RecordBlock[0]);
        this.first = new int[blocks.size() + 1];
        this.shift = Integer.numberOfTrailingZeros(blockRecords);
        for (int i = 0; i < this.blocks.length; i++) {
            first[i + 1] = Math.addExact(first[i], this.blocks[i].count);
        }
    }

    int size() {
        return first[blocks.length];
    }

    RecordBlock[] blocks() {
        return blocks;
    }

    int firstOf(int block) {
        return first[block];
    }

    int blockOf(int ordinal) {
        int block = ordinal >>> shift;
        while (first[block + 1] <= ordinal) {
            block++;
        }
        return block;
    }

    int id(int ordinal) {
        int block = blockOf(ordinal);
        return blocks[block].ids[ordinal - first[block]];
    }

    int keyword(int ordinal) {
        int block = blockOf(ordinal);
        return blocks[block].keyword(ordinal - first[block]);
    }

    /** Place of the {@code #} in the file. */
    long position(int ordinal) {
        int block = blockOf(ordinal);
        return blocks[block].piece.start() + blocks[block].offsets[ordinal - first[block]];
    }

    /** A copy of a record's text, and perhaps of what lies between it and the next record. */
    byte[] text(int ordinal) {
        int number = blockOf(ordinal);
        RecordBlock block = blocks[number];
        int slot = ordinal - first[number];
        int start = block.offsets[slot];
        int end = slot + 1 < block.count ? block.offsets[slot + 1] : block.end;
        byte[] text = new byte[end - start];
        block.piece.bytes().get(start, text);
        return text;
    }
}

package runtrue.step.internal;

import java.util.Arrays;

/**
 * Line numbers on demand: the index keeps byte positions only. Line ends are LF, CR LF and a lone CR. Every 64 KiB the
 * number reached is kept, so a second question costs one short read.
 */
final class LineNumbers {
    private static final int STEP = 1 << 16;

    private final FileBytes file;
    private final byte[] buffer = new byte[STEP + 1];
    private int[] before = new int[16];
    private int known = 1;

    LineNumbers(FileBytes file) {
        this.file = file;
    }

    /** 1-based line of a byte; the last line for a place behind the end. */
    synchronized int lineAt(long position) {
        long place = Math.min(position, file.size());
        int step = (int) (place / STEP);
        while (known <= step) {
            if (known == before.length) {
                before = Arrays.copyOf(before, known * 2);
            }
            before[known] = before[known - 1] + ends(known - 1, STEP);
            known++;
        }
        return 1 + before[step] + ends(step, (int) (place % STEP));
    }

    private int ends(int step, int length) {
        int read = file.read((long) step * STEP, buffer);
        return lineEnds(buffer, Math.min(length, read), read);
    }

    /** Line ends among the first bytes; a CR before a LF is none, even when the LF is the first byte not counted. */
    static int lineEnds(byte[] bytes, int length, int available) {
        int ends = 0;
        for (int i = 0; i < length; i++) {
            byte b = bytes[i];
            if (b == '\n' || (b == '\r' && (i + 1 >= available || bytes[i + 1] != '\n'))) {
                ends++;
            }
        }
        return ends;
    }
}

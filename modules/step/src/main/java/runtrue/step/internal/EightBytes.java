package runtrue.step.internal;

import java.nio.ByteBuffer;

/**
 * Tests on eight bytes at once, the first byte lowest. An answer has the top bit of each byte that meets the test; only
 * the lowest answer is reliable, for a carry may spoil those above it.
 */
final class EightBytes {
    static final long QUOTES = 0x2727272727272727L;
    static final long SEMICOLONS = 0x3B3B3B3B3B3B3B3BL;
    static final long EQUALS = 0x3D3D3D3D3D3D3D3DL;
    static final long SLASHES = 0x2F2F2F2F2F2F2F2FL;
    /** The bit in which a quote and a slash differ; with it set, one comparison finds both. */
    static final long QUOTE_OR_SLASH = QUOTES ^ SLASHES;

    /** Hash to begin with; not zero, for a hash of zero marks an empty place in {@link KeywordTable}. */
    static final long NO_NAME = 1;

    private static final long ONES = 0x0101010101010101L;
    private static final long TOPS = 0x8080808080808080L;
    private static final long SPACES = 0x2020202020202020L;
    private static final long ZERO_DIGITS = 0x3030303030303030L;
    private static final long UPPER_CASE = 0xDFDFDFDFDFDFDFDFL;

    private EightBytes() {}

    /** From a little-endian buffer; a view handle reads as fast, but takes the compiler twice as long (0.1 s when cold). */
    static long at(ByteBuffer bytes, int offset) {
        return bytes.getLong(offset);
    }

    /** Number of bytes before the first that meets the test, 8 when none does. */
    static int before(long answer) {
        return Long.numberOfTrailingZeros(answer) >>> 3;
    }

    /**
     * 1 for a space, 0 for other ASCII; without a branch, since a file that writes a space in all records but a few would
     * have the scan compiled again (0.06 s) at the first of those.
     */
    static int oneIfSpace(byte b) {
        return ((b ^ ' ') - 1) >>> 31;
    }

    static long zeros(long word) {
        return (word - ONES) & ~word & TOPS;
    }

    static long controls(long word) {
        return (word - SPACES) & ~word & TOPS;
    }

    static long notDigits(long word) {
        long digits = word ^ ZERO_DIGITS;
        return ((digits + 0x7676767676767676L) | digits) & TOPS;
    }

    /** Bytes less than the digit zero, such as blanks and brackets, which end a name. */
    static long lessThanZero(long word) {
        return ~(((word & ~TOPS) + 0x5050505050505050L) | word) & TOPS;
    }

    /** The first 0 to 8 bytes, the others zero. */
    static long first(long word, int count) {
        return count == Long.BYTES ? word : word & ((1L << (8 * count)) - 1);
    }

    /** Takes eight bytes of a name, letters as if in upper case, into a hash. */
    static long mix(long hash, long word) {
        long mixed = (hash ^ (word & UPPER_CASE)) * 0x9E3779B97F4A7C15L;
        return mixed ^ (mixed >>> 29);
    }

    /** The number that the first 1 to 8 bytes write in decimal digits: pairs, then fours, then all are put together. */
    static int number(long word, int digits) {
        long pairs = (((word << (64 - 8 * digits)) & 0x0F0F0F0F0F0F0F0FL) * (1 + (10 << 8))) >>> 8;
        long fours = ((pairs & 0x00FF00FF00FF00FFL) * (1 + (100L << 16))) >>> 16;
        return (int) (((fours & 0x0000FFFF0000FFFFL) * (1 + (10000L << 32))) >>> 32);
    }
}

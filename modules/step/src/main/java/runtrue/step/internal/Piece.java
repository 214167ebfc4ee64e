package runtrue.step.internal;

import java.nio.ByteBuffer;

/**
 * A stretch of a file that one buffer can hold (less than 2 GiB). Pieces begin at the start of a record and may overlap,
 * so that no indexed record lies across two of them.
 *
 * @param bytes read by absolute position only, little-endian, 0 to its limit
 * @param start position of the first byte in the file
 */
record Piece(ByteBuffer bytes, long start) {
    int length() {
        return bytes.limit();
    }

    long end() {
        return start + length();
    }
}

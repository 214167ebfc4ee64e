package runtrue.cutting;

/**
 * Required pieces of one length.
 *
 * @param length millimetres
 * @param count how many, at least 1
 */
public record Piece(int length, int count) {
    public Piece {
        if (length <= 0 || count <= 0) {
            throw new IllegalArgumentException(
                    count + " pieces of " + length + " mm: both the count and the length must be above 0");
        }
    }
}

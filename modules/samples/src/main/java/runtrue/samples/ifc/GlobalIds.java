package runtrue.samples.ifc;

import java.nio.charset.StandardCharsets;
import java.util.UUID;

/** GlobalIds that depend on a name only. */
final class GlobalIds {
    private static final String DIGITS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz_$";

    private GlobalIds() {}

    /**
     * The 22-character form of the name-based UUID of {@code name}: 128 bits, six a digit, the first digit from the two
     * highest bits.
     */
    static String of(String name) {
        UUID uuid = UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
        long high = uuid.getMostSignificantBits();
        long low = uuid.getLeastSignificantBits();
        char[] id = new char[22];
        for (int i = id.length - 1; i >= 0; i--) {
            id[i] = DIGITS.charAt((int) (low & 63));
            low = (low >>> 6) | (high << 58);
            high >>>= 6;
        }
        return new String(id);
    }
}

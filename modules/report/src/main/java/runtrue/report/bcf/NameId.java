package runtrue.report.bcf;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.UUID;

/** Identifiers that follow from a name: the same finding has the same topic in every drop. */
final class NameId {
    /** Invented once for this program; another one would part all topics from their earlier selves. */
    private static final UUID SPACE = UUID.fromString("8a4f5b0e-6d0c-4a57-9c56-2f6f0f6b7c11");

    private NameId() {}

    /** A version 5 UUID (RFC 9562, 5.5) in lower case, as both versions of the format want it. */
    static String of(String kind, String name) {
        ByteBuffer space = ByteBuffer.allocate(16)
                .putLong(SPACE.getMostSignificantBits())
                .putLong(SPACE.getLeastSignificantBits());
        byte[] digest = sha1(space.array(), (kind + " " + name).getBytes(StandardCharsets.UTF_8));
        ByteBuffer first = ByteBuffer.wrap(digest);
        long high = (first.getLong() & ~0xF000L) | 0x5000L;
        long low = (first.getLong() & 0x3FFF_FFFF_FFFF_FFFFL) | 0x8000_0000_0000_0000L;
        return new UUID(high, low).toString();
    }

    private static byte[] sha1(byte[] space, byte[] name) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-1");
            digest.update(space);
            return digest.digest(name);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-1", e);
        }
    }
}

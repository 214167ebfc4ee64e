package runtrue.roof;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.zip.CRC32C;

/** Short ids that stay from drop to drop because they are made from what a thing is, not from where it stands in a list. */
public final class Ids {
    private Ids() {}

    /** A prefix and eight hexadecimal digits, for example {@code P-3f2a91c0}. */
    public static String of(String prefix, String key) {
        CRC32C sum = new CRC32C();
        sum.update(key.getBytes(StandardCharsets.UTF_8));
        return String.format(Locale.ROOT, "%s-%08x", prefix, sum.getValue());
    }
}

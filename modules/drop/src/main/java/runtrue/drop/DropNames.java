package runtrue.drop;

import java.nio.file.Path;
import java.text.Normalizer;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Hands out names that work as folder names on every common file system and differ without regard to case. */
final class DropNames {
    private static final int LONGEST = 80;
    /** Device names that cannot be file names on one common system, whatever follows a dot. */
    private static final Pattern RESERVED = Pattern.compile("(?i)(con|prn|aux|nul|com[0-9]|lpt[0-9])(\\..*)?");

    private final Set<String> taken = new HashSet<>();

    /** The folder's own name, also for {@code .} and links; {@code drop} for the root of a file system. */
    static String of(Path folder) {
        Path name = folder.toAbsolutePath().normalize().getFileName();
        return name == null ? "drop" : name.toString();
    }

    String unique(String wanted) {
        String safe = safe(wanted);
        String name = safe;
        for (int i = 2; !taken.add(name.toLowerCase(Locale.ROOT)); i++) {
            name = safe + "-" + i;
        }
        return name;
    }

    static String safe(String wanted) {
        String name = Normalizer.normalize(wanted, Normalizer.Form.NFC)
                .replaceAll("[^\\p{L}\\p{M}\\p{N}._ -]+", "-")
                .strip();
        if (name.length() > LONGEST) {
            // Half of a letter that takes two units is no text and no file name.
            boolean within = Character.isHighSurrogate(name.charAt(LONGEST - 1));
            name = name.substring(0, within ? LONGEST - 1 : LONGEST);
        }
        name = name.replaceAll("^[. -]+|[. -]+$", "");
        if (name.isEmpty()) {
            return "drop";
        }
        return RESERVED.matcher(name).matches() ? "drop-" + name : name;
    }
}

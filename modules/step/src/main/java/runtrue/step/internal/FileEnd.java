package runtrue.step.internal;

import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import runtrue.step.StepException;
import runtrue.step.internal.SegmentScan.Place;

/** Looks at what stands where a scan stopped: a file that was cut short must fail, never lose its last elements. */
final class FileEnd {
    private static final int WINDOW = 1 << 16;
    private static final Pattern RECORD = Pattern.compile("#\\d+");

    private final FileBytes file;

    FileEnd(FileBytes file) {
        this.file = file;
    }

    StepException cutShort(long stopped, Place place) {
        LineNumbers lines = new LineNumbers(file);
        int end = lines.lineAt(file.size());
        String rest = window(stopped).strip();
        String what;
        if (rest.isEmpty()) {
            String missing = place == Place.IN_DATA ? "ENDSEC and END-ISO-10303-21" : "END-ISO-10303-21";
            what = "the file ends without " + missing + "; it was cut short";
        } else {
            Matcher record = RECORD.matcher(rest);
            String begun = rest.startsWith("/*") ? "a comment" : record.lookingAt() ? record.group() : "a statement";
            what = begun + " begins at line " + lines.lineAt(stopped)
                    + " and is not finished where the file ends; it was"
                    + " cut short, or a string or comment is not closed";
        }
        return new StepException(file.name() + ", line " + end + ": " + what + "; fetch the file again");
    }

    /** Place of the first character behind the end of the exchange structure that is not blank; the size if none. */
    long textBehind(long end) {
        String rest = window(end);
        for (int i = 0; i < rest.length(); i++) {
            if (rest.charAt(i) > ' ') {
                return end + i;
            }
        }
        return file.size();
    }

    private String window(long start) {
        byte[] bytes = new byte[(int) Math.min(WINDOW, file.size() - start)];
        return new String(bytes, 0, file.read(start, bytes), StandardCharsets.ISO_8859_1);
    }
}

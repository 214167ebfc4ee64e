package runtrue.step.internal;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import runtrue.step.StepException;
import runtrue.step.StepHeader;
import runtrue.step.StepValue;

/** Reads the HEADER section, and tells files that are no STEP files from those that are cut short. */
final class HeaderReader implements Statements.Complaint {
    private static final int FIRST_READ = 1 << 16;
    private static final int LONGEST = 1 << 26;
    private static final byte[] UTF_8_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private final FileBytes file;
    private final byte[] bytes;
    private final Statements text;
    private final Map<String, List<StepValue>> entities = new HashMap<>();
    private int behind;

    private HeaderReader(FileBytes file, byte[] bytes) {
        this.file = file;
        this.bytes = bytes;
        this.text = new Statements(ByteBuffer.wrap(bytes), this);
    }

    /** The header and the place behind it. */
    record Read(StepHeader header, long behind) {}

    static Read read(FileBytes file, ScanNotes notes) {
        if (file.size() == 0) {
            throw new StepException(file.name() + ": the file is empty");
        }
        int length = FIRST_READ;
        while (true) {
            byte[] bytes = new byte[(int) Math.min(length, file.size())];
            file.read(0, bytes);
            HeaderReader reader = new HeaderReader(file, bytes);
            if (reader.statements()) {
                return new Read(reader.header(notes), reader.behind);
            }
            if (bytes.length == file.size()) {
                throw reader.at(bytes.length, "the file ends within its header; it was cut short, fetch it again");
            }
            if (length >= LONGEST) {
                throw reader.at(0, "the header does not end within " + LONGEST + " bytes");
            }
            length *= 4;
        }
    }

    /** Reads to the end of the section; false when that is not among the bytes at hand. */
    private boolean statements() {
        int p = start();
        if (p < 0) {
            return false;
        }
        boolean inHeader = false;
        while (true) {
            p = text.skipBlank(p);
            if (p < 0 || p == bytes.length) {
                return false;
            }
            int wordEnd = text.endOfWord(p);
            int end = text.endOfStatement(wordEnd);
            if (end < 0) {
                return false;
            }
            String word = text.upperCase(p, wordEnd);
            if (!inHeader && !word.equals("HEADER")) {
                throw at(p, "HEADER is expected");
            } else if (word.equals("ENDSEC")) {
                behind = end;
                return true;
            } else if (word.equals("DATA") || word.isEmpty()) {
                throw at(p, "the header is not ended by ENDSEC");
            } else if (inHeader) {
                entities.putIfAbsent(word, attributes(p, wordEnd));
            }
            inHeader = true;
            p = end;
        }
    }

    /** Behind {@code ISO-10303-21;}, or a negative number when the bytes end before. */
    private int start() {
        int p = 0;
        if (bytes.length >= 3 && Arrays.equals(bytes, 0, 3, UTF_8_MARK, 0, 3)) {
            p = 3;
        }
        p = text.skipBlank(p);
        if (p < 0) {
            return p;
        }
        int end = text.endOfWord(p);
        if (!text.upperCase(p, end).equals("ISO-10303-21")) {
            String found = new String(bytes, 0, Math.min(16, bytes.length), StandardCharsets.ISO_8859_1);
            throw new StepException(file.name() + ": this is not a STEP file; it must begin with ISO-10303-21, found \""
                    + found.replaceAll("[^ -~]+", " ") + "\"");
        }
        return text.endOfStatement(end);
    }

    private List<StepValue> attributes(int statement, int list) {
        RecordReader reader = new RecordReader(bytes, list, new RecordReader.Complaint() {
            @Override
            public StepException about(String what, int linesBelow) {
                return new StepException(file.name() + ", line " + (1 + linesBelow) + ", "
                        + text.upperCase(statement, list) + ": " + what);
            }
        });
        return reader.attributes();
    }

    private StepHeader header(ScanNotes notes) {
        if (!entities.containsKey("FILE_NAME")) {
            notes.add(ScanNotes.Kind.NO_NAME, 0, 0);
        }
        List<String> schemas = new ArrayList<>();
        for (String schema : texts("FILE_SCHEMA", 0)) {
            schemas.add(schema.strip().toUpperCase(Locale.ROOT));
        }
        if (schemas.isEmpty()) {
            notes.add(ScanNotes.Kind.NO_SCHEMA, 0, 0);
        }
        return new StepHeader(
                texts("FILE_DESCRIPTION", 0),
                text("FILE_DESCRIPTION", 1),
                text("FILE_NAME", 0),
                text("FILE_NAME", 1),
                texts("FILE_NAME", 2),
                texts("FILE_NAME", 3),
                text("FILE_NAME", 4),
                text("FILE_NAME", 5),
                text("FILE_NAME", 6),
                schemas);
    }

    private String text(String entity, int attribute) {
        List<String> texts = texts(entity, attribute);
        return texts.isEmpty() ? "" : texts.get(0);
    }

    /** The texts in a list, or a single text; nothing where the header leaves them out. */
    private List<String> texts(String entity, int attribute) {
        List<StepValue> attributes = entities.getOrDefault(entity, List.of());
        List<String> texts = new ArrayList<>();
        if (attribute < attributes.size()) {
            collect(attributes.get(attribute), texts);
        }
        return texts;
    }

    private static void collect(StepValue value, List<String> texts) {
        if (value instanceof StepValue.Text text) {
            texts.add(text.value());
        } else if (value instanceof StepValue.ListOf list) {
            for (StepValue item : list.items()) {
                collect(item, texts);
            }
        }
    }

    @Override
    public StepException at(int offset, String what) {
        int line = new LineNumbers(file).lineAt(offset);
        return new StepException(file.name() + ", line " + line + ": " + what);
    }
}

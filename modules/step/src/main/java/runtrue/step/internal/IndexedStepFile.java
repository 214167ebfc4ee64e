package runtrue.step.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntConsumer;
import org.jspecify.annotations.Nullable;
import runtrue.step.StepException;
import runtrue.step.StepFile;
import runtrue.step.StepHeader;
import runtrue.step.StepInstance;
import runtrue.step.StepNote;
import runtrue.step.internal.SegmentScan.Cuts;

/**
 * A file with its index. The index takes 10 bytes a record and about 1.5 bits a possible instance number, 4 bytes more
 * once {@link #idsOf} was asked, and 4 more when the file is not in the order of its numbers; nothing decoded is kept.
 */
public final class IndexedStepFile implements StepFile {
    private static final int PIECE_BYTES = 1 << 30;
    private static final int BLOCK_RECORDS = 1 << 16;
    private static final long SEGMENT_BYTES = 1 << 24;

    private final FileBytes file;
    private final ReadGate gate = new ReadGate();
    private final LineNumbers lines;
    private final StepHeader header;
    private final RecordSequence records;
    private final IdTable ids;
    private final KeywordTable keywords;
    private final Map<String, Integer> keywordCodes;
    private final List<StepNote> notes;
    private @Nullable KeywordLists lists;

    private IndexedStepFile(FileBytes file, Cuts cuts) {
        this.file = file;
        FileIndex index = new FileIndex(file, cuts);
        lines = new LineNumbers(file);
        header = index.header;
        records = index.records;
        ids = index.ids;
        keywords = index.keywords;
        keywordCodes = keywords.byName();
        notes = index.notes.list(lines);
    }

    /** See {@link StepFile#open}. */
    public static StepFile open(Path path) {
        return index(FileBytes.open(path), usualCuts());
    }

    /** See {@link StepFile#of}. */
    public static StepFile of(String name, byte[] content) {
        return index(FileBytes.of(name, content), usualCuts());
    }

    static StepFile index(FileBytes file, Cuts cuts) {
        try {
            return new IndexedStepFile(file, cuts);
        } catch (RuntimeException | Error e) {
            file.close();
            throw e;
        }
    }

    static Cuts usualCuts() {
        return new Cuts(
                PIECE_BYTES, BLOCK_RECORDS, SEGMENT_BYTES, Runtime.getRuntime().availableProcessors());
    }

    @Override
    public String name() {
        return file.name();
    }

    @Override
    public StepHeader header() {
        return header;
    }

    @Override
    public int size() {
        return ids.size();
    }

    @Override
    public List<StepNote> notes() {
        return notes;
    }

    @Override
    public boolean contains(int id) {
        gate.check(name());
        return ids.ordinal(id) != IdTable.NONE;
    }

    @Override
    public String keyword(int id) {
        gate.check(name());
        return keywords.name(records.keyword(ordinal(id)));
    }

    @Override
    public Set<String> keywords() {
        Set<String> names = new TreeSet<>();
        keywordCodes.forEach((name, code) -> {
            if (lists().of(code).length > 0) {
                names.add(name);
            }
        });
        return names;
    }

    @Override
    public int[] idsOf(String keyword) {
        Integer code = keywordCodes.get(keyword);
        return code == null ? new int[0] : lists().of(code);
    }

    @Override
    public StepInstance instance(int id) {
        int ordinal = ordinal(id);
        RecordReader reader = reader(id, ordinal);
        return new StepInstance(id, keywords.name(records.keyword(ordinal)), reader.attributes());
    }

    @Override
    public void references(int id, int attribute, IntConsumer target) {
        attribute(id, attribute).references(target);
    }

    @Override
    public double @Nullable [] numbers(int id, int attribute) {
        return attribute(id, attribute).numbers();
    }

    @Override
    public int line(int id) {
        gate.check(name());
        return lines.lineAt(records.position(ordinal(id)));
    }

    @Override
    public void close() {
        if (gate.close()) {
            file.close();
        }
    }

    private int ordinal(int id) {
        int ordinal = ids.ordinal(id);
        if (ordinal == IdTable.NONE) {
            throw new StepException(name() + ": there is no instance #" + id);
        }
        return ordinal;
    }

    private synchronized KeywordLists lists() {
        gate.check(name());
        KeywordLists known = lists;
        if (known == null) {
            known = new KeywordLists(records, ids, keywords.size());
            lists = known;
        }
        return known;
    }

    private RecordReader attribute(int id, int attribute) {
        RecordReader reader = reader(id, ordinal(id));
        if (!reader.toAttribute(attribute)) {
            throw fail(
                    id, 0, "there is no attribute " + (attribute + 1) + "; the list is shorter than the schema says");
        }
        return reader;
    }

    private RecordReader reader(int id, int ordinal) {
        RecordReader reader = new RecordReader(text(ordinal), 0, (what, below) -> fail(id, below, what));
        reader.toList();
        return reader;
    }

    private byte[] text(int ordinal) {
        int ticket = gate.enter(name());
        try {
            return records.text(ordinal);
        } catch (InternalError e) {
            throw new StepException(name() + ": the file became shorter while it was read; read it again", e);
        } finally {
            gate.leave(ticket);
        }
    }

    private StepException fail(int id, int linesBelow, String what) {
        return new StepException(
                name() + ", line " + (line(id) + linesBelow) + ", #" + id + " " + keyword(id) + ": " + what);
    }
}

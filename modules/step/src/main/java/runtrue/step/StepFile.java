package runtrue.step;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.IntConsumer;
import runtrue.step.internal.IndexedStepFile;

/** An indexed STEP file: start with {@link #open}. Records are decoded only when asked for. Safe for use by many threads. */
public interface StepFile extends AutoCloseable {
    /**
     * Maps and indexes a file.
     *
     * @throws StepException when it cannot be read, is not a STEP file, was cut short, or has text between records that
     *     would make records be lost
     */
    static StepFile open(Path path) {
        return IndexedStepFile.open(path);
    }

    /** Indexes a file held in memory, for example an entry of an archive. The name is used in messages. */
    static StepFile of(String name, byte[] content) {
        return IndexedStepFile.of(name, content);
    }

    String name();

    StepHeader header();

    /** Number of instances in the DATA sections. */
    int size();

    boolean contains(int id);

    /** Entity name in upper case. */
    String keyword(int id);

    /** All entity names that occur, upper case. */
    Set<String> keywords();

    /** Instance numbers of one entity name (upper case, no subtypes), in file order; empty when there is none. */
    int[] idsOf(String keyword);

    StepInstance instance(int id);

    /** Passes on the instance numbers in one attribute (a reference or a list of them) without decoding the rest. */
    void references(int id, int attribute, IntConsumer target);

    /** Reads one attribute that is a list of numbers without boxing; null when it is not such a list. */
    double @org.jspecify.annotations.Nullable [] numbers(int id, int attribute);

    /** 1-based line where an instance starts. */
    int line(int id);

    List<StepNote> notes();

    @Override
    void close();
}

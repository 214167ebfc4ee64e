package runtrue.step;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.IntConsumer;
import runtrue.step.internal.IndexedStepFile;

/**
 * An indexed STEP file: start with {@link #open}. Records are decoded only when asked for. Safe for use by many threads.
 *
 * <p>Complex instances are passed over with a note. Of several records with one instance number the first counts, the
 * others are passed over with a note. Asking for an instance that is not there, or decoding a record that is not written
 * as the standard says, throws a {@link StepException} that names file, line and instance; any reading after {@link
 * #close} throws an {@link IllegalStateException}.
 */
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

    /** Number of different instances in the DATA sections, complex ones left out. */
    int size();

    boolean contains(int id);

    /** Entity name in upper case. */
    String keyword(int id);

    /** All entity names that occur, upper case. */
    Set<String> keywords();

    /** Instance numbers of one entity name (upper case, no subtypes), in file order; empty when there is none. */
    int[] idsOf(String keyword);

    StepInstance instance(int id);

    /**
     * Passes on the instance numbers in one attribute (a reference or a list of them, lists within it too) without
     * decoding the rest; none when it holds none.
     *
     * @param attribute place in the record, from 0; a place behind the last attribute throws
     */
    void references(int id, int attribute, IntConsumer target);

    /**
     * Reads one attribute that is a list of numbers without boxing; lists within the list (rows of points) follow one
     * another. Null when it is no list or holds anything but numbers, omitted values and typed values included.
     *
     * @param attribute place in the record, from 0; a place behind the last attribute throws
     */
    double @org.jspecify.annotations.Nullable [] numbers(int id, int attribute);

    /** 1-based line where an instance starts. */
    int line(int id);

    /** What was passed over or repaired while indexing; the first hundred of a kind in full, then how many more. */
    List<StepNote> notes();

    /** Gives the file back at once. */
    @Override
    void close();
}

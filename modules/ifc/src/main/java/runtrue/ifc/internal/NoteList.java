package runtrue.ifc.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ConcurrentSkipListSet;

/**
 * What was odd, each sentence once. Sorted, so that the order does not tell which thread came first; safe for use by
 * many threads.
 */
final class NoteList {
    private final ConcurrentSkipListSet<String> notes = new ConcurrentSkipListSet<>();

    void add(String note) {
        notes.add(note);
    }

    List<String> sorted() {
        return new ArrayList<>(notes);
    }
}

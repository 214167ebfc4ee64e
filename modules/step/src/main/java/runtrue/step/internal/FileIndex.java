package runtrue.step.internal;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import runtrue.step.StepException;
import runtrue.step.StepHeader;
import runtrue.step.internal.SegmentScan.Cuts;
import runtrue.step.internal.SegmentScan.Place;

/** Builds the index of a file: cuts it into segments, scans them side by side, checks the cuts and joins the results. */
final class FileIndex {
    private static final int CUT_WINDOW = 1 << 16;
    private static final Pattern RECORD_BEGINS = Pattern.compile(";\\s*(#\\d+\\s*=)");

    final ScanNotes notes = new ScanNotes();
    final KeywordTable keywords = new KeywordTable();
    final StepHeader header;
    final RecordSequence records;
    final IdTable ids;

    private final FileBytes file;
    private final Cuts cuts;
    private final List<RecordBlock> blocks = new ArrayList<>();

    FileIndex(FileBytes file, Cuts cuts) {
        this.file = file;
        this.cuts = cuts;
        HeaderReader.Read read = HeaderReader.read(file, notes);
        header = read.header();
        scan(read.behind());
        records = new RecordSequence(blocks, cuts.blockRecords());
        ids = new IdTable(records, notes);
    }

    private void scan(long start) {
        List<Long> bounds = bounds(start);
        List<SegmentScan> segments = new ArrayList<>();
        List<CompletableFuture<Void>> running = new ArrayList<>();
        for (int i = 0; i + 1 < bounds.size(); i++) {
            Place place = i == 0 ? Place.BETWEEN_SECTIONS : Place.IN_DATA;
            segments.add(new SegmentScan(file, bounds.get(i), bounds.get(i + 1), place, cuts));
        }
        for (SegmentScan segment : segments.subList(1, segments.size())) {
            running.add(CompletableFuture.runAsync(segment::run, FileIndex::start));
        }
        SegmentScan last = segments.get(0);
        try {
            last.run();
            add(last);
            for (int i = 1; i < segments.size() && last.endsBetweenRecords(); i++) {
                join(running.get(i - 1));
                last = segments.get(i);
                add(last);
            }
        } finally {
            running.forEach(FileIndex::await);
        }
        finish(last);
    }

    /** What a wrong cut left over is scanned in one go, then the end is checked. */
    private void finish(SegmentScan last) {
        SegmentScan end = last;
        if (end.place() != Place.ENDED && end.to() < file.size()) {
            end = new SegmentScan(file, end.stopped(), file.size(), end.place(), cuts);
            end.run();
            add(end);
        }
        if (end.place() != Place.ENDED) {
            throw new FileEnd(file).cutShort(end.stopped(), end.place());
        }
        long behind = new FileEnd(file).textBehind(end.stopped());
        if (behind < file.size()) {
            notes.add(ScanNotes.Kind.AFTER_END, behind, 0);
        }
    }

    /**
     * Places at which segments begin, and the end of the file. A record seems to begin at each of them; that it is not
     * the inside of a string or comment is known when the segment before ends there between two records.
     */
    private List<Long> bounds(long start) {
        long length = file.size() - start;
        long segments = Math.max(1, Math.min(cuts.threads(), length / cuts.segmentBytes()));
        List<Long> bounds = new ArrayList<>(List.of(start));
        byte[] window = new byte[segments == 1 ? 0 : CUT_WINDOW];
        for (int i = 1; i < segments; i++) {
            long from = start + length * i / segments;
            int read = file.read(from, window);
            Matcher record = RECORD_BEGINS.matcher(new String(window, 0, read, StandardCharsets.ISO_8859_1));
            if (record.find() && from + record.start(1) > bounds.get(bounds.size() - 1)) {
                bounds.add(from + record.start(1));
            }
        }
        bounds.add(file.size());
        return bounds;
    }

    private static void start(Runnable segment) {
        Thread thread = new Thread(segment, "index");
        thread.setDaemon(true);
        thread.start();
    }

    private static void join(CompletableFuture<Void> segment) {
        try {
            segment.join();
        } catch (CompletionException e) {
            throw e.getCause() instanceof StepException known ? known : e;
        }
    }

    /** Waits, whatever the outcome: the file may be closed only when no thread reads it. */
    private static void await(CompletableFuture<Void> segment) {
        segment.handle((done, failure) -> failure == null).join();
    }

    private void add(SegmentScan segment) {
        char[] codes = keywords.merge(segment.keywords);
        boolean same = true;
        for (int i = 0; i < codes.length; i++) {
            same &= codes[i] == i;
        }
        for (RecordBlock block : segment.blocks) {
            for (int i = 0; !same && i < block.count; i++) {
                block.keywords[i] = codes[block.keywords[i]];
            }
            if (block.count > 0) {
                blocks.add(block);
            }
        }
        notes.addAll(segment.notes);
    }
}

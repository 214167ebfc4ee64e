package runtrue.step.internal;

import java.util.ArrayList;
import java.util.List;
import runtrue.step.StepHeader;
import runtrue.step.internal.SegmentScan.Cuts;
import runtrue.step.internal.SegmentScan.Place;

/** Builds the index of a file: cuts it into segments, scans them side by side, checks the cuts and joins the results. */
final class FileIndex {
    private static final int CUT_WINDOW = 1 << 16;

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
        for (int i = 0; i + 1 < bounds.size(); i++) {
            Place place = i == 0 ? Place.BETWEEN_SECTIONS : Place.IN_DATA;
            segments.add(new SegmentScan(file, bounds.get(i), bounds.get(i + 1), place, cuts));
        }
        List<SegmentThread> threads = new ArrayList<>();
        for (SegmentScan segment : segments.subList(1, segments.size())) {
            threads.add(SegmentThread.start(segment));
        }
        SegmentScan last = segments.get(0);
        try {
            last.run();
            add(last);
            for (int i = 1; i < segments.size() && last.endsBetweenRecords(); i++) {
                threads.get(i - 1).finish();
                last = segments.get(i);
                add(last);
            }
        } finally {
            for (SegmentThread thread : threads) {
                thread.await();
            }
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
        for (int i = 1; i < segments; i++) {
            long cut = recordBehind(start + length * i / segments);
            if (cut > bounds.get(bounds.size() - 1)) {
                bounds.add(cut);
            }
        }
        bounds.add(file.size());
        return bounds;
    }

    /** The next place where {@code #digits=} follows a semicolon and blanks; -1 when there is none nearby. */
    private long recordBehind(long from) {
        byte[] window = new byte[CUT_WINDOW];
        int length = file.read(from, window);
        int sign = -1;
        boolean ended = false;
        for (int i = 0; i < length; i++) {
            byte b = window[i];
            if (b == ';') {
                ended = true;
                sign = -1;
            } else if (ended && b == '#') {
                sign = i;
                ended = false;
            } else if (sign >= 0 && b == '=' && i > sign + 1) {
                return from + sign;
            } else if (b > ' ' || b < 0) {
                ended = false;
                sign = sign >= 0 && b >= '0' && b <= '9' ? sign : -1;
            }
        }
        return -1;
    }

    private void add(SegmentScan segment) {
        char[] codes = keywords.merge(segment.keywords);
        for (RecordBlock block : segment.blocks) {
            block.codes = codes;
            if (block.count > 0) {
                blocks.add(block);
            }
        }
        notes.addAll(segment.notes);
    }
}

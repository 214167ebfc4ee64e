package runtrue.step.internal;

import java.util.Arrays;

/** The instance numbers of a file grouped by entity name, each group in file order: four bytes a record. */
final class KeywordLists {
    private final int[] starts;
    private final int[] ids;

    KeywordLists(RecordSequence records, IdTable table, int keywords) {
        int[] next = new int[keywords + 1];
        for (RecordBlock block : records.blocks()) {
            block.countKeywords(next);
        }
        for (int i = 0; i < keywords; i++) {
            next[i + 1] += next[i];
        }
        starts = next.clone();
        ids = new int[records.size()];
        for (RecordBlock block : records.blocks()) {
            block.listByKeyword(next, ids);
        }
        if (table.size() < records.size()) {
            dropRepeats(records, table);
        }
    }

    /** Puts -1 for records whose number was taken before. */
    private void dropRepeats(RecordSequence records, IdTable table) {
        int[] next = starts.clone();
        for (int ordinal = 0; ordinal < records.size(); ordinal++) {
            int place = next[records.keyword(ordinal)]++;
            if (table.ordinal(ids[place]) != ordinal) {
                ids[place] = -1;
            }
        }
    }

    int[] of(int keyword) {
        int[] group = Arrays.copyOfRange(ids, starts[keyword], starts[keyword + 1]);
        int kept = 0;
        for (int id : group) {
            if (id >= 0) {
                group[kept++] = id;
            }
        }
        return kept == group.length ? group : Arrays.copyOf(group, kept);
    }
}

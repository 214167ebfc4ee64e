package runtrue.step.internal;

import java.util.Arrays;

/** The instance numbers of a file grouped by entity name, each group in file order: four bytes a record. */
final class KeywordLists {
    private final int[] starts;
    private final int[] ids;

    KeywordLists(RecordSequence records, IdTable table, int keywords) {
        boolean repeats = table.size() < records.size();
        int[] next = new int[keywords + 1];
        for (RecordBlock block : records.blocks()) {
            for (int i = 0; i < block.count; i++) {
                next[block.keyword(i) + 1]++;
            }
        }
        for (int i = 0; i < keywords; i++) {
            next[i + 1] += next[i];
        }
        starts = next.clone();
        ids = new int[records.size()];
        for (int b = 0; b < records.blocks().length; b++) {
            RecordBlock block = records.blocks()[b];
            for (int i = 0; i < block.count; i++) {
                boolean counts = !repeats || table.ordinal(block.ids[i]) == records.firstOf(b) + i;
                ids[next[block.keyword(i)]++] = counts ? block.ids[i] : -1;
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

package runtrue.ifc.internal;

import java.util.Arrays;

/**
 * Many ints for one, immutable: an open-addressed table of keys and, for each, a run in one array of values. Values
 * keep the order in which their pairs were given.
 */
final class IntMultimap {
    private static final int[] NONE = {};

    private final int[] keys;
    /** Where the run of the key in the same slot starts; the run ends where {@code ends} says. */
    private final int[] starts;

    private final int[] ends;
    private final int[] values;

    /** Pairs: key at the same index as its value. Instance numbers are above 0, so 0 marks a free slot. */
    IntMultimap(IntList pairKeys, IntList pairValues) {
        int pairs = pairKeys.size();
        int capacity = Math.max(4, Integer.highestOneBit(Math.max(1, pairs)) << 2);
        keys = new int[capacity];
        starts = new int[capacity];
        ends = new int[capacity];
        values = new int[pairs];
        int[] slots = new int[pairs];
        for (int i = 0; i < pairs; i++) {
            slots[i] = claim(pairKeys.get(i));
            ends[slots[i]]++;
        }
        int next = 0;
        for (int slot = 0; slot < capacity; slot++) {
            starts[slot] = next;
            next += ends[slot];
            ends[slot] = starts[slot];
        }
        for (int i = 0; i < pairs; i++) {
            values[ends[slots[i]]++] = pairValues.get(i);
        }
    }

    /** The values of a key in the order given; empty when there is none. */
    int[] get(int key) {
        int slot = slotOf(key);
        return keys[slot] == 0 ? NONE : Arrays.copyOfRange(values, starts[slot], ends[slot]);
    }

    /** The first value of a key, 0 when there is none. */
    int first(int key) {
        int slot = slotOf(key);
        return keys[slot] == 0 ? 0 : values[starts[slot]];
    }

    private int claim(int key) {
        int slot = slotOf(key);
        keys[slot] = key;
        return slot;
    }

    private int slotOf(int key) {
        int mask = keys.length - 1;
        int slot = ((key * 0x9E3779B9) >>> 7) & mask;
        while (keys[slot] != 0 && keys[slot] != key) {
            slot = (slot + 1) & mask;
        }
        return slot;
    }
}

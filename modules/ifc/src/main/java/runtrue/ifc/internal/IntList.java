package runtrue.ifc.internal;

import java.util.Arrays;

/** A growing list of ints without boxing: relations of a large model are counted in hundreds of thousands. */
final class IntList {
    private int[] items;
    private int size;

    IntList(int capacity) {
        items = new int[Math.max(4, capacity)];
    }

    void add(int item) {
        if (size == items.length) {
            items = Arrays.copyOf(items, size + (size >> 1) + 4);
        }
        items[size++] = item;
    }

    int get(int index) {
        return items[index];
    }

    int size() {
        return size;
    }

    void clear() {
        size = 0;
    }

    int[] toArray() {
        return Arrays.copyOf(items, size);
    }
}

package runtrue.step.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Numbers the entity names of a file in the order in which they first occur. The scan asks by a 64-bit hash of the name
 * in upper case; two names of one file with the same hash are not expected in the life of the program (some hundred
 * names: a chance of less than one in 10^14).
 */
final class KeywordTable {
    static final int NONE = -1;
    static final int MOST = 1 << 16;

    private long[] hashes = new long[1024];
    private char[] codes = new char[1024];
    private final List<String> names = new ArrayList<>();

    /** Number of a name, or {@link #NONE} when it is new. */
    int find(long hash) {
        long[] table = hashes;
        int mask = table.length - 1;
        int slot = slot(hash, mask);
        while (table[slot] != hash) {
            if (table[slot] == 0) {
                return NONE;
            }
            slot = (slot + 1) & mask;
        }
        return codes[slot];
    }

    int add(long hash, String name) {
        if (names.size() * 2 >= hashes.length) {
            grow();
        }
        put(hash, (char) names.size());
        names.add(name);
        return names.size() - 1;
    }

    int size() {
        return names.size();
    }

    String name(int code) {
        return names.get(code);
    }

    Map<String, Integer> byName() {
        Map<String, Integer> map = new HashMap<>();
        for (int i = 0; i < names.size(); i++) {
            map.put(names.get(i), i);
        }
        return map;
    }

    /** Takes in the names of another table; answers the number here for each number there. */
    char[] merge(KeywordTable other) {
        char[] here = new char[other.size()];
        for (int slot = 0; slot < other.hashes.length; slot++) {
            if (other.hashes[slot] != 0) {
                int code = find(other.hashes[slot]);
                int there = other.codes[slot];
                here[there] = (char) (code == NONE ? add(other.hashes[slot], other.name(there)) : code);
            }
        }
        return here;
    }

    private void grow() {
        long[] oldHashes = hashes;
        char[] oldCodes = codes;
        hashes = new long[oldHashes.length * 2];
        codes = Arrays.copyOf(oldCodes, hashes.length);
        for (int i = 0; i < oldHashes.length; i++) {
            if (oldHashes[i] != 0) {
                put(oldHashes[i], oldCodes[i]);
            }
        }
    }

    private void put(long hash, char code) {
        int mask = hashes.length - 1;
        int slot = slot(hash, mask);
        while (hashes[slot] != 0) {
            slot = (slot + 1) & mask;
        }
        hashes[slot] = hash;
        codes[slot] = code;
    }

    private static int slot(long hash, int mask) {
        return (int) (hash >>> 40) & mask;
    }
}

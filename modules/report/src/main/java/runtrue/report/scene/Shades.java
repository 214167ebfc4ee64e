package runtrue.report.scene;

import java.util.Arrays;

/**
 * Brings the shades along the edges of lines together until a palette holds them all: a picture with a palette is a third
 * in size and time of one without.
 */
final class Shades {
    private static final int MOST = 256;

    /** How many low bits of each part of a colour are overlooked, in turn. */
    private static final int[] OVERLOOKED = {0, 2, 3, 4};

    private final int[] keys = new int[4 * MOST];
    private final int[] shades = new int[4 * MOST];
    private final int mask;
    private int count;

    private Shades(int overlooked) {
        int part = (0xFF << overlooked) & 0xFF;
        mask = (part << 16) | (part << 8) | part;
        Arrays.fill(keys, -1);
    }

    /**
     * Replaces each pixel by the first one met that is nearly of its colour; where even that leaves too many, as in a
     * photograph, nothing is changed.
     *
     * @param pixels red, green and blue of 8 bits each
     */
    static void join(int[] pixels) {
        for (int overlooked : OVERLOOKED) {
            Shades shades = new Shades(overlooked);
            if (shades.hold(pixels)) {
                shades.replace(pixels);
                return;
            }
        }
    }

    private void replace(int[] pixels) {
        int last = -1;
        int shade = 0;
        for (int i = 0; i < pixels.length; i++) {
            int colour = pixels[i] & 0xFFFFFF;
            if (colour != last) {
                last = colour;
                shade = shades[slot(colour & mask)];
            }
            pixels[i] = shade;
        }
    }

    private boolean hold(int[] pixels) {
        int last = -1;
        for (int pixel : pixels) {
            int colour = pixel & 0xFFFFFF;
            if (colour != last) {
                last = colour;
                int slot = slot(colour & mask);
                if (keys[slot] < 0) {
                    if (count == MOST) {
                        return false;
                    }
                    count++;
                    keys[slot] = colour & mask;
                    shades[slot] = colour;
                }
            }
        }
        return true;
    }

    /** Where the colour is, or where it belongs; a quarter of the slots is ever taken. */
    private int slot(int colour) {
        int slot = ((colour * 0x9E3779B1) >>> 16) % keys.length;
        while (keys[slot] >= 0 && keys[slot] != colour) {
            slot = (slot + 1) % keys.length;
        }
        return slot;
    }
}

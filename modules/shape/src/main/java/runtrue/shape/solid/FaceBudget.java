package runtrue.shape.solid;

import runtrue.shape.ShapeException;

/** Counts the faces of one element, so that an absurd one ends with a reason and not with the memory. */
final class FaceBudget {
    static final int MOST_FACES = 2_000_000;

    private long used;

    void take(long faces) {
        used += faces;
        if (used > MOST_FACES) {
            throw new ShapeException("The element has more than " + MOST_FACES
                    + " faces, which is more than is read; export it with less detail.");
        }
    }
}

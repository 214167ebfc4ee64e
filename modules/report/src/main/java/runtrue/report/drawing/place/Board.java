package runtrue.report.drawing.place;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What is taken on the paper. Things are offered in the order of their weight; what does not find room is not drawn, so
 * nothing is ever printed over a label.
 */
public final class Board {
    /** Side of the squares in which neighbours are looked up, about the size of a label. */
    private static final double CELL = 12;

    private final Box area;
    private final Map<Long, List<Tilted>> solid = new HashMap<>();
    private final Map<Long, List<Tilted>> thin = new HashMap<>();

    /** An empty board; nothing finds room outside of {@code area}. */
    public Board(Box area) {
        this.area = area;
    }

    /** Whether it lies on the board and on nothing that is taken. */
    public boolean free(Tilted place) {
        return freeForLine(place) && clear(thin, place);
    }

    /** The same for a thin line, which may cross other thin lines. */
    public boolean freeForLine(Tilted place) {
        Box bounds = place.bounds();
        if (bounds.left() < area.left()
                || bounds.right() > area.right()
                || bounds.top() < area.top()
                || bounds.bottom() > area.bottom()) {
            return false;
        }
        return clear(solid, place);
    }

    private boolean clear(Map<Long, List<Tilted>> taken, Tilted place) {
        boolean[] hit = new boolean[1];
        cells(
                place.bounds(),
                cell -> hit[0] |= taken.getOrDefault(cell, List.of()).stream().anyMatch(place::overlaps));
        return !hit[0];
    }

    /** Takes a place whatever lies there. */
    public void take(Tilted place) {
        add(solid, place);
    }

    /** Takes a place for a thin line: labels keep off it, other thin lines may cross it. */
    public void takeForLine(Tilted place) {
        add(thin, place);
    }

    private void add(Map<Long, List<Tilted>> taken, Tilted place) {
        cells(
                place.bounds(),
                cell -> taken.computeIfAbsent(cell, c -> new ArrayList<>()).add(place));
    }

    /** Takes the first place of those given that is free. */
    public Optional<Tilted> first(List<Tilted> places) {
        for (Tilted place : places) {
            if (free(place)) {
                take(place);
                return Optional.of(place);
            }
        }
        return Optional.empty();
    }

    private void cells(Box bounds, Consumer<Long> visit) {
        int left = (int) Math.floor(Math.max(bounds.left(), area.left()) / CELL);
        int right = (int) Math.floor(Math.min(bounds.right(), area.right()) / CELL);
        int top = (int) Math.floor(Math.max(bounds.top(), area.top()) / CELL);
        int bottom = (int) Math.floor(Math.min(bounds.bottom(), area.bottom()) / CELL);
        for (int x = left; x <= right; x++) {
            for (int y = top; y <= bottom; y++) {
                visit.accept((long) x << 32 | (y & 0xffffffffL));
            }
        }
    }
}

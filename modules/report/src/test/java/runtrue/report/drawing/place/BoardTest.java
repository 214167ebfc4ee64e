package runtrue.report.drawing.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class BoardTest {
    private static final Box AREA = new Box(20, 10, 300, 250);

    /** Judged by the JDK's area arithmetic, which knows nothing of the board's own test. */
    @Property(tries = 60)
    void whatFindsRoomLiesOnTheBoardAndOverlapsNothing(@ForAll("offers") List<Tilted> offers) {
        Board board = new Board(AREA);
        List<Tilted> placed = new ArrayList<>();
        offers.forEach(o -> board.first(List.of(o)).ifPresent(placed::add));
        for (int i = 0; i < placed.size(); i++) {
            assertThat(placed.get(i).corners()).allMatch(AREA::contains);
            for (int j = 0; j < i; j++) {
                assertThat(shared(placed.get(i), placed.get(j))).isLessThan(1e-6);
            }
        }
    }

    @Property(tries = 300)
    void whatIsRefusedLeavesTheBoardOrOverlaps(@ForAll("offer") Tilted first, @ForAll("offer") Tilted second) {
        Board board = new Board(AREA);
        board.take(first);
        if (!board.free(second)) {
            boolean leaves = !second.corners().stream().allMatch(AREA::contains);
            assertThat(leaves || shared(first, second) > 0).isTrue();
        }
    }

    @Test
    void thinLinesMayCrossEachOtherButNoLabelStandsOnThem() {
        Board board = new Board(AREA);
        board.takeForLine(Tilted.around(new Vec(50, 50), new Vec(150, 50), 1));
        Tilted across = Tilted.around(new Vec(100, 20), new Vec(100, 80), 1);
        assertThat(board.freeForLine(across)).isTrue();
        assertThat(board.free(across)).isFalse();
    }

    @Provide
    Arbitrary<List<Tilted>> offers() {
        return offer().list().ofMinSize(2).ofMaxSize(60);
    }

    @Provide
    Arbitrary<Tilted> offer() {
        return Combinators.combine(
                        Arbitraries.doubles().between(10, 310),
                        Arbitraries.doubles().between(0, 260),
                        Arbitraries.doubles().between(0, 6.28),
                        Arbitraries.doubles().between(1, 60),
                        Arbitraries.doubles().between(1, 6))
                .as((x, y, angle, length, height) ->
                        new Tilted(new Vec(x, y), new Vec(Math.cos(angle), Math.sin(angle)), length, height));
    }

    /** Square millimetres. */
    private static double shared(Tilted a, Tilted b) {
        Area area = new Area(shape(a));
        area.intersect(new Area(shape(b)));
        double[] point = new double[6];
        double twice = 0;
        Vec start = new Vec(0, 0);
        Vec last = start;
        for (var steps = area.getPathIterator(null); !steps.isDone(); steps.next()) {
            int kind = steps.currentSegment(point);
            Vec next = kind == java.awt.geom.PathIterator.SEG_CLOSE ? start : new Vec(point[0], point[1]);
            if (kind == java.awt.geom.PathIterator.SEG_MOVETO) {
                start = next;
            } else {
                twice += last.cross(next);
            }
            last = next;
        }
        return Math.abs(twice) / 2;
    }

    private static Path2D shape(Tilted box) {
        Path2D path = new Path2D.Double();
        List<Vec> corners = box.corners();
        path.moveTo(corners.get(0).x(), corners.get(0).y());
        corners.stream().skip(1).forEach(c -> path.lineTo(c.x(), c.y()));
        path.closePath();
        return path;
    }
}

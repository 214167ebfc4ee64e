package runtrue.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** A body by curved faces keeps its size and stays closed when it is moved, or written in another unit. */
class AdvancedInvarianceTest {
    private static final String PLACED = "#15=IFCLOCALPLACEMENT($,#11);";

    /** Sizes from a seed, in millimetres. */
    private static String body(BrepText t, int kind, long seed) {
        Random random = new Random(seed);
        double radius = 200 + 3000 * random.nextDouble();
        double height = 100 + 6000 * random.nextDouble();
        return switch (kind) {
            case 0 -> AdvancedBodies.seamed(t, radius, height);
            case 1 -> AdvancedBodies.seamless(t, radius, height);
            case 2 -> AdvancedBodies.halved(t, radius, height);
            case 3 -> AdvancedBodies.tube(t, radius, 0.8 * radius, height);
            case 4 -> AdvancedBodies.dome(t, radius, random.nextBoolean());
            case 5 -> AdvancedBodies.ball(t, radius, random.nextBoolean());
            case 6 -> AdvancedBodies.torus(t, 2 * radius, 0.3 * radius);
            default -> AdvancedBodies.barrel(t, 2 * radius, 1.9 * radius, height);
        };
    }

    private static void same(Shape a, Shape b) {
        assertThat(a).isInstanceOf(Shape.Body.class);
        assertThat(b).isInstanceOf(Shape.Body.class);
        assertThat(((Shape.Body) a).closed()).isTrue();
        assertThat(((Shape.Body) b).closed()).isTrue();
        double volume = UpwardPlanes.volume(((Shape.Body) a).faces());
        assertThat(volume).isPositive();
        // Diagonals of even quadrangles fall either way by rounding.
        assertThat(UpwardPlanes.volume(((Shape.Body) b).faces())).isEqualTo(volume, within(1e-4 * volume));
    }

    @Property(tries = 40)
    void in_another_unit(@ForAll @IntRange(max = 7) int kind, @ForAll long seed) {
        same(
                ModelText.read(body(new BrepText(1), kind, seed)),
                ModelText.readInMetres(PLACED, body(new BrepText(0.001), kind, seed)));
    }

    @Property(tries = 40)
    void in_another_place(@ForAll @IntRange(max = 7) int kind, @ForAll long seed) {
        Random random = new Random(seed);
        String moved = "#15=IFCLOCALPLACEMENT($,#16);#16=IFCAXIS2PLACEMENT3D(#17,#18,#19);#17=IFCCARTESIANPOINT(("
                + triple(random, 100) + "));#18=IFCDIRECTION((" + triple(random, 1) + "));#19=IFCDIRECTION(("
                + triple(random, 1) + "));";
        String body = body(new BrepText(0.001), kind, seed);
        same(ModelText.readInMetres(PLACED, body), ModelText.readInMetres(moved, body));
    }

    private static String triple(Random random, double size) {
        BrepText t = new BrepText(1);
        return t.real((random.nextDouble() - 0.5) * size) + "," + t.real((random.nextDouble() - 0.5) * size) + ","
                + t.real((random.nextDouble() - 0.5) * size);
    }
}

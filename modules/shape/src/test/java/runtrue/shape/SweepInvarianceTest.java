package runtrue.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** A body does not change its size when it is moved, or written in another unit. */
class SweepInvarianceTest {
    private static final String PLACED = "#15=IFCLOCALPLACEMENT($,#11);";

    /** Swept bodies with a length unit of 1/u metres and an angle unit of 1/a radians; sizes from a seed. */
    private static String sweep(int kind, long seed, double u, double a) {
        Random random = new Random(seed);
        String r = real((0.02 + 0.2 * random.nextDouble()) * u);
        String w = real((0.1 + random.nextDouble()) * u);
        String way = "#221=IFCPOLYLINE((#10,#231,#232));#231=IFCCARTESIANPOINT((" + real((3 + random.nextDouble()) * u)
                + ",0.,0.));#232=IFCCARTESIANPOINT((" + real(6 * random.nextDouble() * u) + "," + real(4 * u) + ","
                + real((random.nextDouble() - 0.5) * u) + "));";
        String profile = "#211=IFCRECTANGLEPROFILEDEF(.AREA.,$,#215," + w + "," + r + ");"
                + "#215=IFCAXIS2PLACEMENT2D(#216,$);#216=IFCCARTESIANPOINT((" + real(2 * u) + ",0.));";
        String angle = real((0.3 + 5 * random.nextDouble()) * a);
        return switch (kind) {
            case 0 -> "#200=IFCSWEPTDISKSOLID(#221," + r + ",$,$,$);" + way;
            case 1 ->
                "#200=IFCFIXEDREFERENCESWEPTAREASOLID(#211,#11,#221,$,$,#12);" + way + profile.replace("#215,", "$,");
            case 2 ->
                "#200=IFCREVOLVEDAREASOLID(#211,#11,#213," + angle + ");" + profile
                        + "#213=IFCAXIS1PLACEMENT(#10,#214);#214=IFCDIRECTION((0.,1.,0.));";
            case 3 ->
                "#200=IFCEXTRUDEDAREASOLIDTAPERED(#211,#11,#12," + w + ",#212);"
                        + "#211=IFCCIRCLEPROFILEDEF(.AREA.,$,$," + w + ");#212=IFCCIRCLEPROFILEDEF(.AREA.,$,$," + r
                        + ");";
            case 4 -> "#200=IFCSPHERE(#11," + w + ");";
            default ->
                "#200=IFCSWEPTDISKSOLID(#221," + r + ",$,0.," + angle + ");#221=IFCCIRCLE(#11," + real(2 * u) + ");";
        };
    }

    private static String real(double value) {
        return String.format(Locale.ROOT, "%.12f", value);
    }

    private static Shape.Body body(Shape shape) {
        assertThat(shape).isInstanceOf(Shape.Body.class);
        assertThat(((Shape.Body) shape).closed()).isTrue();
        return (Shape.Body) shape;
    }

    private static void same(Shape.Body a, Shape.Body b) {
        double volume = UpwardPlanes.volume(a.faces());
        assertThat(volume).isPositive();
        assertThat(UpwardPlanes.volume(b.faces())).isEqualTo(volume, within(1e-6 * volume));
        assertThat(area(b)).isEqualTo(area(a), within(1e-6 * area(a)));
    }

    private static double area(Shape.Body body) {
        return body.faces().stream().mapToDouble(UpwardPlanes::area).sum();
    }

    @Property(tries = 60)
    void in_another_unit(@ForAll @IntRange(max = 5) int kind, @ForAll long seed) {
        same(
                body(ModelText.read(sweep(kind, seed, 1000, 180 / Math.PI))),
                body(ModelText.readInMetres(PLACED, sweep(kind, seed, 1, 1))));
    }

    @Property(tries = 60)
    void in_another_place(@ForAll @IntRange(max = 5) int kind, @ForAll long seed) {
        Random random = new Random(seed);
        String moved = "#15=IFCLOCALPLACEMENT($,#16);#16=IFCAXIS2PLACEMENT3D(#17,#18,#19);#17=IFCCARTESIANPOINT(("
                + triple(random, 100) + "));#18=IFCDIRECTION((" + triple(random, 1) + "));#19=IFCDIRECTION(("
                + triple(random, 1) + "));";
        String sweep = sweep(kind, seed, 1, 1);
        same(body(ModelText.readInMetres(PLACED, sweep)), body(ModelText.readInMetres(moved, sweep)));
    }

    private static String triple(Random random, double size) {
        return real((random.nextDouble() - 0.5) * size) + "," + real((random.nextDouble() - 0.5) * size) + ","
                + real((random.nextDouble() - 0.5) * size);
    }
}

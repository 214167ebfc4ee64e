package runtrue.roof.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.Interval;
import runtrue.roof.SetOut;
import runtrue.roof.SetOutChoice;
import runtrue.roof.Sheet;

/** Ways to set a plane out, so that people see what another verge or another width of sheet would give. */
public final class SetOutChoices {
    private SetOutChoices() {}

    /**
     * One for each way, in the order of {@link SetOut}; first in the width that the sheets are laid out in, then in each
     * other one.
     *
     * @param outline in u, v, metres
     * @param coverWidth that the sheets are laid out in, metres, more than 0
     * @param otherCovers that the profile is also rolled in, metres, more than 0
     */
    public static List<SetOutChoice> of(
            Polygon outline, double coverWidth, SetOut chosen, Collection<Double> otherCovers) {
        List<SetOutChoice> choices = new ArrayList<>();
        for (SetOut setOut : SetOut.values()) {
            choices.add(choice(outline, coverWidth, setOut, setOut == chosen));
        }
        for (double cover : otherCovers) {
            for (SetOut setOut : SetOut.values()) {
                choices.add(choice(outline, cover, setOut, false));
            }
        }
        return choices;
    }

    private static SetOutChoice choice(Polygon outline, double coverWidth, SetOut setOut, boolean chosen) {
        List<Interval> strips = new ArrayList<>(SheetLayout.strips(outline.getEnvelopeInternal(), coverWidth, setOut));
        strips.sort((a, b) -> Double.compare(a.from(), b.from()));
        List<Sheet> sheets = SheetLayout.of(outline, coverWidth, setOut);
        double length = sheets.stream().mapToDouble(Sheet::blank).sum();
        return new SetOutChoice(
                setOut,
                coverWidth,
                strips.size(),
                strips.get(0).length(),
                strips.get(strips.size() - 1).length(),
                sheets.size(),
                length,
                length * coverWidth - outline.getArea(),
                chosen);
    }
}

package runtrue.roof.sheet;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.Interval;
import runtrue.roof.SetOut;
import runtrue.roof.SetOutChoice;
import runtrue.roof.Sheet;

/** Ways to set a plane out, so that people see what another verge would give. */
public final class SetOutChoices {
    private SetOutChoices() {}

    /**
     * One for each way, in the order of {@link SetOut}.
     *
     * @param outline in u, v, metres
     * @param coverWidth metres, more than 0
     */
    public static List<SetOutChoice> of(Polygon outline, double coverWidth, SetOut chosen) {
        List<SetOutChoice> choices = new ArrayList<>();
        for (SetOut setOut : SetOut.values()) {
            List<Interval> strips =
                    new ArrayList<>(SheetLayout.strips(outline.getEnvelopeInternal(), coverWidth, setOut));
            strips.sort((a, b) -> Double.compare(a.from(), b.from()));
            List<Sheet> sheets = SheetLayout.of(outline, coverWidth, setOut);
            double length = sheets.stream().mapToDouble(Sheet::blank).sum();
            choices.add(new SetOutChoice(
                    setOut,
                    strips.size(),
                    strips.get(0).length(),
                    strips.get(strips.size() - 1).length(),
                    sheets.size(),
                    length,
                    length * coverWidth - outline.getArea(),
                    setOut == chosen));
        }
        return choices;
    }
}

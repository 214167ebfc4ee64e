package runtrue.report.scene;

import java.util.List;
import java.util.Optional;
import runtrue.result.ElementRef;
import runtrue.result.Point;

/**
 * Where to look.
 *
 * @param place to be marked; absent where a finding has none
 * @param plane id of the plane that it lies on; empty for none
 * @param selected elements that the finding is about
 * @param hidden elements that stand before them: the roof itself, where what carries it is at fault
 */
public record View(
        Camera camera, Optional<Point> place, String plane, List<ElementRef> selected, List<ElementRef> hidden) {
    public View {
        selected = List.copyOf(selected);
        hidden = List.copyOf(hidden);
    }
}

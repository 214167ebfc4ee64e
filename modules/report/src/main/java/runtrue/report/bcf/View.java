package runtrue.report.bcf;

import java.util.List;
import java.util.Optional;
import runtrue.result.ElementRef;
import runtrue.result.Point;

/**
 * Where to look.
 *
 * @param id of the viewpoint
 * @param place to be marked; absent where a finding has none
 * @param plane id of the plane that it lies on; empty for none
 * @param selected elements that the finding is about
 * @param hidden elements that stand before them: the roof itself, where what carries it is at fault
 */
record View(
        String id,
        Camera camera,
        Optional<Point> place,
        String plane,
        List<ElementRef> selected,
        List<ElementRef> hidden) {
    /** The names that 2.1 prescribes for the first viewpoint of a topic; 3.0 lets one choose. */
    static final String FILE = "viewpoint.bcfv";

    static final String PICTURE = "snapshot.png";

    View {
        selected = List.copyOf(selected);
        hidden = List.copyOf(hidden);
    }
}

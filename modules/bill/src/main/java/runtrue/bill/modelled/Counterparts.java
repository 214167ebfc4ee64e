package runtrue.bill.modelled;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runtrue.bill.Bill;
import runtrue.bill.BillLine;
import runtrue.rules.buildup.BuildUp;
import runtrue.rules.buildup.BuildUpItem;
import runtrue.rules.buildup.ItemKind;

/**
 * Which of the bill's items a modelled kind is compared with. The first word of an item's name says what it is and must be
 * among the kind's words, so that a clip is no screw of a clip; of such items those count that share most words with the kind.
 */
final class Counterparts {
    private static final int SHORTEST_WORD = 4;

    private final Bill bill;
    private final BuildUp buildUp;

    Counterparts(Bill bill, BuildUp buildUp) {
        this.bill = bill;
        this.buildUp = buildUp;
    }

    /** Items counted in pieces. */
    List<BuildUpItem> ofFasteners(String kind) {
        Set<String> words = words(kind);
        List<BuildUpItem> counted = buildUp.items().stream()
                .filter(i -> i.unit().symbol().equals("pcs"))
                .toList();
        long most = counted.stream().mapToLong(i -> shared(words, i)).max().orElse(0);
        return most == 0
                ? List.of()
                : counted.stream().filter(i -> shared(words, i) == most).toList();
    }

    /** The roof's own sheets. */
    List<BuildUpItem> ofSheets() {
        return buildUp.items().stream()
                .filter(i -> i.kind() == ItemKind.SHEET && i.coverWidth().isEmpty())
                .toList();
    }

    private static long shared(Set<String> words, BuildUpItem item) {
        String first = item.name().strip().split("[^\\p{L}]+", 2)[0];
        Set<String> own = words(item.id() + " " + item.name());
        return words.containsAll(words(first))
                ? own.stream().filter(words::contains).count()
                : 0;
    }

    /** In lower case, plurals and short words left out. */
    private static Set<String> words(String text) {
        return Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
                .map(w -> w.endsWith("s") ? w.substring(0, w.length() - 1) : w)
                .filter(w -> w.length() >= SHORTEST_WORD)
                .collect(Collectors.toSet());
    }

    /** Pieces, or sheets, that the bill takes of the items from one plane. */
    double derived(List<BuildUpItem> items, String plane) {
        Set<String> ids = items.stream().map(BuildUpItem::id).collect(Collectors.toSet());
        return bill.lines().stream()
                .filter(line -> ids.contains(line.item()))
                .flatMap(line -> taken(line, plane))
                .mapToDouble(d -> d)
                .sum();
    }

    private static Stream<Double> taken(BillLine line, String plane) {
        boolean sheets = !line.unit().equals("pcs");
        return line.parts().stream()
                .filter(part -> part.plane().equals(plane))
                .map(part -> sheets ? (double) part.count() : part.net());
    }
}

package runtrue.rules.buildup;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How an item is bought, which says how its quantity becomes an order. */
public enum ItemKind {
    /** By number. */
    PIECE,
    /** By the metre, or in stock lengths that are lapped. */
    LENGTH,
    /** By the square metre. */
    AREA,
    /** In rolls of one width and length, lapped at sides and ends. */
    ROLL,
    /** In packs that hold a number, a length or an area. */
    PACK,
    /** In strips of one cover width, each cut to length. */
    SHEET;

    static Optional<ItemKind> find(String text) {
        return Arrays.stream(values()).filter(kind -> kind.label().equals(text)).findFirst();
    }

    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }
}

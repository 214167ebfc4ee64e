package runtrue.report.setout;

import java.util.Locale;

/**
 * A layer of the drawing. Release 12 allows capitals, digits, hyphens and underscores, 31 of them.
 *
 * @param colour number of the format's palette: 1 red, 3 green, 4 cyan, 5 blue, 6 magenta, 7 black on white, 8 grey, 30
 *     orange
 */
record Layer(String name, int colour) {
    static final Layer PLANES = new Layer("PLANES", 7);
    static final Layer PLANE_NAMES = new Layer("PLANE-NAMES", 7);
    static final Layer FALLS = new Layer("FALLS", 4);
    static final Layer PENETRATIONS = new Layer("PENETRATIONS", 6);
    static final Layer SHEETS = new Layer("SHEETS", 8);
    static final Layer SHEET_LENGTHS = new Layer("SHEET-LENGTHS", 8);
    static final Layer SUPPORTS = new Layer("SUPPORTS", 3);
    static final Layer WIND_ZONES = new Layer("WIND-ZONES", 5);
    static final Layer GRID = new Layer("GRID", 8);
    static final Layer GRID_NAMES = new Layer("GRID-NAMES", 8);
    static final Layer FINDINGS = new Layer("FINDINGS", 30);

    /** For edges of one kind, for example {@code EDGE-BOX-GUTTER}. */
    static Layer edge(String kind) {
        String name = kind.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]+", "-");
        return new Layer("EDGE-" + name.substring(0, Math.min(26, name.length())), 7);
    }
}

package runtrue.ifc.select;

import java.util.regex.Pattern;

/**
 * Words for roofs and purlins in the languages that models come in. Common usage, no source. A word counts as such, as
 * the start or end of a compound where the language makes them, and after a lower-case letter when it is capitalised
 * ("ConcreteRoof"); "waterproof" is no roof and "Panneau" no panne.
 */
final class Names {
    private static final String ROOF_WORDS = "roof(?:s|ing|slab|deck|panel|sheet|plate)?"
            // French, Spanish, Portuguese, Italian, Scandinavian, Croatian.
            + "|toits?|couverture|techos?|tejados?|cubiertas?|cobertura|telhados?|telhas?|tett[oi]|copertur[ae]"
            + "|fald[ae]|tak|krov(?:na)?";

    private static final String ROOF_STARTS = "bedachung|dak|tak(?:panel|plate|plåt|tegel|flat|yta|skiva|element|platt"
            + "|dekke)|tag(?:flade|plade|dæk|beklædning|element)|katto|vesikat|katus|toiture|acoperi[sș]|stře[cš]"
            + "|stre(?:ch|šn)|tető|çatı";

    private static final String ROOF_ENDS = "dak|katto|(?<=\\p{L}{3})tak";

    /** Where they occur, the rest of the word does not matter. */
    private static final String ROOF_PIECES = "dach|στέγη|крыш|кровл|кровель|屋根|屋顶|屋頂|屋面|지붕";

    /** What has a roof word in its name and is no roof surface: equipment, edges, framing, the storey below. */
    private static final String NO_ROOF_SURFACE = "roof ?top|gutter|drain|downpipe|window|sky ?light|roof ?light|hatch"
            + "|(?<!\\p{L})fans?(?!\\p{L})|(?<!\\p{L})vent|ladder|walkway|truss|rafter|purlin|batten|beam|framing"
            + "|anchor|ceiling|roof terrace|rinne|fenster|luke|dach(?:boden|geschoss|terrasse|raum|stuhl|latte)|balken"
            + "|ablauf|kuppel|gully|einlauf|gouttière|chéneau|fenêtre|lucarne|charpente|canalón|canaleta|ventana|calha"
            + "|claraboia|grondaia|lucernario|innertak|undertak|takränna|takfönster|takrenne|takvindu|dakgoot|dakraam"
            + "|dakkapel|rynna|okno|okap|žlab";

    private static final String PURLIN_WORDS = "purlins?|battens?|pannes?|liteaux?|arcarecc(?:io|i)|terzer[ae]|correas?"
            + "|ter[çc]as?|madres?|(?:tak)?ås(?:ar|er|e)?|pane de acoperi[sș]|aşık|прогоны?";

    private static final String PURLIN_STARTS = "dachlatt|gording|płatew|płatwi|vaznic|väznic|szelemen|kattoor[sr]";

    private static final String PURLIN_PIECES = "pfetten?|母屋|檩";

    /** The words first and the exceptions after: most names hold no roof word and are done with at once. */
    static final Pattern ROOF = pattern("^(?=.*?(?<word>" + word(ROOF_WORDS) + "|" + start(ROOF_STARTS) + "|"
            + end(ROOF_ENDS) + "|" + capitalised("Roof(?:s|ing)?") + "|\\p{L}*(?:" + ROOF_PIECES + ")\\p{L}*))(?!.*(?:"
            + NO_ROOF_SURFACE + "))");

    static final Pattern PURLIN = pattern("(?<word>" + word(PURLIN_WORDS) + "|" + start(PURLIN_STARTS) + "|"
            + capitalised("Purlins?") + "|" + PURLIN_PIECES + ")");

    private Names() {}

    private static Pattern pattern(String regex) {
        return Pattern.compile(regex, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.DOTALL);
    }

    /** Between characters that are no letters. */
    private static String word(String regex) {
        return "(?<!\\p{L})(?:" + regex + ")(?!\\p{L})";
    }

    /** The start of a word, whatever follows. */
    private static String start(String regex) {
        return "(?<!\\p{L})(?:" + regex + ")\\p{L}*";
    }

    private static String end(String regex) {
        return "(?:" + regex + ")(?!\\p{L})";
    }

    /** After a lower-case letter, as in SteelPurlin. */
    private static String capitalised(String regex) {
        return "(?-i:(?<=\\p{Ll})(?:" + regex + ")(?!\\p{Ll}))";
    }
}

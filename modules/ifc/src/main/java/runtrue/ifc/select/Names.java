package runtrue.ifc.select;

import java.util.regex.Pattern;

/**
 * Words for roofs and purlins in the languages that models come in. Common usage, no source. A word counts as such,
 * as the start or end of a compound where the language makes them, and after a lower-case letter when it is
 * capitalised ("ConcreteRoof"); "waterproof" is no roof and "Panneau" no panne.
 */
final class Names {
    /** What has a roof word in its name and is no roof surface: equipment, edges, framing, the storey below. */
    private static final String NO_ROOF_SURFACE = "roof ?top|gutter|drain|downpipe|window|sky ?light|roof ?light|hatch"
            + "|(?<!\\p{L})fans?(?!\\p{L})|(?<!\\p{L})vent|ladder|walkway|truss|rafter|purlin|batten|beam|framing|anchor|ceiling|roof terrace"
            + "|rinne|fenster|luke|dach(?:boden|geschoss|terrasse|raum|stuhl|latte)|balken|ablauf|kuppel|gully|einlauf"
            + "|gouttière|chéneau|fenêtre|lucarne|charpente|canalón|canaleta|ventana|calha|claraboia|grondaia"
            + "|lucernario|innertak|undertak|takränna|takfönster|takrenne|takvindu|dakgoot|dakraam|dakkapel|rynna|okno|okap|žlab";

    static final Pattern ROOF = pattern("(?!.*(?:" + NO_ROOF_SURFACE + "))"
            + ".*?(?<word>"
            + word("roof(?:s|ing|slab|deck|panel|sheet|plate)?")
            + "|(?-i:(?<=\\p{Ll})Roof(?:s|ing)?(?!\\p{Ll}))"
            // German, Polish, Dutch, Scandinavian and Finnish compounds.
            + "|\\p{L}*dach\\p{L}*"
            + "|" + start("dak") + "|\\p{L}+dak(?!\\p{L})"
            + "|" + word("tak") + "|" + start("tak(?:panel|plate|plåt|tegel|flat|yta|skiva|element|platt|dekke)")
            + "|\\p{L}{3,}tak(?!\\p{L})|" + start("tag(?:flade|plade|dæk|beklædning|element)")
            + "|" + start("katto") + "|\\p{L}+katto(?!\\p{L})|" + start("vesikat") + "|" + start("katus")
            // Romance languages.
            + "|" + word("toits?") + "|" + start("toiture") + "|" + word("couverture")
            + "|" + word("techos?") + "|" + word("tejados?") + "|" + word("cubiertas?")
            + "|" + word("cobertura") + "|" + word("telhados?") + "|" + word("telhas?")
            + "|" + word("tett[oi]") + "|" + word("copertur[ae]") + "|" + word("fald[ae]") + "|" + start("acoperi[sș]")
            // Slavic, Hungarian, Turkish, Greek, Russian, East Asian.
            + "|" + start("stře[cš]") + "|" + start("stre(?:cha|ch[ay]|šn)") + "|" + word("krov(?:na)?")
            + "|" + start("tető") + "|" + start("çatı") + "|στέγη|крыш|кровл|кровель|屋根|屋顶|屋頂|屋面|지붕)");

    static final Pattern PURLIN = pattern(".*?(?<word>"
            + word("purlins?") + "|(?-i:(?<=\\p{Ll})Purlins?(?!\\p{Ll}))"
            + "|pfetten?" + "|" + word("pannes?") + "|" + word("arcarecc(?:io|i)") + "|" + word("terzer[ae]")
            + "|" + word("correas?") + "|" + word("ter[çc]as?") + "|" + word("madres?") + "|" + start("gording")
            + "|" + word("(?:tak)?ås(?:ar|er|e)?") + "|" + start("płatew") + "|" + start("płatwi")
            + "|" + start("vaznic") + "|" + start("väznic") + "|" + start("szelemen") + "|" + start("kattoor[sr]")
            + "|" + word("pane de acoperi[sș]") + "|" + word("aşık") + "|" + word("прогон[ы]?")
            + "|" + word("battens?") + "|" + start("dachlatt") + "|" + word("liteaux?") + "|母屋|檩)");

    private Names() {}

    private static Pattern pattern(String regex) {
        return Pattern.compile("^" + regex, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.DOTALL);
    }

    /** Between characters that are no letters. */
    private static String word(String regex) {
        return "(?<!\\p{L})(?:" + regex + ")(?!\\p{L})";
    }

    /** The start of a word, whatever follows. */
    private static String start(String regex) {
        return "(?<!\\p{L})(?:" + regex + ")\\p{L}*";
    }
}

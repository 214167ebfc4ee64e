package runtrue.rules.judge.subject;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runtrue.ifc.MaterialLayer;
import runtrue.rules.cel.Facts;

/**
 * What a material's name says of the surface that others touch. Bare "steel" says nothing of it: it may be painted or
 * zinc-coated, and that is what matters.
 */
final class Metals {
    static final String UNKNOWN = "unknown";

    private static final String TIMBER = "timber";

    /** Metres; foils have less than a fifth of a millimetre, sheets at least 0.4. Common practice, no source. */
    private static final double THINNEST_SHEET = 0.0003;

    private record Word(Pattern pattern, String metal) {
        Word(String pattern, String metal) {
            this(Pattern.compile(pattern, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE), metal);
        }
    }

    /** The first that fits; what is plated comes before what it is plated with. */
    private static final List<Word> WORDS = List.of(
            new Word(
                    "alumini?um[- ]zinc|zinc[- ]alumini?um|\\bAZ ?(150|165|185|200)\\b", "aluminium-zinc-coated steel"),
            new Word("stainless|edelstahl|\\binox|\\b1\\.4[3-5]\\d\\d\\b", "stainless steel"),
            new Word("galvani[sz]ed|galvanis|verzinkt|zinc[- ]coated|\\bZ ?(275|350|450|600)\\b", "zinc-coated steel"),
            new Word("copper|kupfer|cuivre", "copper"),
            new Word("alumini?um", "aluminium"),
            new Word("\\blead\\b|\\bblei\\b|\\bplomb\\b", "lead"),
            new Word("\\bzinc\\b|\\bzink\\b", "zinc"),
            new Word("timber|\\bwood|holz\\b|\\bbois\\b|glulam|\\b(C|GL) ?(16|18|24|28|30|32)h?\\b", TIMBER));

    private Metals() {}

    /** As the material says, or else as a fact that is known of all of its kind. */
    static String of(List<MaterialLayer> layers, Facts facts, String fallback) {
        String own = of(layers);
        return own.equals(UNKNOWN) && facts.find(fallback).orElse(null) instanceof Facts.Known known
                ? known.value().toString()
                : own;
    }

    /** The first layer whose material says; {@link #UNKNOWN} where none does. */
    static String of(List<MaterialLayer> layers) {
        return layers.stream()
                .map(Metals::of)
                .filter(metal -> !metal.equals(UNKNOWN))
                .findFirst()
                .orElse(UNKNOWN);
    }

    /**
     * Of the sheets on a roof body. Layers are listed from either face, so the sheets are the first or the last; what lies
     * between, or is thin as a foil, is none. {@link #UNKNOWN} where both are of metal and differ: one is a liner then, and
     * nothing tells which.
     */
    static String ofSheets(List<MaterialLayer> layers) {
        if (layers.isEmpty()) {
            return UNKNOWN;
        }
        Set<String> outer = Stream.of(layers.get(0), layers.get(layers.size() - 1))
                .filter(layer ->
                        layer.thickness().isEmpty() || layer.thickness().getAsDouble() >= THINNEST_SHEET)
                .map(Metals::of)
                .filter(metal -> !metal.equals(UNKNOWN) && !metal.equals(TIMBER))
                .collect(Collectors.toSet());
        return outer.size() == 1 ? outer.iterator().next() : UNKNOWN;
    }

    private static String of(MaterialLayer layer) {
        return WORDS.stream()
                .filter(word -> word.pattern().matcher(layer.material()).find())
                .map(Word::metal)
                .findFirst()
                .orElse(UNKNOWN);
    }
}

package runtrue.result.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import runtrue.result.Conforming;
import runtrue.result.Finding;
import runtrue.result.Measure;

/** What is different about a finding, in a sentence. */
final class Wording {
    /** A part of ten thousand: models written again move their coordinates by less, and nobody builds closer. */
    private static final double ALIKE = 1e-4;

    private Wording() {}

    static boolean differ(double a, double b) {
        return Math.abs(a - b) > ALIKE * Math.max(Math.abs(a), Math.abs(b));
    }

    static String appeared(Finding finding, Optional<Conforming> before) {
        String now = finding.measured().map(m -> ", now " + words(m)).orElse("");
        return before.map(b -> "Conformed before"
                        + b.measured().map(m -> " with " + words(m)).orElse("") + now + ".")
                .orElse("Was not found before.");
    }

    /** Empty when nothing is different that people act on. */
    static Optional<String> changed(Finding before, Finding now) {
        List<String> parts = new ArrayList<>();
        if (before.outcome() != now.outcome()) {
            parts.add("was \"" + before.outcome().label() + "\", is \""
                    + now.outcome().label() + "\"");
        }
        compare("measured", before.measured(), now.measured()).ifPresent(parts::add);
        compare("limit", before.limit(), now.limit()).ifPresent(parts::add);
        if (before.severity() != now.severity()) {
            parts.add("severity " + before.severity().label() + ", now "
                    + now.severity().label());
        }
        if (!before.reason().equals(now.reason())) {
            parts.add(
                    now.reason().isEmpty() ? "the reason given before is gone" : "the reason is now: " + now.reason());
        }
        return parts.isEmpty() ? Optional.empty() : Optional.of(sentence(String.join("; ", parts)));
    }

    static String gone(Finding before, Optional<Conforming> now) {
        return now.map(c -> cured(before, c))
                .orElse("Is not in this drop any more: neither a finding nor among what conforms. What it was about may"
                        + " be gone, or be judged under another name.");
    }

    private static String cured(Finding before, Conforming now) {
        String measured = compare("measured", before.measured(), now.measured())
                .map(words -> ": " + words)
                .orElseGet(() -> now.measured()
                        .map(m -> " with " + words(m) + " as before")
                        .orElse(""));
        String limit = compare("limit", before.limit(), now.limit())
                .map(words -> "; " + words)
                .orElse("");
        return "Conforms now" + measured + limit + ".";
    }

    private static Optional<String> compare(String what, Optional<Measure> before, Optional<Measure> now) {
        if (before.isEmpty() && now.isEmpty()) {
            return Optional.empty();
        }
        if (before.isPresent() && now.isPresent()) {
            Measure b = before.get();
            Measure n = now.get();
            boolean same = b.unit().equals(n.unit()) && !differ(b.value(), n.value());
            return same ? Optional.empty() : Optional.of(what + " " + words(b) + ", now " + words(n));
        }
        return Optional.of(what + " " + before.map(Wording::words).orElse("unknown") + ", now "
                + now.map(Wording::words).orElse("unknown"));
    }

    private static String sentence(String text) {
        String end = text.endsWith(".") ? "" : ".";
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + end;
    }

    private static String words(Measure measure) {
        return measure.words();
    }
}

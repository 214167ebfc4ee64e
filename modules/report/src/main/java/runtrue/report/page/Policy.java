package runtrue.report.page;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/**
 * The page's Content-Security-Policy (W3C, Content Security Policy Level 3): no network at all, no script or style but those
 * that the program wrote, known by their hashes. The script that is allowed hands the page's modules to the browser as blobs;
 * no handler or style within an attribute runs, whatever a model manages to say.
 */
final class Policy {
    private Policy() {}

    static String of(String style, String script) {
        return String.join(
                "; ",
                "default-src 'none'",
                "script-src " + hash(script) + " blob:",
                "style-src " + hash(style),
                "img-src data: blob:",
                "base-uri 'none'",
                "form-action 'none'");
    }

    private static String hash(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}

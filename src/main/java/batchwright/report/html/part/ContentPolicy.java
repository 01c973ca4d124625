package batchwright.report.html.part;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/**
 * What a browser may do with the report (W3C Content Security Policy Level 3): show it in this one style, run this one script, and nothing
 * else. Names come from files; should one ever get past the templates, it still runs no script of its own and fetches nothing.
 */
final class ContentPolicy {
    private ContentPolicy() {}

    /**
     * @param css the content of the only style element, to the letter
     * @param script that of the only script element; empty when there is none
     */
    static String allowingOnly(String css, String script) {
        return "default-src 'none'; style-src 'sha256-" + sha256(css) + "'; "
                + (script.isEmpty() ? "" : "script-src 'sha256-" + sha256(script) + "'; ")
                + "base-uri 'none'; form-action 'none'";
    }

    private static String sha256(String text) {
        try {
            return Base64.getEncoder()
                    .encodeToString(MessageDigest.getInstance("SHA-256").digest(text.getBytes(UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}

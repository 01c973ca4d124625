package batchwright.page.guard;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;

/** A random text that nobody guesses: 192 bits, in letters, digits, - and _. It is compared in a time that tells nothing of it. */
public final class Secret {
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int BYTES = 24;

    private final String text;

    private Secret(String text) {
        this.text = text;
    }

    public static Secret random() {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return new Secret(Base64.getUrlEncoder().withoutPadding().encodeToString(bytes));
    }

    public boolean is(String other) {
        return MessageDigest.isEqual(
                text.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }

    /** For the one who may know it. */
    public String text() {
        return text;
    }

    /** Nothing of it, wherever it might be printed. */
    @Override
    public String toString() {
        return "secret";
    }
}

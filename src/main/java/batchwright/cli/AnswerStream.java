package batchwright.cli;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Where answers go, in UTF-8 whatever the locale, so that the same files give the same bytes. It remembers whether they arrived:
 * a stream that prints keeps that to itself.
 */
final class AnswerStream extends PrintStream {
    private final Remembering to;
    private final BooleanSupplier isPipe;

    /** @param isPipe whether it leads to another program; asked when it fails */
    AnswerStream(OutputStream to, BooleanSupplier isPipe) {
        this(new Remembering(to), isPipe);
    }

    private AnswerStream(Remembering to, BooleanSupplier isPipe) {
        super(to, false, StandardCharsets.UTF_8);
        this.to = to;
        this.isPipe = isPipe;
    }

    /** Whether anything was written. */
    boolean isUsed() {
        return to.used;
    }

    /** Why something did not arrive; empty when all did, or when a reader had read enough and left, as head does. */
    Optional<String> failure() {
        flush();
        IOException failure = to.failure;
        if (failure == null || hasReaderLeft(failure)) {
            return Optional.empty();
        }
        return Optional.of(failure.getMessage() == null ? "" : failure.getMessage());
    }

    private boolean hasReaderLeft(IOException failure) {
        return "Broken pipe".equals(failure.getMessage()) || isPipe.getAsBoolean();
    }

    private static final class Remembering extends FilterOutputStream {
        private boolean used;
        private @Nullable IOException failure;

        Remembering(OutputStream to) {
            super(to);
        }

        @Override
        public void write(int octet) throws IOException {
            write(new byte[] {(byte) octet}, 0, 1);
        }

        @Override
        public void write(byte[] octets, int from, int length) throws IOException {
            used = true;
            try {
                out.write(octets, from, length);
            } catch (IOException why) {
                failure = why;
                throw why;
            }
        }

        @Override
        public void flush() throws IOException {
            try {
                out.flush();
            } catch (IOException why) {
                failure = why;
                throw why;
            }
        }
    }
}

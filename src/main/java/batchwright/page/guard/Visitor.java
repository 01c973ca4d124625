package batchwright.page.guard;

import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;

/** A browser that was let in. It is known by a cookie, and what it sends by a token of its pages. */
public final class Visitor {
    private final Secret cookie = Secret.random();
    private final Secret token = Secret.random();
    private final int number;
    private final boolean phone;
    private final Instant since;
    private final AtomicReference<Optional<String>> said = new AtomicReference<>(Optional.empty());

    private final AtomicBoolean out = new AtomicBoolean();

    Visitor(int number, boolean phone, Instant since) {
        this.number = number;
        this.phone = phone;
        this.since = since;
    }

    /** By which it is named on a page; no secret. */
    public int number() {
        return number;
    }

    public Secret cookie() {
        return cookie;
    }

    /** Stands in every form: only a page of ours knows it. */
    public Secret token() {
        return token;
    }

    /** Whether it came in from the network of the house, not on this computer. */
    public boolean isPhone() {
        return phone;
    }

    public Instant since() {
        return since;
    }

    /** Whether it is let in no more. */
    public boolean isOut() {
        return out.get();
    }

    void shutOut() {
        out.set(true);
    }

    /** Something for the next page that is shown. */
    public void say(String text) {
        said.set(Optional.of(text));
    }

    /** What was to be said; once. */
    public Optional<String> said() {
        return said.getAndSet(Optional.empty());
    }
}

package batchwright.page.guard;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Who is let in, by which key. The key for this computer holds as long as the program runs; one for a phone holds once and for a few
 * minutes. Nothing of this is written anywhere: when the program ends, everybody is out.
 */
public final class Visitors {
    /** How long a key for a phone holds. Our choice. */
    public static final Duration PHONE_KEY_HOLDS = Duration.ofMinutes(5);

    private static final int MOST = 20;

    private final Clock clock;
    private final Secret here = Secret.random();
    private final List<Visitor> all = new ArrayList<>();
    private int numbered;
    private Optional<PhoneKey> phone = Optional.empty();

    private record PhoneKey(Secret secret, Instant until) {}

    public Visitors(Clock clock) {
        this.clock = clock;
    }

    /** The key for this computer. */
    public Secret here() {
        return here;
    }

    /** A new key for one phone; an earlier one that nobody used holds no more. */
    public synchronized Secret phoneKey() {
        var secret = Secret.random();
        phone = Optional.of(new PhoneKey(secret, clock.instant().plus(PHONE_KEY_HOLDS)));
        return secret;
    }

    /** Somebody on this computer with this key; empty when it is not the right one. */
    public synchronized Optional<Visitor> letInHere(String key) {
        return here.is(key) ? Optional.of(in(false)) : Optional.empty();
    }

    /** A phone with this key, which then holds no more; empty when it is not the right one. */
    public synchronized Optional<Visitor> letPhoneIn(String key) {
        boolean right = phone.filter(k -> k.secret().is(key) && clock.instant().isBefore(k.until()))
                .isPresent();
        if (!right) {
            return Optional.empty();
        }
        phone = Optional.empty();
        return Optional.of(in(true));
    }

    private Visitor in(boolean isPhone) {
        var visitor = new Visitor(++numbered, isPhone, clock.instant());
        if (all.size() >= MOST) {
            all.remove(0).shutOut();
        }
        all.add(visitor);
        return visitor;
    }

    public synchronized Optional<Visitor> of(String cookie) {
        return all.stream().filter(visitor -> visitor.cookie().is(cookie)).findFirst();
    }

    /** Paired phones, the first that came first. */
    public synchronized List<Visitor> phones() {
        return all.stream().filter(Visitor::isPhone).toList();
    }

    /** This one is out. */
    public synchronized void end(Visitor visitor) {
        visitor.shutOut();
        all.remove(visitor);
    }

    /** All phones are out. */
    public synchronized void endPhones() {
        phone = Optional.empty();
        phones().forEach(this::end);
    }
}

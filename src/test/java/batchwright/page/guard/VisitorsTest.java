package batchwright.page.guard;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Whoever is shut out is known to be: what was kept for that browser can go. */
class VisitorsTest {
    private final Visitors visitors = new Visitors(Clock.systemUTC());

    private Visitor here() {
        return visitors.letInHere(visitors.here().text()).orElseThrow();
    }

    private Visitor phone() {
        return visitors.letPhoneIn(visitors.phoneKey().text()).orElseThrow();
    }

    @Test
    void an_ended_phone_is_out_and_nobody_else() {
        Visitor here = here();
        Visitor one = phone();
        Visitor other = phone();

        visitors.end(one);
        assertThat(one.isOut()).isTrue();
        assertThat(other.isOut()).isFalse();
        visitors.endPhones();
        assertThat(other.isOut()).isTrue();
        assertThat(here.isOut()).isFalse();
        assertThat(visitors.phones()).isEmpty();
        assertThat(visitors.of(here.cookie().text())).contains(here);
    }

    @Test
    void the_first_is_out_when_too_many_came() {
        Visitor first = here();
        Visitor second = here();
        IntStream.range(0, 19).forEach(i -> here());

        assertThat(first.isOut()).isTrue();
        assertThat(visitors.of(first.cookie().text())).isEmpty();
        assertThat(second.isOut()).isFalse();
    }
}

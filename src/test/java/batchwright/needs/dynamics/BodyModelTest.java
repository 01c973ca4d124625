package batchwright.needs.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.quantity.Energy;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BodyModelTest {
    private static final BodyModel MAN = new BodyModel(Bodies.of(100, 30, 3088, 1.6));

    @Test
    void more_intake_is_more_weight_on_every_day_after() {
        var random = new Random(7);
        for (int body = 0; body < 40; body++) {
            double kg = 50 + 90 * random.nextDouble();
            double total = 22 * kg + 1000;
            var model = new BodyModel(
                    Bodies.of(kg, kg * (0.1 + 0.4 * random.nextDouble()), total, 1.3 + random.nextDouble()));
            double days = 1 + 700 * random.nextDouble();
            double before = 0;
            for (double part = 0.4; part < 2; part += 0.2) {
                double then = model.after(days, new Energy(part * total), model.start())
                        .weightKg();
                assertThat(then).isGreaterThan(before);
                before = then;
            }
        }
    }

    @Test
    void a_solved_intake_leads_to_the_weight() {
        for (double kg : new double[] {85, 95, 100, 104}) {
            double intake = MAN.intakeFor(kg, 397, MAN.start()).orElseThrow();
            assertThat(MAN.after(397, new Energy(intake), MAN.start()).weightKg())
                    .isCloseTo(kg, within(1e-3));
        }
    }

    @Test
    void no_intake_leads_everywhere() {
        assertThat(MAN.intakeFor(50, 28, MAN.start())).isEmpty();
        assertThat(MAN.intakeFor(200, 28, MAN.start())).isEmpty();
    }

    /** The intake that would hold a body holds it: a body that has settled at an intake is held by that intake. */
    @Test
    void what_would_hold_a_settled_body_is_what_it_eats() {
        assertThat(MAN.holding(MAN.start()).kcal()).isCloseTo(3088, within(1e-6));
        for (double kcal : new double[] {2300, 2700, 3400}) {
            assertThat(MAN.holding(MAN.settled(new Energy(kcal))).kcal()).isCloseTo(kcal, within(0.01));
        }
    }

    @Test
    void names_the_first_day_of_a_weight() {
        var intake = new Energy(2400);
        int day = MAN.dayOf(90, intake).orElseThrow();
        assertThat(MAN.after(day, intake, MAN.start()).weightKg()).isLessThanOrEqualTo(90);
        assertThat(MAN.after(day - 1, intake, MAN.start()).weightKg()).isGreaterThan(90);
        assertThat(MAN.dayOf(50, intake)).isEmpty();
    }
}

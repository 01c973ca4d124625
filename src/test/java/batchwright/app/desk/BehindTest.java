package batchwright.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.answer.PlanAnswer;
import batchwright.plan.Plan;
import batchwright.plan.Watch;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class BehindTest {
    @Test
    void a_newer_search_ends_the_older_one() throws Exception {
        Desk desk = DeskTest.desk();
        Sliders older = desk.asAsked();
        Sliders newer = older.withDays(3);
        var begun = new CountDownLatch(1);
        var overtaken = new CountDownLatch(1);
        var first = new Heard(() -> {
            begun.countDown();
            overtaken.await();
        });
        var second = new Heard(() -> {});
        try (var behind = new Behind(desk)) {
            Future<?> left = behind.begin(older, first);
            begun.await();
            Future<?> end = behind.begin(newer, second);
            overtaken.countDown();
            end.get(1, TimeUnit.MINUTES);
            left.get(1, TimeUnit.MINUTES);
        }

        assertThat(first.answers).isEmpty();
        assertThat(second.answers).hasSize(1);
        assertThat(second.answers.get(0).plan().map(Plan::cost))
                .isEqualTo(desk.fresh().full(newer, Watch.NONE).plan().map(Plan::cost));
        assertThat(second.progress).isNotEmpty();
    }

    @Test
    void a_refusal_is_told() throws Exception {
        Desk desk = DeskTest.desk();
        var heard = new Heard(() -> {});
        try (var behind = new Behind(desk)) {
            behind.begin(desk.asAsked().withDays(99), heard).get(1, TimeUnit.MINUTES);
        }

        assertThat(heard.faults).hasSize(1);
    }

    private interface Waits {
        void here() throws InterruptedException;
    }

    private static final class Heard implements Behind.Listener {
        private final Waits atFirst;
        private final List<Behind.Progress> progress = new ArrayList<>();
        private final List<PlanAnswer> answers = new ArrayList<>();
        private final List<Throwable> faults = new ArrayList<>();

        Heard(Waits atFirst) {
            this.atFirst = atFirst;
        }

        @Override
        public void progress(Behind.Progress now) {
            progress.add(now);
            if (progress.size() == 1) {
                try {
                    atFirst.here();
                } catch (InterruptedException interrupted) {
                    Thread.currentThread().interrupt();
                }
            }
        }

        @Override
        public void answered(PlanAnswer answer, boolean isLast) {
            answers.add(answer);
        }

        @Override
        public void failed(Throwable fault) {
            faults.add(fault);
        }
    }
}

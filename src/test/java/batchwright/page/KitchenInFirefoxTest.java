package batchwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.report.html.Firefox;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Shop and stove in another browser: a tick is written, a timer rings. */
class KitchenInFirefoxTest {
    private static final int MOST_TRIES = 300;

    private static void until(Firefox firefox, String script) throws IOException, InterruptedException {
        for (int i = 0; i < MOST_TRIES; i++) {
            if (firefox.run("String(" + script + ")").equals("true")) {
                return;
            }
            Thread.sleep(100);
        }
        throw new AssertionError("it never came to " + script);
    }

    @Test
    void a_tick_is_written_and_a_timer_rings(@TempDir Path kitchen, @TempDir Path files) throws Exception {
        try (Firefox firefox = Firefox.start(files);
                OpenedPage page = KeptKitchen.open(kitchen)) {
            firefox.go(page.server.address());
            firefox.go(page.origin() + "/shop");
            firefox.run("document.querySelector(\"li[data-name^='couscous'] [role=checkbox]\").click()");
            assertThat(firefox.run("document.querySelector(\"#taken [role=checkbox]\").getAttribute('aria-checked')"))
                    .isEqualTo("true");
            until(firefox, "JSON.parse(localStorage.getItem('batchwright.ticks')).waiting.length === 0");
            assertThat(Files.readString(kitchen.resolve("profiles/book.txt"))).contains(" g couscous for ");

            firefox.go(page.origin() + "/stove");
            firefox.run("document.querySelector('#forth').click()");
            firefox.run("document.querySelector('#steps > li:not([hidden]) .ring').click()");
            assertThat(firefox.run("document.querySelector('#timers .rest').textContent")).matches("[0-9]+:[0-9]{2}");
            firefox.run("const real = Date.now; Date.now = () => real() + 180 * 60000; ''");
            until(firefox, "document.getElementById('alarm').textContent.startsWith('Time is up. Step 2')");
            assertThat(firefox.run("String(document.body.classList.contains('rings'))")).isEqualTo("true");
        }
    }
}

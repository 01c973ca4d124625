package batchwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.report.html.Browser;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** A browser at an opened page: waits for what scripts do, and looks at a page in all sizes. */
record BrowserVisit(Browser browser, OpenedPage page) {
    static final int PHONE = 390;
    static final int DESK = 1440;
    static final int NARROW = 320;
    private static final Duration PATIENCE = Duration.ofMinutes(2);
    private static final @Nullable String PICTURES = System.getProperty("batchwright.pictures");

    void open(String path, int width, boolean dark) {
        browser.go(page.origin() + path, width, dark);
    }

    /** Presses what leads to another page, and waits for that page: what is read then is never the page that was left. */
    void press(String xpath) {
        press(browser.driver().findElement(By.xpath(xpath)));
    }

    /** As above; a field sends its form. */
    void press(WebElement element) {
        browser.run("window.left = true; return 1");
        if (element.getTagName().equals("input")) {
            element.submit();
        } else {
            element.click();
        }
        until("window.left === undefined && document.readyState === 'complete'");
    }

    /** Waits until it is true. */
    void until(String script) {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (!Boolean.TRUE.equals(browser.run("return " + script))) {
            if (System.nanoTime() > end) {
                throw new AssertionError("it never came to " + script);
            }
            try {
                Thread.sleep(50);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    /** In all sizes nothing to complain of, and no scrolling to the side; writes pictures where they are asked for. */
    void look(String name, String path) throws IOException {
        browser.complaints();
        for (int width : new int[] {PHONE, DESK}) {
            for (boolean dark : new boolean[] {false, true}) {
                open(path, width, dark);
                picture(name + "-" + width + (dark ? "-dark" : ""));
            }
        }
        assertThat(violations()).as(name).isEmpty();
        open(path, NARROW, false);
        assertThat(violations()).as(name).isEmpty();
        assertThat(browser.run("return document.documentElement.scrollWidth <= window.innerWidth"))
                .as(name + " at 320 px")
                .isEqualTo(true);
        assertThat(browser.complaints()).as(name).isEmpty();
    }

    private void picture(String name) throws IOException {
        if (PICTURES != null) {
            Files.write(Path.of(PICTURES).resolve(name + ".png"), browser.picture());
        }
    }

    /** WCAG 2.2 AA, as far as axe-core can tell. */
    List<?> violations() throws IOException {
        try (InputStream axe = Objects.requireNonNull(getClass().getResourceAsStream("/axe.min.js"))) {
            browser.run(new String(axe.readAllBytes(), StandardCharsets.UTF_8) + "; return 1");
        }
        Object found = browser.runLater("const done = arguments[arguments.length - 1];"
                + "axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']})"
                + ".then(r => done({passed: r.passes.length, violations: r.violations.map(v => v.id + ': '"
                + " + v.nodes.map(n => n.html).slice(0, 3).join(' '))}));");
        Map<?, ?> map = (Map<?, ?>) found;
        assertThat((Long) map.get("passed")).isGreaterThan(10);
        return (List<?>) Objects.requireNonNull(map.get("violations"));
    }
}

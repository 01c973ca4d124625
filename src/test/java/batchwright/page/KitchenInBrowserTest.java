package batchwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.report.html.Browser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/**
 * In the shop and at the stove, in Chromium on a phone's size: ticks that outlive a reload and a lost connection, timers that ring. With
 * {@code -Dbatchwright.pictures=FOLDER} it writes a picture of each page there.
 */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class KitchenInBrowserTest {

    private static @Nullable OpenedPage page;
    private static @Nullable Browser browser;

    @BeforeAll
    static void start(@TempDir Path folder, @TempDir Path pages) throws IOException {
        browser = Browser.start(pages);
        page = KeptKitchen.open(folder);
        browser.go(page.server.address(), BrowserVisit.PHONE, false);
    }

    @AfterAll
    static void stop() {
        if (browser != null) {
            browser.close();
        }
        if (page != null) {
            page.close();
        }
    }

    private static Browser browser() {
        return Objects.requireNonNull(browser);
    }

    private static BrowserVisit visit() {
        return new BrowserVisit(browser(), page());
    }

    private static OpenedPage page() {
        return Objects.requireNonNull(page);
    }

    private static void open(String path) {
        browser().go(page().origin() + path, BrowserVisit.PHONE, false);
    }

    private static WebElement find(String css) {
        return browser().driver().findElement(By.cssSelector(css));
    }

    private static String row(String food) {
        return "li[data-name^='" + food + "'] [role=checkbox]";
    }

    private static List<String> book(String words) throws IOException {
        Path book = page().folder.resolve("profiles/book.txt");
        return Files.exists(book)
                ? Files.readAllLines(book).stream()
                        .filter(line -> line.contains(words))
                        .toList()
                : List.of();
    }

    private static void connected(boolean on) {
        browser().offline(!on);
    }

    /** By keyboard as by finger. */
    @Test
    @Order(1)
    void what_is_ticked_goes_down_and_counts_off_the_money() throws IOException {
        open("/shop");
        double before = Double.parseDouble(find("#left-sum").getText());
        double cost = Double.parseDouble(find(row("couscous") + " .cost").getText());
        find(row("couscous")).sendKeys(Keys.SPACE);

        assertThat(Double.parseDouble(find("#left-sum").getText()))
                .isEqualTo(before - cost, org.assertj.core.api.Assertions.within(0.001));
        assertThat(find("#taken " + row("couscous")).getAttribute("aria-checked"))
                .isEqualTo("true");
        assertThat(find("#spoken").getAttribute("textContent")).startsWith("couscous taken. ");
        assertThat(browser().run("return document.activeElement.getAttribute('role')"))
                .isEqualTo("checkbox");
        visit().until("JSON.parse(localStorage.getItem('batchwright.ticks')).waiting.length === 0");
        assertThat(book("couscous")).hasSize(1);
        open("/shop");
        assertThat(find("#taken " + row("couscous")).getAttribute("aria-checked"))
                .isEqualTo("true");
    }

    @Test
    @Order(2)
    void ticks_outlive_a_lost_connection_and_are_sent_once() throws IOException {
        open("/shop");
        connected(false);
        find(row("onion")).click();
        find(row("carrot")).click();
        find(row("garlic")).click();
        find("#taken " + row("garlic")).click();
        visit().until("document.getElementById('sent').textContent.startsWith('Not connected: 4 ticks wait')");
        assertThat(book("onion")).isEmpty();

        connected(true);
        visit().until("JSON.parse(localStorage.getItem('batchwright.ticks')).waiting.length === 0");
        assertThat(book("onion")).hasSize(1);
        assertThat(book("carrot")).hasSize(1);
        assertThat(book("garlic")).as("taken and put back").hasSize(2);
        assertThat(find("#sent").getText()).isEmpty();
        open("/shop");
        assertThat(browser().driver().findElements(By.cssSelector("#taken > li")))
                .hasSize(3);
    }

    /** The answer is lost on its way, not the tick: it is sent again with its number. */
    @Test
    @Order(3)
    void a_tick_whose_answer_was_lost_is_not_written_twice() throws IOException {
        open("/shop");
        browser()
                .run("const real = window.fetch; let lost = 0;"
                        + "window.fetch = (...what) => real(...what).then(answer => { if (lost++ === 0) throw new TypeError('lost'); return answer; });"
                        + "return 1");
        find(row("canola oil")).click();
        visit().until("document.getElementById('sent').textContent.startsWith('Not connected: 1 tick waits')");
        visit().until("JSON.parse(localStorage.getItem('batchwright.ticks')).waiting.length === 0");

        assertThat(book("canola_oil")).hasSize(1);
    }

    @Test
    @Order(4)
    void what_was_not_sent_is_ticked_after_a_reload_too() throws IOException {
        open("/shop");
        browser().run("window.fetch = () => Promise.reject(new TypeError('lost')); return 1");
        find(row("lemon juice")).click();
        open("/shop");

        assertThat(find("#taken " + row("lemon juice")).getAttribute("aria-checked"))
                .isEqualTo("true");
        visit().until("JSON.parse(localStorage.getItem('batchwright.ticks')).waiting.length === 0");
        assertThat(book("lemon_juice")).hasSize(1);
    }

    @Test
    @Order(5)
    void one_step_at_a_time_with_its_amounts_and_a_clock() {
        open("/stove");
        assertThat(find("#end").getText()).matches("If you begin now, all is filled at [0-9]{1,2}:[0-9]{2}.*");
        find("#forth").click();
        find("#forth").click();

        List<WebElement> shown = browser().driver().findElements(By.cssSelector("#steps > li")).stream()
                .filter(WebElement::isDisplayed)
                .toList();
        assertThat(shown).hasSize(1);
        assertThat(shown.get(0).getText()).contains("onion", " g ");
        assertThat(find("#next").getText()).startsWith("Next: ");
        assertThat(find("#end").getText()).startsWith("All is filled at about ");
        assertThat(find("#awake").getText()).isNotEmpty();
        assertThat(
                        browser()
                                .run(
                                        "return [...document.querySelectorAll('.go button, .ring')].filter(b => b.offsetParent)"
                                                + ".every(b => b.getBoundingClientRect().height >= 64 && b.getBoundingClientRect().width >= 64)"))
                .as("targets of 64 px")
                .isEqualTo(true);
        open("/stove");
        assertThat(find("#steps > li:not([hidden]) .with").getText())
                .as("after a reload")
                .contains("onion");
    }

    /** The clock of the browser is put forward: nobody waits. Sound is counted by its oscillators. */
    @Test
    @Order(6)
    void timers_ring_by_sound_by_light_and_in_words() {
        open("/stove");
        browser()
                .run(
                        "window.tones = 0; const make = AudioContext.prototype.createOscillator;"
                                + "AudioContext.prototype.createOscillator = function () { window.tones++; return make.call(this); }; return 1");
        find("#steps > li:not([hidden]) .ring").click();
        find("#forth").click();
        find("#steps > li:not([hidden]) .ring").click();
        assertThat(browser().driver().findElements(By.cssSelector("#timers > li")))
                .hasSize(2);
        assertThat(find("#timers .name").getText()).startsWith("Step 3, burner ");
        assertThat(find("#timers .rest").getText()).matches("[0-9]+:[0-9]{2}");

        browser().run("const real = Date.now; Date.now = () => real() + 30 * 60000; return 1");
        visit().until("document.getElementById('alarm').textContent.startsWith('Time is up. Step 3')");
        assertThat(find("#alarm").getAttribute("role")).isEqualTo("alert");
        visit().until("window.tones > 0");
        assertThat(browser().run("return document.body.classList.contains('rings')"))
                .isEqualTo(true);
        assertThat(browser().driver().getTitle()).startsWith("Time is up");
        find("#timers .over button:last-child").click();
        visit().until("!document.body.classList.contains('rings')");
        assertThat(browser().driver().findElements(By.cssSelector("#timers > li")))
                .as("the other goes on")
                .hasSize(1);
    }

    @Test
    @Order(7)
    void the_weight_of_the_pot_gives_grams_for_each_box() {
        open("/stove");
        find("#fill details summary").click();
        find("#full-chickpea_tagine").sendKeys("4800");
        find("#empty-chickpea_tagine").sendKeys("2.1 kg");
        visit().press(find("#fill details form button"));

        assertThat(find(".shares").getText()).contains("2700 g in the pot", "450");
    }

    @Test
    @Order(8)
    void they_are_for_everybody() throws IOException {
        visit().look("shop", "/shop");
        visit().look("stove", "/stove");
    }
}

package batchwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.report.html.Browser;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
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
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebElement;

/**
 * The page in Chromium: its own scripts run and nothing else, all of it is readable for all, and a hostile page gets nothing. With
 * {@code -Dbatchwright.pictures=FOLDER} it writes a picture of each page there.
 */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class PageInBrowserTest {

    private static @Nullable OpenedPage page;
    private static @Nullable Browser browser;

    @BeforeAll
    static void start(@TempDir Path folder, @TempDir Path pages) throws IOException {
        browser = Browser.start(pages);
        page = OpenedPage.small(folder);
        browser.go(page.server.address(), BrowserVisit.DESK, false);
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

    private static WebDriver driver() {
        return browser().driver();
    }

    private static void open(String path, int width, boolean dark) {
        browser().go(page().origin() + path, width, dark);
    }

    @Test
    @Order(1)
    void questions_are_for_everybody() throws IOException {
        visit().look("start", "/start");
        visit().look("question", "/start/questions");
        open("/start/questions", BrowserVisit.PHONE, false);
        visit().press(driver().findElement(By.cssSelector("button:not(.less)")));
        assertThat(driver().getTitle()).startsWith("Error: ");
        assertThat(browser().run("return document.activeElement.id")).isEqualTo("troubles");
        assertThat(visit().violations()).isEmpty();
        browser().complaints();
    }

    /** By keyboard alone: from the field to the plan, which comes to the page by itself. */
    @Test
    @Order(2)
    void a_plan_comes_to_the_desk_by_itself_and_moves_with_the_slider() throws IOException {
        open("/desk", BrowserVisit.DESK, false);
        driver().findElement(By.cssSelector("input[value='parent-holding']")).sendKeys(Keys.SPACE);
        visit().until("document.querySelector('#answer .tiles') !== null");
        String before = tile();
        driver().findElement(By.cssSelector("input[data-moves='days']")).sendKeys(Keys.ARROW_LEFT);
        visit().until("document.querySelector('#days').value === '4'");
        visit().until("!document.querySelector('#answer').classList.contains('stale')");
        visit().until("document.querySelector('#answer').textContent.includes('Before and now')");

        assertThat(tile()).isNotEqualTo(before);
        assertThat(driver().findElement(By.id("spoken")).getText()).startsWith("Worked out: ");
        visit().look("desk", "/desk");
    }

    /** Of what the page showed since a slider moved: each plan with its cost and whether it was still being checked. */
    private static List<?> moved(String slider, Keys key) {
        browser()
                .run("const a = document.querySelector('#answer'); window.seen = [];"
                        + "window.watching = new MutationObserver(() => { const tile = a.querySelector('.tiles dd strong');"
                        + " window.seen.push([Number(a.querySelector('.shown').dataset.stamp), a.querySelector('.checking') !== null,"
                        + " tile ? Number(tile.textContent.replace(/[^0-9.]/g, '')) : 0]); });"
                        + "window.watching.observe(a, {childList: true}); return 1");
        driver().findElement(By.cssSelector("input[data-moves='" + slider + "']"))
                .sendKeys(key);
        visit().until("window.seen.length > 0 && !window.seen[window.seen.length - 1][1]");
        return (List<?>) Objects.requireNonNull(browser().run("window.watching.disconnect(); return window.seen"));
    }

    /** A quick answer, then that of the whole search: what is shown never goes back, and never gets dearer by the search. */
    @Test
    @Order(7)
    void budget_and_protein_move_and_the_whole_search_has_the_last_word() {
        open("/desk", BrowserVisit.DESK, false);
        driver().findElement(By.cssSelector("details[data-of='parent-holding'] summary"))
                .click();
        assertThat(driver().findElements(By.cssSelector("details[data-of]:not([hidden])")))
                .hasSize(1);
        int quick = 0;
        long stamp = (Long)
                Objects.requireNonNull(browser().run("return Number(document.querySelector('.shown').dataset.stamp)"));
        for (Keys key : List.of(Keys.PAGE_UP, Keys.PAGE_UP, Keys.PAGE_DOWN, Keys.PAGE_UP)) {
            long before = stamp;
            List<?> seen = moved("protein-parent-holding", key);
            double cost = Double.MAX_VALUE;
            for (Object one : seen) {
                List<?> shown = (List<?>) one;
                assertThat((Long) shown.get(0)).isGreaterThan(stamp);
                stamp = (Long) shown.get(0);
                double now = ((Number) Objects.requireNonNull(shown.get(2))).doubleValue();
                assertThat(now).isPositive().isLessThanOrEqualTo(cost);
                cost = now;
            }
            // The whole search may be done before the browser has fetched the quick answer.
            quick += stamp > before + 1 ? 1 : 0;
        }
        assertThat(quick).as("moves with a quick answer before the last").isPositive();
        moved("budget", Keys.HOME);
        assertThat(driver().findElement(By.id("answer")).getText()).contains("No plan keeps every rule.");
        driver().findElement(By.id("budget")).sendKeys(Keys.chord(Keys.CONTROL, "a"), "150");
        visit().until(
                        "document.querySelector('#answer .tiles') !== null && document.querySelector('#answer .checking') === null");
        assertThat(browser().complaints()).isEmpty();
    }

    private static String tile() {
        return driver().findElement(By.cssSelector(".tiles dd strong")).getText();
    }

    @Test
    @Order(3)
    void what_is_kept_is_eaten_from_the_fridge_and_undone() throws IOException {
        open("/desk", BrowserVisit.PHONE, false);
        visit().press("//button[.='Keep this plan']");
        assertThat(driver().findElement(By.className("said")).getText()).startsWith("Kept as ");
        WebElement weight = driver().findElement(By.id("weighed-parent-holding"));
        weight.sendKeys("68");
        visit().press(weight);
        assertThat(driver().findElement(By.className("said")).getText()).contains("weighed parent-holding 68 kg");
        visit().look("fridge", "/fridge");
        open("/fridge", BrowserVisit.PHONE, false);
        visit().press("//button[.='Eaten as planned']");
        assertThat(driver().getTitle()).startsWith("Error: ");
        visit().press("//button[starts-with(., 'It is right all the same')]");
        assertThat(driver().getTitle()).doesNotStartWith("Error: ");
        assertThat(page().file("profiles/book.txt")).contains("ate parent-holding nothing else");
        browser().complaints();
        visit().press("//button[.='Undo']");
        assertThat(page().file("profiles/book.txt")).contains("undo 2026-11-30 ate parent-holding nothing else");
        visit().look("cupboard", "/cupboard");
        visit().look("weight", "/fridge/weight/parent-holding");
    }

    @Test
    @Order(4)
    void the_switch_for_phones_is_for_everybody() throws IOException {
        open("/phone", BrowserVisit.DESK, false);
        visit().press("//button[.='Switch it on']");
        visit().look("phone", "/phone");
        open("/phone", BrowserVisit.DESK, false);
        visit().press("//button[starts-with(., 'Switch it off')]");
        assertThat(driver().findElement(By.className("big")).getText()).isEqualTo("It is switched off.");
    }

    /** By keyboard: a dish of one's own from the cupboard to its file, on the narrowest screen too. */
    @Test
    @Order(8)
    void a_dish_is_entered_and_the_cupboard_s_other_pages_are_for_everybody() throws IOException {
        browser().complaints();
        open("/cupboard", BrowserVisit.PHONE, false);
        visit().press("//a[.='A dish of your own']");
        driver().findElement(By.id("name")).sendKeys("Lentils with rice");
        driver().findElement(By.id("containers")).sendKeys("4");
        driver().findElement(By.id("ingredients"))
                .sendKeys("400 g lentils", Keys.ENTER, "300 g brown rice", Keys.ENTER, "2 onions");
        visit().press("//button[.='Look at it']");
        assertThat(driver().findElement(By.cssSelector("main")).getText()).contains("One container: ");
        assertThat(visit().violations()).isEmpty();
        visit().press("//button[.='Write it']");
        assertThat(driver().findElement(By.className("said")).getText()).startsWith("Written: ");
        assertThat(page().file("foods/dishes/lentils_with_rice.yaml")).contains("onion: 55 g");
        visit().look("dish", "/cupboard/dish");
        visit().look("kitchen", "/cupboard/kitchen");
        visit().look("eater", "/start/eater/parent-holding");
        for (String other : List.of("/cupboard/label", "/start/units")) {
            open(other, BrowserVisit.NARROW, true);
            assertThat(visit().violations()).as(other).isEmpty();
            assertThat(browser().run("return document.documentElement.scrollWidth <= window.innerWidth"))
                    .as(other)
                    .isEqualTo(true);
        }
        assertThat(browser().complaints()).isEmpty();
    }

    /**
     * A page of another port of this computer, which a browser calls the same site, in the browser that was let in: what it asks for it
     * does not see, what it sends is not taken, and it shows nothing of ours in itself.
     */
    @Test
    @Order(5)
    void a_hostile_page_gets_nothing() throws IOException {
        String ours = page().origin();
        page().enter().post("/fridge/weighed", "eater", "parent-holding", "words", "68", "sure", "yes");
        String before = page().file("profiles/book.txt");
        HttpServer hostile = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        hostile.createContext("/", exchange -> {
            byte[] html = "<!DOCTYPE html><title>hostile</title><body>".getBytes(StandardCharsets.UTF_8);
            exchange.getResponseHeaders().add("Content-Type", "text/html");
            exchange.sendResponseHeaders(200, html.length);
            exchange.getResponseBody().write(html);
            exchange.close();
        });
        hostile.start();
        try {
            for (String name : List.of("127.0.0.1", "localhost")) {
                browser().go("http://" + name + ":" + hostile.getAddress().getPort() + "/", BrowserVisit.DESK, false);
                Object got = browser()
                        .runLater("const done = arguments[arguments.length - 1]; const ours = '" + ours
                                + "'; (async () => { const got = [];"
                                + "for (const mode of ['cors', 'no-cors']) { try { const r = await fetch(ours + '/desk', {credentials: 'include', mode});"
                                + " got.push((await r.text()).length); } catch (e) { got.push(0); } }"
                                + "try { await fetch(ours + '/fridge/weighed', {method: 'POST', credentials: 'include', mode: 'no-cors',"
                                + " body: new URLSearchParams({eater: 'parent-holding', words: '80'})}); } catch (e) { }"
                                + "const load = (tag, attribute) => new Promise(r => { const e = document.createElement(tag);"
                                + " e.onload = () => r(tag === 'iframe' ? 2 : 1); e.onerror = () => r(0); e[attribute] = ours + '/desk'; document.body.append(e); setTimeout(() => r(0), 3000); });"
                                + "got.push(await load('script', 'src'), await load('img', 'src'));"
                                + "const frame = document.createElement('iframe'); frame.src = ours + '/desk'; document.body.append(frame);"
                                + "await new Promise(r => setTimeout(r, 1000));"
                                + "let inside = 0; try { inside = frame.contentDocument ? frame.contentDocument.body.textContent.length : 0; } catch (e) { }"
                                + "got.push(inside); done(got); })()");
                assertThat((List<?>) got)
                        .as(name)
                        .allSatisfy(length -> assertThat((Long) length).isZero());
                browser()
                        .run(
                                "const f = document.createElement('form'); f.method = 'post'; f.action = '" + ours
                                        + "/fridge/weighed'; for (const [n, v] of [['eater', 'parent-holding'], ['words', '80']]) {"
                                        + " const i = document.createElement('input'); i.name = n; i.value = v; f.append(i); } document.body.append(f); f.submit(); return 1");
                visit().until("document.title.startsWith('Error: ')");
            }
            assertThat(page().file("profiles/book.txt")).isEqualTo(before);
            browser().complaints();
        } finally {
            hostile.stop(0);
        }
    }

    /** Should a name ever get past the templates, it runs nothing. */
    @Test
    @Order(6)
    void no_script_runs_that_is_not_ours() {
        open("/fridge", BrowserVisit.DESK, false);
        browser()
                .run(
                        "const s = document.createElement('script'); s.textContent = 'window.ran = 1'; document.body.append(s);"
                                + "const i = document.createElement('img'); i.setAttribute('onerror', 'window.ran = 2'); i.src = 'data:,x'; document.body.append(i); return 1");

        assertThat(browser().run("return window.ran === undefined")).isEqualTo(true);
        browser().complaints();
    }
}

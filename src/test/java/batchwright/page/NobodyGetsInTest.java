package batchwright.page;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Who has no business on the page is turned away, and learns nothing. What a browser sends is as the W3C's Fetch Metadata and RFC 6454 say. */
class NobodyGetsInTest {
    private static OpenedPage page;

    @BeforeAll
    static void open(@TempDir Path folder) throws IOException {
        page = OpenedPage.small(folder);
    }

    @AfterAll
    static void close() {
        page.close();
    }

    @Test
    void it_is_heard_on_loopback_alone() throws IOException {
        for (NetworkInterface card : Collections.list(NetworkInterface.getNetworkInterfaces())) {
            for (InetAddress address : Collections.list(card.getInetAddresses())) {
                if (!address.isLoopbackAddress() && !address.isLinkLocalAddress()) {
                    assertThat(answers(address)).as(address.toString()).isFalse();
                }
            }
        }
        assertThat(answers(InetAddress.getLoopbackAddress())).isTrue();
    }

    private static boolean answers(InetAddress address) {
        try (Socket socket = new Socket(address, page.server.port())) {
            return socket.isConnected();
        } catch (IOException refused) {
            return false;
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/fridge",
                "/desk",
                "/desk/answer",
                "/desk/events",
                "/desk/report",
                "/shop",
                "/shop/without",
                "/stove",
                "/stove/labels.pdf",
                "/fridge/weight/desk-cutting",
                "/nothing"
            })
    void without_a_cookie_there_is_nothing(String path) {
        HttpResponse<String> answer = page.stranger().get(path);

        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.body()).doesNotContain("desk-cutting", "Desk, cutting");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "wrong", "AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA"})
    void a_wrong_key_lets_nobody_in(String key) {
        page.stranger();

        assertThat(page.get("/enter?key=" + key).statusCode()).isEqualTo(403);
        assertThat(page.get("/desk").statusCode()).isEqualTo(403);
    }

    @Test
    void the_cookie_stays_with_the_browser_and_the_site() throws IOException {
        String entered = raw("GET " + page.server.address().replace(page.origin(), "") + " HTTP/1.1\r\nHost: 127.0.0.1:"
                + page.server.port() + "\r\nConnection: close\r\n\r\n");

        assertThat(entered)
                .startsWith("HTTP/1.1 303 ")
                .containsPattern("Set-Cookie: batchwright=[\\w-]{32}; Path=/; HttpOnly; SameSite=Strict\r\n");
    }

    /** DNS rebinding: a name of somebody else that leads to this computer. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "evil.example",
                "evil.example:PORT",
                "127.0.0.1",
                "127.0.0.1:1",
                "127.0.0.1.evil.example:PORT",
                "0.0.0.0:PORT",
                "[::1]:PORT",
                ""
            })
    void another_name_of_this_computer_is_turned_away(String host) throws IOException {
        String answer = raw("GET /look/page.css HTTP/1.1\r\nHost: " + host.replace("PORT", "" + page.server.port())
                + "\r\nConnection: close\r\n\r\n");

        assertThat(answer).matches("(?s)HTTP/1.1 (421|400) .*").doesNotContain("skip");
    }

    @Test
    void its_own_names_are_let_through() throws IOException {
        for (String host : List.of("127.0.0.1", "localhost")) {
            assertThat(raw("GET /look/page.css HTTP/1.1\r\nHost: " + host + ":" + page.server.port()
                            + "\r\nConnection: close\r\n\r\n"))
                    .startsWith("HTTP/1.1 200 ");
        }
    }

    /** A whole address in the first line counts as the host (RFC 9112, 3.2.2). */
    @Test
    void an_address_in_the_first_line_is_a_host_too() throws IOException {
        assertThat(raw("GET http://evil.example/look/page.css HTTP/1.1\r\nHost: 127.0.0.1:" + page.server.port()
                        + "\r\nConnection: close\r\n\r\n"))
                .matches("(?s)HTTP/1.1 4\\d\\d .*");
    }

    @ParameterizedTest
    @CsvSource({
        "cross-site, no-cors, image",
        "cross-site, cors, empty",
        "same-site, cors, empty",
        "cross-site, navigate, iframe",
        "same-site, no-cors, script"
    })
    void a_foreign_page_reads_nothing(String site, String mode, String dest) {
        page.enter();
        var request = page.request("/desk")
                .header("Sec-Fetch-Site", site)
                .header("Sec-Fetch-Mode", mode)
                .header("Sec-Fetch-Dest", dest)
                .build();

        assertThat(page.send(request).statusCode()).isEqualTo(403);
    }

    @Test
    void no_page_may_be_shared_framed_or_kept() {
        HttpResponse<String> desk = page.enter().get("/desk");

        assertThat(desk.statusCode()).isEqualTo(200);
        assertThat(desk.headers().firstValue("Access-Control-Allow-Origin")).isEmpty();
        assertThat(desk.headers().firstValue("X-Frame-Options")).contains("DENY");
        assertThat(desk.headers().firstValue("Cache-Control")).contains("no-store");
        assertThat(desk.headers().firstValue("Server")).isEmpty();
        assertThat(desk.headers().firstValue("Content-Security-Policy").orElse(""))
                .contains("default-src 'none'", "frame-ancestors 'none'", "form-action 'self'")
                .doesNotContain("unsafe", "*");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/fridge", "/desk"})
    void nothing_is_written_into_a_page_that_runs(String path) {
        assertThat(page.enter().get(path).body())
                .doesNotContainPattern("<script(?![^>]* src=\"/look/)")
                .doesNotContainPattern("<style|\\sstyle=|\\son[a-z]+=|javascript:");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"http://evil.example", "null", "https://127.0.0.1", "http://127.0.0.1", "http://localhost:1"})
    void what_another_page_sends_is_not_taken(String origin) throws IOException {
        page.enter();
        String token = page.token();
        String before = book();

        var request = page.form("/fridge/weighed", token, "eater", "desk-cutting", "words", "80")
                .header("Origin", origin)
                .build();

        assertThat(page.send(request).statusCode()).isEqualTo(403);
        assertThat(book()).isEqualTo(before);
    }

    @Test
    void nor_what_says_nothing_of_its_origin() {
        page.enter();

        assertThat(page.send(page.form("/fridge/weighed", page.token(), "eater", "desk-cutting", "words", "80")
                                .build())
                        .statusCode())
                .isEqualTo(403);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "wrong", "AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA"})
    void nor_what_lacks_the_token(String token) throws IOException {
        page.enter();
        String before = book();
        var request = page.form("/fridge/weighed", token, "eater", "desk-cutting", "words", "80")
                .header("Origin", page.origin())
                .build();

        assertThat(page.send(request).statusCode()).isEqualTo(403);
        assertThat(book()).isEqualTo(before);
    }

    @Test
    void a_token_is_of_one_visitor() {
        String token = page.enter().token();
        page.enter();
        var request = page.form("/desk", token).header("Origin", page.origin()).build();

        assertThat(page.send(request).statusCode()).isEqualTo(403);
    }

    /** But with token and origin it is written: the tests above could fail. */
    @Test
    void a_page_of_ours_writes() throws IOException {
        assertThat(page.enter()
                        .post("/fridge/weighed", "eater", "desk-cutting", "words", "90")
                        .statusCode())
                .isEqualTo(200);
        assertThat(book()).contains("2026-11-30 weighed desk-cutting 90 kg");
    }

    private static String book() throws IOException {
        Path book = page.folder.resolve("profiles/book.txt");
        return Files.exists(book) ? Files.readString(book) : "";
    }

    @ParameterizedTest
    @ValueSource(strings = {"PUT", "DELETE", "PATCH", "OPTIONS", "TRACE"})
    void only_reading_and_sending_is_known(String method) throws IOException {
        assertThat(raw(method + " /desk HTTP/1.1\r\nHost: 127.0.0.1:" + page.server.port()
                        + "\r\nContent-Length: 0\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 405 ");
    }

    @Test
    void too_much_is_not_read() throws IOException {
        assertThat(raw("POST /desk HTTP/1.1\r\nHost: 127.0.0.1:" + page.server.port() + "\r\nOrigin: " + page.origin()
                        + "\r\nContent-Length: 70000\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 413 ");
    }

    @Test
    void nor_what_does_not_say_how_long_it_is() throws IOException {
        assertThat(raw("POST /desk HTTP/1.1\r\nHost: 127.0.0.1:" + page.server.port() + "\r\nOrigin: " + page.origin()
                        + "\r\nTransfer-Encoding: chunked\r\nConnection: close\r\n\r\n0\r\n\r\n"))
                .startsWith("HTTP/1.1 411 ");
    }

    @Test
    void only_forms_are_taken() {
        page.enter();
        var request = page.request("/desk")
                .header("Origin", page.origin())
                .header("Content-Type", "text/plain")
                .POST(BodyPublishers.ofString("a=b"))
                .build();

        assertThat(page.send(request).statusCode()).isEqualTo(415);
    }

    @Test
    void headers_are_limited() throws IOException {
        assertThat(raw("GET /look/page.css HTTP/1.1\r\nHost: 127.0.0.1:" + page.server.port() + "\r\nX: "
                        + "x".repeat(20_000) + "\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 431 ")
                .doesNotContainIgnoringCase("jetty");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/look/",
                "/look/..%2f..%2fprofiles%2fdesk-cutting.yaml",
                "/look/%2e%2e/foods/shop.csv",
                "/foods/shop.csv",
                "/profiles/",
                "/look/..;/desk",
                "/fridge/weight/..%2f..%2fetc%2fpasswd",
                "/WEB-INF/web.xml",
                "/META-INF/MANIFEST.MF"
            })
    void no_file_is_served_by_its_name(String path) throws IOException {
        page.enter();
        String answer = page.get(path).body();

        assertThat(page.get(path).statusCode()).isBetween(400, 499);
        assertThat(answer).doesNotContain("weight:", "root:", page.folder.toString());
    }

    @Test
    void a_fault_inside_says_nothing_of_the_inside() throws IOException {
        Path profile = page.folder.resolve("profiles/odd.yaml");
        Files.writeString(profile, "body: [");
        try {
            HttpResponse<String> answer =
                    page.enter().post("/desk", "eater", "odd", "days", "3", "dishes", "3", "sessions", "1");
            assertThat(answer.body()).doesNotContain("Exception", "batchwright.", "java.", "at org.");
        } finally {
            Files.delete(profile);
        }
    }

    @Test
    void too_many_requests_at_once_wait() throws IOException, InterruptedException {
        try (OpenedPage other = new OpenedPage(page.folder)) {
            other.enter();
            int turnedAway = 0;
            for (int i = 0; i < 400; i++) {
                turnedAway += other.get("/look/page.js").statusCode() == 429 ? 1 : 0;
            }
            assertThat(turnedAway).isPositive();
            Thread.sleep(1000);
            assertThat(other.get("/look/page.js").statusCode()).isEqualTo(200);
        }
    }

    /** Over a bare connection: a client would not send what is not allowed. */
    private static String raw(String request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), page.server.port())) {
            socket.setSoTimeout(10_000);
            socket.getOutputStream().write(request.getBytes(UTF_8));
            socket.getOutputStream().flush();
            return new String(socket.getInputStream().readAllBytes(), UTF_8);
        }
    }
}

package batchwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.io.IOException;
import java.net.CookieManager;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A phone comes in by the key it was shown, once; and is out when the computer says so. */
class PhoneTest {
    private static final Pattern KEY = Pattern.compile("/pair\\?key=([\\w-]{32})");

    private final HttpClient phone = HttpClient.newBuilder()
            .cookieHandler(new CookieManager())
            .followRedirects(HttpClient.Redirect.NORMAL)
            .build();

    private OpenedPage page;

    @BeforeEach
    void open(@TempDir Path folder) throws IOException {
        page = OpenedPage.small(folder).enter();
    }

    @AfterEach
    void close() {
        page.close();
    }

    private String host() {
        return "http://127.0.0.2:" + page.server.port();
    }

    private boolean isReached() {
        try (Socket socket = new Socket()) {
            socket.connect(new InetSocketAddress(OpenedPage.OTHER, page.server.port()), 2000);
            return true;
        } catch (IOException refused) {
            return false;
        }
    }

    private String key() {
        Matcher key = KEY.matcher(page.post("/phone/on").body());
        assertThat(key.find()).isTrue();
        return key.group(1);
    }

    private HttpResponse<String> pair(HttpClient with, String key) throws Exception {
        return with.send(
                HttpRequest.newBuilder(URI.create(host() + "/pair"))
                        .header("Origin", host())
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(BodyPublishers.ofString("key=" + key))
                        .build(),
                BodyHandlers.ofString());
    }

    private int status(String path) throws Exception {
        return phone.send(HttpRequest.newBuilder(URI.create(host() + path)).build(), BodyHandlers.ofString())
                .statusCode();
    }

    @Test
    void the_network_reaches_nothing_until_it_is_switched_on() {
        assertThat(isReached()).isFalse();
        page.post("/phone/on");
        assertThat(isReached()).isTrue();
        page.post("/phone/off");
        assertThat(isReached()).isFalse();
    }

    @Test
    void a_key_pairs_one_phone_once() throws Exception {
        String key = key();
        assertThat(status("/fridge")).isEqualTo(403);
        assertThat(pair(phone, key).statusCode()).isEqualTo(200);
        assertThat(status("/fridge")).isEqualTo(200);
        assertThat(page.get("/phone").body()).contains("A phone, since ");

        assertThat(pair(HttpClient.newHttpClient(), key).statusCode()).isEqualTo(403);
        assertThat(pair(HttpClient.newHttpClient(), "A".repeat(32)).statusCode()).isEqualTo(403);
    }

    @Test
    void to_look_at_the_address_uses_no_key_up() throws Exception {
        String key = key();
        assertThat(status("/pair?key=" + key)).isEqualTo(200);

        assertThat(pair(phone, key).statusCode()).isEqualTo(200);
    }

    @Test
    void a_phone_that_was_ended_is_out() throws Exception {
        pair(phone, key());
        Matcher number = Pattern.compile("name=\"phone\" value=\"(\\d+)\"").matcher(page.get("/phone").body());
        assertThat(number.find()).isTrue();
        page.post("/phone/end", "phone", number.group(1));

        assertThat(status("/fridge")).isEqualTo(403);
    }

    @Test
    void a_phone_lets_no_other_in() throws Exception {
        pair(phone, key());

        assertThat(status("/phone")).isEqualTo(422);
    }

    /** The key of this computer is not for the network. */
    @Test
    void the_key_of_the_terminal_opens_nothing_from_the_network() throws Exception {
        key();
        String here = page.server.address().replaceFirst(".*key=", "");

        assertThat(pair(phone, here).statusCode()).isEqualTo(403);
    }

    /** Read by a reader of codes as a camera would. */
    @Test
    void the_code_in_the_terminal_says_the_address() throws Exception {
        String key = key();
        String[] lines = page.terminal.get(0).split("\n");
        String[] code = Arrays.copyOfRange(lines, 2, lines.length);
        int width = code[0].length();
        int scale = 4;
        int[] pixels = new int[width * scale * code.length * 2 * scale];
        for (int y = 0; y < code.length * 2 * scale; y++) {
            for (int x = 0; x < width * scale; x++) {
                char block = code[y / scale / 2].charAt(x / scale);
                boolean upper = y / scale % 2 == 0;
                boolean light = block == '\u2588' || block == (upper ? '\u2580' : '\u2584');
                pixels[y * width * scale + x] = light ? 0xFFFFFF : 0;
            }
        }
        var picture = new RGBLuminanceSource(width * scale, code.length * 2 * scale, pixels);

        assertThat(new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(picture))).getText())
                .isEqualTo(host() + "/pair?key=" + key);
    }
}

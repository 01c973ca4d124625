package batchwright.report.html;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Firefox without a window, spoken to in WebDriver BiDi (<a href="https://www.w3.org/TR/webdriver-bidi/">W3C</a>), as no driver is packaged for it.
 * {@code .ci/run} installs it; without it a test that asks for it is skipped, unless the system property {@code batchwright.cross-checks} is
 * {@code required}.
 */
public final class Firefox implements AutoCloseable {
    private static final Path BROWSER = Path.of("/usr/bin/firefox-esr");
    private static final boolean REQUIRED = "required".equals(System.getProperty("batchwright.cross-checks"));
    private static final Pattern LISTENING = Pattern.compile("WebDriver BiDi listening on (ws://\\S+)");
    private static final int SECONDS = 60;

    private final ObjectMapper json = new ObjectMapper();
    private final BlockingQueue<String> received = new LinkedBlockingQueue<>();
    private final Path folder;
    private final Process process;
    private final WebSocket socket;
    private final String tab;
    private int asked;

    private Firefox(Path folder) throws IOException, InterruptedException {
        this.folder = folder;
        Path profile = Files.createDirectory(folder.resolve("firefox"));
        var builder = new ProcessBuilder(
                BROWSER.toString(),
                "--headless",
                "--no-remote",
                "--profile",
                profile.toString(),
                "--remote-debugging-port",
                "0",
                "about:blank");
        builder.environment().put("HOME", folder.toString());
        process = builder.redirectErrorStream(true).start();
        socket = HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .buildAsync(URI.create(address(process.inputReader()) + "/session"), new Messages(received))
                .join();
        socket.request(Long.MAX_VALUE);
        ask("session.new", params("capabilities", json.createObjectNode()));
        tab = ask("browsingContext.getTree", json.createObjectNode())
                .at("/contexts/0/context")
                .textValue();
    }

    public static Firefox start(Path folder) throws IOException, InterruptedException {
        assumeTrue(REQUIRED || Files.exists(BROWSER), "Firefox is not there: apt-get install firefox-esr");
        return new Firefox(folder);
    }

    private static String address(BufferedReader said) throws IOException {
        for (String line = said.readLine(); line != null; line = said.readLine()) {
            Matcher listening = LISTENING.matcher(line);
            if (listening.find()) {
                return listening.group(1);
            }
        }
        throw new IOException("Firefox ended before it listened");
    }

    /**
     * The page printed at its own size, on paper as large as its style sheet asks for where Firefox follows that, else on the given one.
     *
     * @param widthMm of the paper
     * @param heightMm of the paper
     */
    byte[] pdf(String html, double widthMm, double heightMm) throws IOException, InterruptedException {
        Path file = folder.resolve("printed.html");
        Files.writeString(file, html);
        ObjectNode open = tab().put("url", file.toUri().toString()).put("wait", "complete");
        ask("browsingContext.navigate", open);
        ObjectNode print = tab().put("background", true).put("shrinkToFit", false);
        print.putObject("page").put("width", widthMm / 10).put("height", heightMm / 10);
        return Base64.getDecoder()
                .decode(ask("browsingContext.print", print).get("data").textValue());
    }

    /** Opens an address. */
    public void go(String address) throws IOException, InterruptedException {
        ask("browsingContext.navigate", tab().put("url", address).put("wait", "complete"));
    }

    /** The value of a script, as text; it counts as a tap of the user. */
    public String run(String script) throws IOException, InterruptedException {
        ObjectNode evaluate = json.createObjectNode()
                .put("expression", script)
                .put("awaitPromise", true)
                .put("userActivation", true);
        evaluate.putObject("target").put("context", tab);
        JsonNode answer = ask("script.evaluate", evaluate);
        if (!answer.path("type").asText().equals("success")) {
            throw new IOException(script + ": " + answer);
        }
        return answer.at("/result/value").asText();
    }

    private ObjectNode tab() {
        return json.createObjectNode().put("context", tab);
    }

    private ObjectNode params(String name, JsonNode value) {
        return json.createObjectNode().set(name, value);
    }

    private JsonNode ask(String method, ObjectNode params) throws IOException, InterruptedException {
        int id = ++asked;
        socket.sendText(
                        json.createObjectNode()
                                .put("id", id)
                                .put("method", method)
                                .<ObjectNode>set("params", params)
                                .toString(),
                        true)
                .join();
        while (true) {
            String text = received.poll(SECONDS, TimeUnit.SECONDS);
            if (text == null) {
                throw new IOException("Firefox gave no answer to " + method);
            }
            JsonNode message = json.readTree(text);
            if (message.path("id").intValue() == id) {
                if (!message.path("type").asText().equals("success")) {
                    throw new IOException(method + ": " + text);
                }
                return message.get("result");
            }
        }
    }

    @Override
    public void close() {
        socket.abort();
        process.destroy();
        try {
            process.waitFor(10, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        process.destroyForcibly();
    }

    /** Whole messages, of the parts they come in. */
    private static final class Messages implements WebSocket.Listener {
        private final BlockingQueue<String> whole;
        private final StringBuilder parts = new StringBuilder();

        Messages(BlockingQueue<String> whole) {
            this.whole = whole;
        }

        @Override
        public @Nullable CompletionStage<?> onText(WebSocket socket, CharSequence data, boolean last) {
            parts.append(data);
            if (last) {
                whole.add(parts.toString());
                parts.setLength(0);
            }
            return null;
        }
    }
}

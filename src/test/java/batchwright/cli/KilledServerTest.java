package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The page as a process of its own that is killed: everything that it had answered is in the book. */
@Timeout(120)
class KilledServerTest {
    private static final Pattern ADDRESS = Pattern.compile("http://127\\.0\\.0\\.1:\\d+/\\S+");
    private static final Pattern TOKEN = Pattern.compile("name=\"token\" value=\"([^\"]+)\"");

    @TempDir
    Path kitchen;

    @TempDir
    Path outside;

    @Test
    void what_was_answered_before_it_was_killed_is_there_when_it_starts_again() throws Exception {
        Folders.starter(kitchen);
        List<String> eaters = List.of("desk-cutting", "parent-holding");
        for (String eater : eaters) {
            Path out = outside.resolve("out-of-" + eater);
            Process server = Shell.start(
                    kitchen, out, outside.resolve("err"), "serve --port 0 --data " + kitchen.toAbsolutePath());
            try {
                weigh(found(ADDRESS, out, server), eater);
            } finally {
                server.destroyForcibly();
            }
            assertThat(server.waitFor(60, TimeUnit.SECONDS)).isTrue();
            assertThat(Files.readString(kitchen.resolve("profiles/book.txt"))).contains("weighed " + eater + " 81 kg");
        }
        assertThat(Cli.in(kitchen).run("check").code()).isZero();
        assertThat(Files.readString(kitchen.resolve("profiles/book.txt")))
                .contains(eaters.stream()
                        .map(eater -> "weighed " + eater + " 81 kg")
                        .toList());
    }

    private static void weigh(String address, String eater) throws IOException, InterruptedException {
        HttpClient client = HttpClient.newBuilder()
                .cookieHandler(new CookieManager())
                .followRedirects(HttpClient.Redirect.NORMAL)
                .build();
        URI at = URI.create(address);
        String origin = "http://127.0.0.1:" + at.getPort();
        var unused = client.send(HttpRequest.newBuilder(at).build(), BodyHandlers.ofString());
        String desk = client.send(
                        HttpRequest.newBuilder(URI.create(origin + "/desk")).build(), BodyHandlers.ofString())
                .body();
        Matcher token = TOKEN.matcher(desk);
        assertThat(token.find()).isTrue();
        HttpResponse<String> answered = client.send(
                HttpRequest.newBuilder(URI.create(origin + "/fridge/weighed"))
                        .header("Origin", origin)
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(
                                "token=" + token.group(1) + "&words=81&sure=yes&eater=" + eater))
                        .build(),
                BodyHandlers.ofString());
        assertThat(answered.statusCode()).as(answered.body()).isEqualTo(200);
    }

    private static String found(Pattern pattern, Path out, Process server) throws IOException, InterruptedException {
        while (server.isAlive()) {
            Matcher matcher = pattern.matcher(Files.exists(out) ? Files.readString(out) : "");
            if (matcher.find()) {
                return matcher.group();
            }
            Thread.sleep(20);
        }
        throw new AssertionError("it ended: " + Files.readString(out));
    }
}

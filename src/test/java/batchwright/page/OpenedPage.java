package batchwright.page;

import batchwright.app.MakePlan;
import batchwright.app.WriteStarterFiles;
import batchwright.page.guard.Hosts;
import batchwright.page.phone.NetworkDoor;
import java.io.IOException;
import java.net.CookieManager;
import java.net.InetAddress;
import java.net.URI;
import java.net.URLEncoder;
import java.net.UnknownHostException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The page of a kitchen in a folder, on a free port, with somebody who visits it as a browser without scripts would. */
final class OpenedPage implements AutoCloseable {
    static final LocalDate DAY = LocalDate.of(2026, 11, 30);

    private static final Pattern TOKEN = Pattern.compile("name=\"token\" value=\"([^\"]+)\"");

    /** Stands for the network of the house: another address of this computer, which nobody outside reaches. */
    static final InetAddress OTHER = other();

    final PageServer server;
    final Path folder;
    final List<Throwable> faults = new CopyOnWriteArrayList<>();
    final List<String> terminal = new CopyOnWriteArrayList<>();
    private HttpClient client = fresh();
    private String token = "";

    OpenedPage(Path folder) {
        this.folder = folder;
        var hosts = new Hosts();
        this.server = WholePage.open(
                new PageFiles(Optional.of(folder), folder, Clock.systemUTC(), Optional.of(DAY)),
                new MakePlan(),
                0,
                new NetworkDoor(hosts, () -> List.of(OTHER)),
                hosts,
                terminal::add,
                faults::add);
    }

    /** The starter kitchen with few dishes, so that a search is short. */
    static OpenedPage small(Path folder) throws IOException {
        return new OpenedPage(smallKitchen(folder));
    }

    static Path smallKitchen(Path folder) throws IOException {
        new WriteStarterFiles().into(folder);
        List<String> kept = List.of("lentil_ragu.yaml", "turkey_chili.yaml", "chickpea_tagine.yaml");
        try (Stream<Path> dishes = Files.list(folder.resolve("foods/dishes"))) {
            for (Path other : dishes.filter(d -> Files.isRegularFile(d)
                            && !kept.contains(d.getFileName().toString()))
                    .toList()) {
                Files.delete(other);
            }
        }
        return folder;
    }

    private static InetAddress other() {
        try {
            return InetAddress.getByAddress(new byte[] {127, 0, 0, 2});
        } catch (UnknownHostException e) {
            throw new IllegalStateException(e);
        }
    }

    private static HttpClient fresh() {
        return HttpClient.newBuilder()
                .cookieHandler(new CookieManager())
                .followRedirects(HttpClient.Redirect.NORMAL)
                .connectTimeout(Duration.ofSeconds(10))
                .build();
    }

    String origin() {
        return "http://127.0.0.1:" + server.port();
    }

    /** With the key, as from the terminal. */
    OpenedPage enter() {
        client = fresh();
        token = "";
        send(HttpRequest.newBuilder(URI.create(server.address())).build());
        return this;
    }

    /** Somebody whom nobody let in. */
    OpenedPage stranger() {
        client = fresh();
        return this;
    }

    HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(origin() + path)).timeout(Duration.ofSeconds(60));
    }

    HttpResponse<String> get(String path) {
        return send(request(path).build());
    }

    HttpResponse<String> send(HttpRequest request) {
        try {
            return client.send(request, BodyHandlers.ofString(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Something that is no text. */
    byte[] bytes(String path) {
        try {
            return client.send(request(path).build(), BodyHandlers.ofByteArray())
                    .body();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The token of a page that has a form. */
    String token() {
        if (token.isEmpty()) {
            Matcher found = TOKEN.matcher(get("/desk").body());
            if (!found.find()) {
                throw new IllegalStateException("the desk has no token");
            }
            token = found.group(1);
        }
        return token;
    }

    /** Sends a form as a page of ours would. */
    HttpResponse<String> post(String path, String... namesAndValues) {
        return send(
                form(path, token(), namesAndValues).header("Origin", origin()).build());
    }

    HttpRequest.Builder form(String path, String token, String... namesAndValues) {
        List<String> pairs = new ArrayList<>(List.of("token=" + coded(token)));
        for (int i = 0; i < namesAndValues.length; i += 2) {
            pairs.add(coded(namesAndValues[i]) + "=" + coded(namesAndValues[i + 1]));
        }
        return request(path)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(String.join("&", pairs)));
    }

    private static String coded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    String file(String path) throws IOException {
        return Files.readString(folder.resolve(path));
    }

    @Override
    public void close() {
        server.close();
    }
}

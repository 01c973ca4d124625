package batchwright.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Style sheets and scripts of the page, all of them our own and all in memory: a name that is not among them is nothing. */
final class Look {
    record Piece(String type, byte[] content) {}

    private static final String CSS = "text/css; charset=utf-8";
    private static final String SCRIPT = "text/javascript; charset=utf-8";

    private final Map<String, Piece> pieces = new LinkedHashMap<>();

    Look() {
        put("report.css", CSS, "/batchwright/report/html/report.css");
        put("page.css", CSS, "/batchwright/page/page.css");
        put("page.js", SCRIPT, "/batchwright/page/page.js");
        put("kitchen.css", CSS, "/batchwright/page/kitchen.css");
        put("shop.js", SCRIPT, "/batchwright/page/shop.js");
        put("stove.js", SCRIPT, "/batchwright/page/stove.js");
        put("icon.svg", "image/svg+xml", "/batchwright/page/icon.svg");
        put("desk.js", SCRIPT, "/batchwright/page/desk.js");
    }

    Optional<Piece> of(String name) {
        return Optional.ofNullable(pieces.get(name));
    }

    private void put(String name, String type, String resource) {
        try (InputStream in = Look.class.getResourceAsStream(resource)) {
            pieces.put(name, new Piece(type, Objects.requireNonNull(in, resource).readAllBytes()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

package batchwright.page;

import batchwright.page.guard.Gate;
import io.javalin.config.RoutesConfig;
import io.javalin.http.sse.SseClient;
import java.util.function.Consumer;

/** Which page stands where. A path is fixed; a part of it in braces is looked up among what is known, never used as a name of a file. */
public final class Routes {
    private final RoutesConfig routes;
    private final PageFiles files;

    Routes(RoutesConfig routes, PageFiles files) {
        this.routes = routes;
        this.files = files;
    }

    /** Shows something and changes nothing. */
    public Routes get(String path, Consumer<Visit> page) {
        routes.get(path, request -> page.accept(new Visit(request, Gate.visitor(request), files)));
        return this;
    }

    /** Changes something. */
    public Routes post(String path, Consumer<Visit> page) {
        routes.post(path, request -> page.accept(new Visit(request, Gate.visitor(request), files)));
        return this;
    }

    /** Tells something as it comes (server-sent events). */
    public Routes events(String path, java.util.function.BiConsumer<Visit, SseClient> teller) {
        routes.sse(path, client -> {
            client.keepAlive();
            teller.accept(new Visit(client.ctx(), Gate.visitor(client.ctx()), files), client);
        });
        return this;
    }
}

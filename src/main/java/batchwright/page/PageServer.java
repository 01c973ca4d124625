package batchwright.page;

import batchwright.answer.Fault;
import batchwright.app.Refused;
import batchwright.page.guard.Gate;
import batchwright.page.guard.Hosts;
import batchwright.page.guard.NotLetIn;
import batchwright.page.guard.RateLimit;
import batchwright.page.guard.Visitors;
import batchwright.report.html.part.Templates;
import batchwright.report.html.web.Closed;
import batchwright.report.html.web.PairPage;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import io.javalin.util.JavalinBindException;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.util.Callback;
import org.eclipse.jetty.util.thread.QueuedThreadPool;

/** Serves the page on this computer, and to nobody else unless it is told to. */
public final class PageServer implements AutoCloseable {
    private static final String LOOPBACK = "127.0.0.1";
    private static final int MOST_THREADS = 24;
    /** A page is a handful of requests; a slider sends ten a second. Our choice. */
    private static final int AT_ONCE = 120;

    private static final int A_SECOND = 40;

    private final PageFiles files;
    private final Visitors visitors;
    private final Hosts hosts;
    private final Gate gate;
    private final Look look = new Look();
    private final List<Situation> situations;
    private final Consumer<Throwable> fault;
    private final Javalin app;

    /** @param fault takes what went wrong inside; a page says only that something did */
    private PageServer(
            PageFiles files, Visitors visitors, Hosts hosts, List<Situation> situations, Consumer<Throwable> fault) {
        this.files = files;
        this.visitors = visitors;
        this.hosts = hosts;
        this.situations = situations;
        this.fault = fault;
        this.gate = new Gate(hosts, visitors, new RateLimit(AT_ONCE, A_SECOND, System::nanoTime));
        this.app = Javalin.create(this::set);
    }

    /**
     * @param port on which to listen; 0 for any that is free
     * @throws Refused when the port is taken
     */
    public static PageServer start(
            PageFiles files,
            Visitors visitors,
            Hosts hosts,
            List<Situation> situations,
            int port,
            Consumer<Throwable> fault) {
        var server = new PageServer(files, visitors, hosts, situations, fault);
        try {
            server.app.start(LOOPBACK, port);
        } catch (JavalinBindException taken) {
            throw Refused.because(
                    "port " + port + " of this computer cannot be listened on",
                    "Perhaps the page runs already; or name another port.");
        }
        server.hosts.listenOn(server.app.port());
        return server;
    }

    /** The address to open, with the key that lets a browser in. */
    public String address() {
        return "http://" + LOOPBACK + ":" + app.port() + Gate.ENTER + "?key="
                + visitors.here().text();
    }

    public int port() {
        return app.port();
    }

    /** The server below, for a second door to it. */
    public Server jetty() {
        return app.jettyServer().server();
    }

    private void set(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.maxRequestSize = Gate.MOST_BYTES;
        config.jetty.threadPool = new QueuedThreadPool(MOST_THREADS);
        config.jetty.modifyHttpConfiguration(http -> {
            http.setSendServerVersion(false);
            http.setSendDateHeader(false);
            http.setRequestHeaderSize(Gate.MOST_BYTES / 8);
        });
        config.jetty.modifyServer(server -> server.setErrorHandler(PageServer::bare));
        config.routes.before(gate::pass);
        config.routes.get(Gate.ENTER, request -> enter(request));
        config.routes.get(Gate.PAIR, PageServer::askToPair);
        config.routes.post(Gate.PAIR, request -> pair(request));
        config.routes.get(Gate.LOOK + "{name}", this::look);
        var routes = new Routes(config.routes, files);
        situations.forEach(situation -> situation.open(routes));
        config.routes.exception(
                NotLetIn.class, (no, request) -> closed(request, no.status(), said(no.wrong()), no.cure()));
        config.routes.exception(Refused.class, (no, request) -> refused(request, no));
        config.routes.exception(
                HttpResponseException.class,
                (no, request) -> closed(
                        request,
                        no.getStatus(),
                        no.getStatus() == 404 ? "There is no such page." : "That cannot be done.",
                        ""));
        config.routes.exception(Exception.class, this::failed);
    }

    private void enter(Context request) {
        gate.enter(request, Objects.requireNonNullElse(request.queryParam("key"), ""));
        request.redirect("/", HttpStatus.SEE_OTHER);
    }

    private static void askToPair(Context request) {
        String key = Objects.requireNonNullElse(request.queryParam("key"), "");
        request.contentType("text/html; charset=utf-8").result(Templates.render("web/pair", new PairPage(key)));
    }

    private void pair(Context request) {
        gate.pair(request, Objects.requireNonNullElse(request.formParam("key"), ""));
        request.redirect("/", HttpStatus.SEE_OTHER);
    }

    private void look(Context request) {
        Optional<Look.Piece> piece = look.of(request.pathParam("name"));
        if (piece.isPresent()) {
            request.contentType(piece.get().type()).result(piece.get().content());
        } else {
            closed(request, 404, "There is no such page.", "");
        }
    }

    private void refused(Context request, Refused no) {
        String wrong = String.join(
                " ",
                no.faults().stream().map(Fault::wrong).map(PageServer::said).toList());
        String cure = String.join(
                " ", no.faults().stream().map(Fault::cure).distinct().toList());
        closed(request, 422, wrong, cure);
    }

    private void failed(Exception thrown, Context request) {
        fault.accept(thrown);
        closed(request, 500, "Something went wrong inside the program.", "Your files are unchanged.");
    }

    private static String said(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1) + ".";
    }

    private static void closed(Context request, int status, String wrong, String cure) {
        request.status(status);
        request.contentType("text/html; charset=utf-8").result(Templates.render("web/closed", new Closed(wrong, cure)));
    }

    /** What the server says by itself to a request that is none. */
    private static boolean bare(Request request, Response response, Callback done) {
        response.getHeaders().put("Content-Type", "text/plain;charset=utf-8");
        Content.Sink.write(response, true, "That was no request.\n", done);
        return true;
    }

    @Override
    public void close() {
        situations.forEach(Situation::close);
        app.stop();
    }
}

package batchwright.page.guard;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * What every request must pass, before anything is done with it: the right name of this computer, not too often, not from a foreign page,
 * with the cookie of somebody who was let in, and, when it changes something, with the token of a page of ours.
 */
public final class Gate {
    public static final String ENTER = "/enter";
    public static final String PAIR = "/pair";
    /** Style sheets and scripts: nothing of the user's. */
    public static final String LOOK = "/look/";

    /** Of a body; a form has a few hundred bytes. */
    public static final int MOST_BYTES = 64 * 1024;

    public static final String TOKEN_FIELD = "token";
    public static final String TOKEN_HEADER = "X-Token";

    private static final String COOKIE = "batchwright";
    private static final String VISITOR = "visitor";
    private static final String FORM = "application/x-www-form-urlencoded";
    private static final String AGAIN = "Open the address that the program printed when it started.";

    /** Content Security Policy Level 3, and what else keeps a page to itself. */
    private static final Map<String, String> HEADERS = Map.of(
            "Content-Security-Policy",
            "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; connect-src 'self';"
                    + " form-action 'self'; base-uri 'none'; frame-ancestors 'none'",
            "X-Content-Type-Options",
            "nosniff",
            "X-Frame-Options",
            "DENY",
            "Referrer-Policy",
            "same-origin",
            "Cross-Origin-Resource-Policy",
            "same-origin",
            "Cross-Origin-Opener-Policy",
            "same-origin",
            "Permissions-Policy",
            "camera=(), microphone=(), geolocation=()",
            "Cache-Control",
            "no-store");

    private final Hosts hosts;
    private final Visitors visitors;
    private final RateLimit limit;

    public Gate(Hosts hosts, Visitors visitors, RateLimit limit) {
        this.hosts = hosts;
        this.visitors = visitors;
        this.limit = limit;
    }

    /** @throws NotLetIn when the request is turned away */
    public void pass(Context request) {
        HEADERS.forEach(request::header);
        String host = header(request, "Host");
        if (!hosts.isOurs(host)) {
            throw new NotLetIn(421, "this page is not known by that name", AGAIN);
        }
        if (!limit.allows(request.ip())) {
            throw new NotLetIn(429, "too many requests at once", "Wait a moment, then reload the page.");
        }
        String method = request.req().getMethod();
        boolean reads = method.equals("GET") || method.equals("HEAD");
        if (!reads && !method.equals("POST")) {
            throw new NotLetIn(405, "this can only be read or sent", AGAIN);
        }
        refuseForeignPages(request, reads);
        if (!reads) {
            checkSent(request, host);
        }
        if (isOpen(request.path())) {
            return;
        }
        Visitor visitor = visitors.of(Objects.requireNonNullElse(request.cookie(COOKIE), ""))
                .orElseThrow(() -> new NotLetIn(403, "this browser was not let in, or is out again", AGAIN));
        if (!reads && !visitor.token().is(token(request))) {
            throw new NotLetIn(403, "what was sent did not come from a page of ours", "Reload the page, and send it again.");
        }
        request.attribute(VISITOR, visitor);
    }

    private static boolean isOpen(String path) {
        return path.equals(ENTER) || path.equals(PAIR) || path.startsWith(LOOK);
    }

    /** Browsers say where a request comes from (W3C Fetch Metadata): a foreign page may lead here, and no more. */
    private static void refuseForeignPages(Context request, boolean reads) {
        String site = header(request, "Sec-Fetch-Site");
        boolean leads = reads
                && header(request, "Sec-Fetch-Mode").equals("navigate")
                && header(request, "Sec-Fetch-Dest").equals("document");
        if (Set.of("cross-site", "same-site").contains(site) && !leads) {
            throw new NotLetIn(403, "another page asked for this", AGAIN);
        }
    }

    private void checkSent(Context request, String host) {
        if (!hosts.isOrigin(header(request, "Origin"), host)) {
            throw new NotLetIn(403, "another page sent this", AGAIN);
        }
        int length = request.contentLength();
        if (length < 0) {
            throw new NotLetIn(411, "what was sent does not say how long it is", AGAIN);
        }
        if (length > MOST_BYTES) {
            throw new NotLetIn(413, "more was sent than any form holds", "Write less.");
        }
        if (!header(request, "Content-Type").startsWith(FORM)) {
            throw new NotLetIn(415, "what was sent is no form", AGAIN);
        }
    }

    private static String token(Context request) {
        String header = header(request, TOKEN_HEADER);
        return header.isEmpty() ? Objects.requireNonNullElse(request.formParam(TOKEN_FIELD), "") : header;
    }

    private static String header(Context request, String name) {
        return Objects.requireNonNullElse(request.header(name), "");
    }

    /** Who asks; there is somebody behind every page that is not open to all. */
    public static Visitor visitor(Context request) {
        Visitor visitor = request.attribute(VISITOR);
        return Objects.requireNonNull(visitor, VISITOR);
    }

    /** Lets somebody on this computer in who has the key. */
    public void enter(Context request, String key) {
        letIn(request, isFromHere(request) ? visitors.letInHere(key) : Optional.empty());
    }

    /** Lets a phone in that has the key it was shown. */
    public void pair(Context request, String key) {
        letIn(request, visitors.letPhoneIn(key));
    }

    private static void letIn(Context request, Optional<Visitor> visitor) {
        Secret secret = visitor.map(Visitor::cookie)
                .orElseThrow(() -> new NotLetIn(403, "this key does not fit, or was used already", AGAIN));
        var cookie = new Cookie(COOKIE, secret.text());
        cookie.setPath("/");
        cookie.setHttpOnly(true);
        cookie.setSameSite(SameSite.STRICT);
        request.cookie(cookie);
    }

    private static boolean isFromHere(Context request) {
        try {
            return InetAddress.getByName(request.req().getRemoteAddr()).isLoopbackAddress();
        } catch (UnknownHostException notAnAddress) {
            return false;
        }
    }
}

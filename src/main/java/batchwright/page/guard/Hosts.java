package batchwright.page.guard;

import java.util.List;
import java.util.Optional;

/**
 * The names under which the page is reached. A request under any other name is turned away: a foreign name that was made to lead here
 * (DNS rebinding) would let its own scripts in.
 */
public final class Hosts {
    private volatile List<String> loopback = List.of();
    private volatile Optional<String> network = Optional.empty();

    /** The port is known only once the server listens. */
    public void listenOn(int port) {
        loopback = List.of("127.0.0.1:" + port, "localhost:" + port);
    }

    /** @param host address and port on the network of the house; empty when it is not reached from there */
    public void reachedFromNetwork(Optional<String> host) {
        network = host;
    }

    boolean isOurs(String host) {
        return loopback.contains(host) || network.filter(host::equals).isPresent();
    }

    /** Whether a page that stands under a host may send something to the same host. */
    boolean isOrigin(String origin, String host) {
        return origin.equals("http://" + host);
    }
}

package batchwright.page.phone;

import batchwright.app.Refused;
import batchwright.page.guard.Hosts;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;

/** The second door of the page, on the network of the house; closed until somebody opens it on this computer. */
public final class NetworkDoor {
    private static final int ACCEPTORS = 1;
    private static final int SELECTORS = 1;

    private final Hosts hosts;
    private final Supplier<List<InetAddress>> addresses;
    private Optional<Server> server = Optional.empty();
    private int port;
    private Optional<ServerConnector> open = Optional.empty();

    public NetworkDoor(Hosts hosts) {
        this(hosts, NetworkDoor::ofThisComputer);
    }

    /** @param addresses under which phones may reach this computer, the likeliest first */
    public NetworkDoor(Hosts hosts, Supplier<List<InetAddress>> addresses) {
        this.hosts = hosts;
        this.addresses = addresses;
    }

    /** Once the page is served on this computer. */
    public synchronized void of(Server jetty, int onPort) {
        server = Optional.of(jetty);
        port = onPort;
    }

    /** Address and port for phones; empty while the door is closed. */
    public synchronized Optional<String> host() {
        return open.map(connector -> connector.getHost() + ":" + connector.getLocalPort());
    }

    /** @throws Refused when this computer is on no network of a house, or cannot be reached there */
    public synchronized void open() {
        if (open.isPresent()) {
            return;
        }
        InetAddress address = addresses.get().stream()
                .findFirst()
                .orElseThrow(() -> Refused.because(
                        "this computer is on no network of the house", "Connect it, and try again."));
        Server jetty = server.orElseThrow();
        HttpConnectionFactory http = jetty.getConnectors()[0].getConnectionFactory(HttpConnectionFactory.class);
        var connector = new ServerConnector(jetty, ACCEPTORS, SELECTORS, new HttpConnectionFactory(http.getHttpConfiguration()));
        connector.setHost(address.getHostAddress());
        connector.setPort(port);
        jetty.addConnector(connector);
        try {
            connector.start();
        } catch (Exception taken) {
            jetty.removeConnector(connector);
            throw Refused.because(
                    "phones cannot reach port " + port + " of this computer", "Perhaps something else listens there; start the page with another port.");
        }
        open = Optional.of(connector);
        hosts.reachedFromNetwork(host());
    }

    /** Whoever is connected is cut off. */
    public synchronized void close() {
        hosts.reachedFromNetwork(Optional.empty());
        open.ifPresent(connector -> {
            server.ifPresent(jetty -> jetty.removeConnector(connector));
            try {
                connector.stop();
            } catch (Exception stopped) {
                connector.close();
            }
        });
        open = Optional.empty();
    }

    /** Addresses of private networks (RFC 1918) alone: nothing is opened to the world. */
    private static List<InetAddress> ofThisComputer() {
        try {
            return Collections.list(NetworkInterface.getNetworkInterfaces()).stream()
                    .filter(NetworkDoor::isUsed)
                    .flatMap(card -> Collections.list(card.getInetAddresses()).stream())
                    .filter(address -> address instanceof Inet4Address && address.isSiteLocalAddress())
                    .toList();
        } catch (SocketException none) {
            return List.of();
        }
    }

    private static boolean isUsed(NetworkInterface card) {
        try {
            return card.isUp() && !card.isLoopback() && !card.isPointToPoint() && !card.isVirtual();
        } catch (SocketException unknown) {
            return false;
        }
    }
}

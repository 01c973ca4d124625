package batchwright.page.phone;

import batchwright.app.Refused;
import batchwright.page.Routes;
import batchwright.page.Situation;
import batchwright.page.Visit;
import batchwright.page.guard.Gate;
import batchwright.page.guard.Secret;
import batchwright.page.guard.Visitor;
import batchwright.page.guard.Visitors;
import batchwright.report.html.web.PhonePage;
import batchwright.report.html.web.Place;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

/** Switches the door for phones, and says who came through it. Only this computer can. */
public final class PhoneSituation implements Situation {
    private static final String HERE = "/phone";
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("EEE d MMM, HH:mm", Locale.ENGLISH);

    private final Visitors visitors;
    private final NetworkDoor door;
    private final Consumer<String> terminal;
    private Optional<Secret> key = Optional.empty();

    /** @param terminal shows the address and its code as well */
    public PhoneSituation(Visitors visitors, NetworkDoor door, Consumer<String> terminal) {
        this.visitors = visitors;
        this.door = door;
        this.terminal = terminal;
    }

    @Override
    public void open(Routes routes) {
        routes.get(HERE, this::show)
                .post(HERE + "/on", this::on)
                .post(HERE + "/off", this::off)
                .post(HERE + "/end", this::end);
    }

    private static void refusePhones(Visit visit) {
        if (visit.visitor().isPhone()) {
            throw Refused.because("phones are switched on and off on the computer", "Go to it.");
        }
    }

    private synchronized void show(Visit visit) {
        refusePhones(visit);
        List<Visitor> phones = visitors.phones();
        visit.show(
                "phone",
                new PhonePage(
                        visit.frame(Place.PHONE, "Phone on the same network"),
                        address().map(address -> {
                            var code = new QrCode(address);
                            return new PhonePage.Invitation(
                                    address, code.path(), code.size(), (int) Visitors.PHONE_KEY_HOLDS.toMinutes());
                        }),
                        phones.stream()
                                .map(phone -> new PhonePage.Paired(phone.number(), since(phone)))
                                .toList()));
    }

    private static String since(Visitor phone) {
        return TIME.format(phone.since().atZone(ZoneId.systemDefault()));
    }

    private Optional<String> address() {
        return door.host().flatMap(host -> key.map(k -> "http://" + host + Gate.PAIR + "?key=" + k.text()));
    }

    private synchronized void on(Visit visit) {
        refusePhones(visit);
        door.open();
        key = Optional.of(visitors.phoneKey());
        address()
                .ifPresent(address -> terminal.accept("Open this address on a phone on the same network, once:\n"
                        + address + "\n" + new QrCode(address).blocks()));
        visit.go(HERE);
    }

    private synchronized void off(Visit visit) {
        refusePhones(visit);
        close();
        visit.go(HERE, "It is off, and no phone is paired any more.");
    }

    private void end(Visit visit) {
        refusePhones(visit);
        String number = visit.field("phone");
        visitors.phones().stream()
                .filter(phone -> Integer.toString(phone.number()).equals(number))
                .forEach(visitors::end);
        visit.go(HERE, "That phone is out.");
    }

    @Override
    public synchronized void close() {
        key = Optional.empty();
        visitors.endPhones();
        door.close();
    }
}

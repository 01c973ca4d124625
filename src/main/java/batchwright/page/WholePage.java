package batchwright.page;

import batchwright.app.MakePlan;
import batchwright.page.cupboard.CupboardSituation;
import batchwright.page.cupboard.EquipmentPage;
import batchwright.page.cupboard.LabelPage;
import batchwright.page.cupboard.NewDishPage;
import batchwright.page.desk.DeskSituation;
import batchwright.page.fridge.FridgeSituation;
import batchwright.page.guard.Hosts;
import batchwright.page.guard.Visitors;
import batchwright.page.phone.NetworkDoor;
import batchwright.page.phone.PhoneSituation;
import batchwright.page.shop.ShopSituation;
import batchwright.page.start.ChangeEater;
import batchwright.page.start.StartSituation;
import batchwright.page.start.UnitsChosen;
import batchwright.page.stove.StoveSituation;
import java.util.List;
import java.util.function.Consumer;

/** All situations of the page. A new one is named here. */
public final class WholePage {
    private WholePage() {}

    /**
     * @param port on which to listen; 0 for any that is free
     * @param terminal shows what a page has to say to whoever started it
     * @param fault takes what went wrong inside
     * @throws batchwright.app.Refused when the port is taken
     */
    public static PageServer open(
            PageFiles files, MakePlan plans, int port, Consumer<String> terminal, Consumer<Throwable> fault) {
        var hosts = new Hosts();
        return open(files, plans, port, new NetworkDoor(hosts), hosts, terminal, fault);
    }

    static PageServer open(
            PageFiles files,
            MakePlan plans,
            int port,
            NetworkDoor door,
            Hosts hosts,
            Consumer<String> terminal,
            Consumer<Throwable> fault) {
        var visitors = new Visitors(files.clock());
        var desk = new DeskSituation();
        List<Situation> situations = List.of(
                new Welcome(),
                new FridgeSituation(),
                new ShopSituation(plans),
                new StoveSituation(),
                desk,
                new CupboardSituation(),
                new NewDishPage(),
                new LabelPage(),
                new EquipmentPage(),
                new StartSituation(desk),
                new ChangeEater(),
                new UnitsChosen(),
                new PhoneSituation(visitors, door, terminal));
        PageServer server = PageServer.start(files, visitors, hosts, situations, port, fault);
        door.of(server.jetty(), server.port());
        return server;
    }
}

package batchwright.page;

import batchwright.app.MakePlan;
import batchwright.page.desk.DeskSituation;
import batchwright.page.fridge.FridgeSituation;
import batchwright.page.guard.Visitors;
import batchwright.page.shop.ShopSituation;
import batchwright.page.start.StartSituation;
import batchwright.page.stove.StoveSituation;
import java.util.List;
import java.util.function.Consumer;

/** All situations of the page. A new one is named here. */
public final class WholePage {
    private WholePage() {}

    /**
     * @param port on which to listen; 0 for any that is free
     * @param fault takes what went wrong inside
     * @throws batchwright.app.Refused when the port is taken
     */
    public static PageServer open(PageFiles files, MakePlan plans, int port, Consumer<Throwable> fault) {
        var visitors = new Visitors(files.clock());
        var desk = new DeskSituation(plans);
        return PageServer.start(
                files, visitors, List.of(
                        new Welcome(),
                        new FridgeSituation(),
                        new ShopSituation(plans),
                        new StoveSituation(),
                        desk,
                        new StartSituation(desk)), port, fault);
    }
}

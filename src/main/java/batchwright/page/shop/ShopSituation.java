package batchwright.page.shop;

import batchwright.app.EnterPrice;
import batchwright.app.MakePlan;
import batchwright.app.Refused;
import batchwright.app.SeenPrice;
import batchwright.app.Workspace;
import batchwright.app.book.WriteInBook;
import batchwright.book.EventWords;
import batchwright.book.KeptPlan;
import batchwright.book.KeptPlan.KeptPurchase;
import batchwright.book.KeptSession;
import batchwright.book.ShoppingSoFar;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.page.Routes;
import batchwright.page.Situation;
import batchwright.page.Visit;
import batchwright.report.html.web.Place;
import batchwright.report.html.web.ShopPage;
import batchwright.report.html.web.ShopPage.Other;
import batchwright.report.html.web.ShopPage.Typed;
import batchwright.report.html.web.Trouble;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** In the shop: what is ticked goes into the book as bought, and is at home from then on. */
public final class ShopSituation implements Situation {
    private static final String HERE = "/shop";
    private static final String MONEY = "[0-9]{1,6}([.][0-9]{1,4})?";
    private static final int MOST_PACKS = 99;

    private final TicksSeen seen = new TicksSeen();
    private final NotThere notThere;

    public ShopSituation(MakePlan plans) {
        this.notThere = new NotThere(plans);
    }

    @Override
    public void open(Routes routes) {
        routes.get(HERE, visit -> show(visit, Typed.NOTHING, List.of()))
                .post(HERE + "/tick", this::tick)
                .post(HERE + "/other", this::other)
                .post(HERE + "/missing", visit -> notThere.ask(visit, soFar(visit), line(visit)))
                .get(HERE + "/without", notThere::show)
                .post(HERE + "/keep", notThere::keep);
    }

    private static void show(Visit visit, Typed typed, List<Trouble> troubles) {
        Workspace workspace = visit.workspace();
        var frame = visit.frame(Place.SHOP, "Shop", troubles);
        Optional<KeptSession> session = workspace.keptPlans().next(visit.files().today());
        ShopPage page = session.map(next -> ShopPage.of(
                        frame, next, ShoppingSoFar.of(next.plan(), workspace.book()), workspace.kitchen(), typed))
                .orElseGet(() -> ShopPage.nothing(frame));
        if (troubles.isEmpty()) {
            visit.show("shop", page);
        } else {
            visit.showWrong("shop", page);
        }
    }

    /** Of the plan that the list was made for, also when another one was kept meanwhile: it was bought all the same. */
    private static ShoppingSoFar soFar(Visit visit) {
        Workspace workspace = visit.workspace();
        KeptPlan plan = workspace
                .keptPlans()
                .of(visit.field("plan"))
                .orElseThrow(() -> Refused.because("there is no such list any more", "Reload the page."));
        return ShoppingSoFar.of(plan, workspace.book());
    }

    private static ShoppingSoFar.Line line(Visit visit) {
        String number = visit.field("line");
        return soFar(visit).lines().stream()
                .filter(line -> Integer.toString(line.number()).equals(number))
                .findFirst()
                .orElseThrow(() -> Refused.because("there is no such line on the list", "Reload the page."));
    }

    /** Says what is in the basket, not what to change: the same twice changes nothing. */
    private synchronized void tick(Visit visit) {
        if (seen.isNew(visit.visitor(), visit.field("number"))) {
            ShoppingSoFar.Line line = line(visit);
            if (visit.field("on").equals("yes")) {
                if (!line.isTaken()) {
                    int digits = visit.workspace().foods().currency().digits();
                    book(visit, true)
                            .add(
                                    EventWords.of(line.planned().bought(digits)),
                                    visit.files().today());
                }
            } else {
                line.taken()
                        .forEach(bought -> book(visit, true)
                                .undo(OptionalInt.of(bought.entry().line())));
            }
            seen.took(visit.visitor(), visit.field("number"));
        }
        if (visit.isByScript()) {
            visit.done();
        } else {
            visit.go(HERE);
        }
    }

    private synchronized void other(Visit visit) {
        ShoppingSoFar.Line line = line(visit);
        var other = new Other(visit.field("packs"), visit.field("pack"), visit.field("price"));
        List<Trouble> troubles = troubles(line.number(), other);
        if (!troubles.isEmpty()) {
            show(visit, new Typed(line.number(), other, false), troubles);
            return;
        }
        int packs = Integer.parseInt(other.packs());
        BigDecimal price = new BigDecimal(other.price()).multiply(BigDecimal.valueOf(packs));
        String words = "bought %s x %s %s for %s"
                .formatted(packs, other.pack(), line.planned().food(), price.toPlainString());
        try {
            book(visit, visit.field("sure").equals("yes"))
                    .add(words, visit.files().today());
        } catch (Refused refused) {
            String says = ShopWords.sentences(refused);
            show(
                    visit,
                    new Typed(line.number(), other, says.contains("you are sure")),
                    List.of(new Trouble("pack-" + line.number(), says)));
            return;
        }
        visit.go(
                HERE,
                "Written down as taken." + (visit.field("remember").equals("yes") ? price(visit, line, other) : ""));
    }

    private static List<Trouble> troubles(int line, Other other) {
        if (!other.packs().matches("[0-9]{1,2}") || Integer.parseInt(other.packs()) < 1) {
            return List.of(new Trouble("packs-" + line, "Enter how many packs, from 1 to " + MOST_PACKS + "."));
        }
        if (!other.pack().matches("[0-9]{1,5}([.][0-9]{1,2})? ?(g|kg|oz|lb)")) {
            return List.of(new Trouble("pack-" + line, "Enter what one pack holds, such as 500 g or 1 lb."));
        }
        if (!other.price().matches(MONEY)) {
            return List.of(new Trouble("price-" + line, "Enter the price of one pack as a number such as 1.99."));
        }
        return List.of();
    }

    /** The next plan reckons with it. What was bought stays written, whatever becomes of this. */
    private static String price(Visit visit, ShoppingSoFar.Line line, Other other) {
        Workspace workspace = visit.workspace();
        KeptPurchase planned = line.planned();
        Kitchen kitchen = workspace.kitchen();
        Optional<Food> food = Optional.ofNullable(kitchen.foods().get(planned.food()));
        if (food.isEmpty() || planned.shop().isEmpty()) {
            return " The price was not noted.";
        }
        try {
            new EnterPrice(workspace, kitchen)
                    .enter(food.get(), new SeenPrice(planned.shop(), other.pack(), Optional.empty(), other.price()));
            return " The price is noted.";
        } catch (Refused refused) {
            return " The price was not noted: " + ShopWords.sentences(refused);
        }
    }

    private static WriteInBook book(Visit visit, boolean sure) {
        Workspace workspace = visit.workspace();
        return new WriteInBook(workspace, workspace.kitchen(), sure);
    }

    @Override
    public void close() {
        notThere.close();
    }
}

package batchwright.report.html.web;

import batchwright.book.Event.Bought;
import batchwright.book.KeptPlan.KeptPurchase;
import batchwright.book.KeptSession;
import batchwright.book.ShoppingSoFar;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.quantity.Currency;
import batchwright.report.print.Dates;
import batchwright.report.print.Show;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * In the shop: what is still to be taken, shop by shop and section by section in order of the walk; below it what is taken.
 *
 * @param list which list this is; empty when there is none
 * @param typed what was typed and could not be written yet
 */
public record ShopPage(Frame frame, Optional<ListHead> list, List<Shop> shops, List<Row> taken, Typed typed) {
    public ShopPage {
        shops = List.copyOf(shops);
        taken = List.copyOf(taken);
    }

    /**
     * @param key of the plan
     * @param digits decimals of the currency
     */
    public record ListHead(
            String key, String when, long leftMinor, String left, String paid, String currency, int digits) {}

    public record Shop(String name, List<Section> sections) {
        /** Whether nothing is left to take. */
        public boolean isDone() {
            return sections.stream().allMatch(section -> section.rows().isEmpty());
        }
    }

    /** @param rows what is not taken yet */
    public record Section(String id, String name, List<Row> rows) {}

    /**
     * @param home the section where it stands while it is not taken
     * @param note what differs from the plan; may be empty
     */
    public record Row(int line, String home, String name, String says, String note, Cost cost, Other other) {}

    public record Cost(String text, long minor) {}

    /** What is offered where another pack or price was taken. */
    public record Other(String packs, String pack, String price) {}

    /**
     * @param line where it was typed; -1 for nowhere
     * @param unsure whether it was doubted, so that the user may say that it is right
     */
    public record Typed(int line, Other other, boolean unsure) {
        public static final Typed NOTHING = new Typed(-1, new Other("", "", ""), false);
    }

    /** Nothing is to be bought. */
    public static ShopPage nothing(Frame frame) {
        return new ShopPage(frame, Optional.empty(), List.of(), List.of(), Typed.NOTHING);
    }

    public static ShopPage of(Frame frame, KeptSession session, ShoppingSoFar soFar, Kitchen kitchen, Typed typed) {
        return new Making(session, soFar, kitchen).page(frame, typed);
    }

    /** What is offered in the fields of a row. */
    public Other other(Row row) {
        return typed.line() == row.line() ? typed.other() : row.other();
    }

    private record Making(KeptSession session, ShoppingSoFar soFar, Kitchen kitchen) {
        /** Where a line is found. */
        private record Place(String shop, String section) {}

        ShopPage page(Frame frame, Typed typed) {
            Map<Place, List<ShoppingSoFar.Line>> places = new LinkedHashMap<>();
            soFar.lines().stream()
                    .filter(line -> line.planned().day() >= session.day())
                    .sorted(Comparator.comparing(
                                    (ShoppingSoFar.Line line) -> line.planned().shop())
                            .thenComparing(line -> Walk.place(section(line.planned()))))
                    .forEach(line -> places.computeIfAbsent(
                                    new Place(line.planned().shop(), section(line.planned())), p -> new ArrayList<>())
                            .add(line));
            Map<String, List<Section>> shops = new LinkedHashMap<>();
            List<Row> taken = new ArrayList<>();
            int number = 0;
            for (Map.Entry<Place, List<ShoppingSoFar.Line>> place : places.entrySet()) {
                String id = "section-" + number++;
                List<Row> rows = new ArrayList<>();
                place.getValue().forEach(line -> (line.isTaken() ? taken : rows).add(row(line, id)));
                shops.computeIfAbsent(place.getKey().shop(), shop -> new ArrayList<>())
                        .add(new Section(id, name(place.getKey().section()), rows));
            }
            return new ShopPage(
                    frame,
                    Optional.of(head()),
                    shops.entrySet().stream()
                            .map(shop -> new Shop(
                                    shop.getKey().isEmpty() ? "Shop" : Show.capital(shop.getKey()), shop.getValue()))
                            .toList(),
                    taken,
                    typed);
        }

        private static String name(String section) {
            return Show.capital(section.replace('_', ' '));
        }

        private Currency currency() {
            return kitchen.currency();
        }

        private ListHead head() {
            long left = soFar.lines().stream()
                    .filter(line -> line.planned().day() >= session.day() && !line.isTaken())
                    .mapToLong(line -> line.planned().costMinor())
                    .sum();
            String cooks = "For the cooking of " + Dates.inFull(session.date());
            return new ListHead(
                    soFar.plan().key(),
                    session.sessionsLeft() > 1 ? cooks + " and later ones" : cooks,
                    left,
                    text(left),
                    major(soFar.paid()),
                    currency().code(),
                    currency().digits());
        }

        private String section(KeptPurchase planned) {
            return food(planned).map(Food::group).orElse("other");
        }

        private Optional<Food> food(KeptPurchase planned) {
            return Optional.ofNullable(kitchen.foods().get(planned.food()));
        }

        private Row row(ShoppingSoFar.Line line, String home) {
            KeptPurchase planned = line.planned();
            return new Row(
                    line.number(),
                    home,
                    food(planned).map(Food::name).orElse(planned.food()),
                    says(planned),
                    note(line),
                    line.isTaken()
                            ? new Cost(major(line.paid()), planned.costMinor())
                            : new Cost(text(planned.costMinor()), planned.costMinor()),
                    new Other(
                            Integer.toString(planned.packs()),
                            Show.plainText(planned.grams(), 1) + " g",
                            text(Math.round((double) planned.costMinor() / planned.packs()))));
        }

        /** 3 x box, 283 g each. */
        private static String says(KeptPurchase planned) {
            String grams = Show.plainText(planned.grams(), 1) + " g";
            if (planned.pack().equals("loose")) {
                return Show.plainText(planned.allGrams(), 1) + " g loose";
            }
            String pack = planned.pack().contains(grams) ? planned.pack() : (planned.pack() + " " + grams).strip();
            return planned.packs() + " × " + pack;
        }

        private String note(ShoppingSoFar.Line line) {
            if (!line.isTaken()) {
                return "";
            }
            int over = line.gramsOver().signum();
            String grams = Show.plainText(line.gramsOver().abs(), 1) + " g ";
            String taken = line.taken().stream()
                    .map(bought -> taken(bought.event()))
                    .reduce((one, other) -> one + " and " + other)
                    .orElse("");
            return over == 0 ? "" : "Taken: " + taken + ", " + grams + (over < 0 ? "less" : "more") + " than planned";
        }

        private static String taken(Bought bought) {
            return bought.count() + " × " + Show.plainText(bought.grams(), 1) + " g";
        }

        private String text(long minor) {
            return major(BigDecimal.valueOf(minor, currency().digits()));
        }

        private String major(BigDecimal sum) {
            return sum.setScale(currency().digits(), RoundingMode.HALF_UP).toPlainString();
        }
    }
}

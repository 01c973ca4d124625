package batchwright.report.html;

import batchwright.answer.BuyLine;
import batchwright.food.Pack;
import batchwright.quantity.Currency;
import batchwright.report.plan.BoughtEarly;
import batchwright.report.plan.SessionsAnswer;
import batchwright.report.print.Show;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** One shopping list for all sessions, with the sessions for which things are bought. */
final class BuyOncePage {
    private final SessionsAnswer answer;
    private final Map<Pack, List<Integer>> sessions = new LinkedHashMap<>();
    private final Map<Pack, BuyLine> lines = new LinkedHashMap<>();

    BuyOncePage(SessionsAnswer answer) {
        this.answer = answer;
        for (int s = 0; s < answer.sessions().size(); s++) {
            int session = s + 1;
            BuyLine.of(answer.sessions().get(s).plan())
                    .forEach(line -> line.pack().ifPresent(pack -> add(session, pack, line)));
        }
    }

    private void add(int session, Pack pack, BuyLine line) {
        sessions.computeIfAbsent(pack, p -> new ArrayList<>()).add(session);
        lines.merge(
                pack,
                line,
                (a, b) -> new BuyLine(
                        a.food(),
                        a.pack(),
                        a.packs() + b.packs(),
                        BigDecimal.ZERO,
                        a.usedGrams().add(b.usedGrams())));
    }

    void write(Html html) {
        Currency currency = answer.whole().kitchen().currency();
        List<BuyLine> all = List.copyOf(lines.values());
        html.open("section", "id", "shop", "class", "page shop", "aria-labelledby", "shop-h");
        html.element("h2", "Shopping list, before day 1", "id", "shop-h");
        html.open("p", "class", "whose").name(PlanPage.forWhom(answer.whole())).close();
        html.element("p", "Total " + Show.money(answer.cost(), currency) + ".", "class", "says")
                .line();
        new BasketTable(all, currency, this::forSessions).write(html);
        BoughtEarly.says(answer.sessions()).ifPresent(says -> html.element("p", says, "class", "note"));
        BasketTable.prices(html, all);
        html.close().line();
    }

    private Optional<String> forSessions(BuyLine line) {
        return line.pack()
                .map(sessions::get)
                .map(numbers -> (numbers.size() == 1 ? "for session " : "for sessions ")
                        + numbers.stream().map(n -> Integer.toString(n)).collect(Collectors.joining(" and ")));
    }
}

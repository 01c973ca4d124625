package batchwright.explain;

import batchwright.food.Kitchen;
import batchwright.food.Pack;
import batchwright.plan.PlanRequest;
import batchwright.plan.Remedy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** The soft rule for shopping: only in some of the shops. */
final class SoftShops {
    private SoftShops() {}

    /** Empty when every shop is gone to. One more shop; else all of them. */
    static Optional<SoftRule> shops(PlanRequest request) {
        Kitchen kitchen = request.kitchen();
        List<String> elsewhere = kitchen.shops().elsewhere().values().stream()
                .flatMap(List::stream)
                .map(Pack::shop)
                .distinct()
                .toList();
        if (elsewhere.isEmpty()) {
            return Optional.empty();
        }
        Set<String> here = kitchen.shopNames();
        List<Loosening> one = new ArrayList<>();
        for (String shop : elsewhere) {
            one.add(Loosening.once(
                    r -> at(r, name -> here.contains(name) || name.equals(shop)),
                    "go to " + shop + ", too",
                    new Remedy.GoToShop(Optional.of(shop))));
        }
        Loosening all =
                Loosening.once(r -> at(r, name -> true), "go to every shop", new Remedy.GoToShop(Optional.empty()));
        return Optional.of(new SoftRule(
                "shops",
                "only " + Phrases.some(List.copyOf(here)) + (here.size() == 1 ? " is" : " are") + " gone to",
                r -> at(r, name -> true),
                elsewhere.size() == 1 ? List.of(one) : List.of(one, List.of(all))));
    }

    private static PlanRequest at(PlanRequest request, Predicate<String> shop) {
        return request.withKitchen(request.kitchen().onlyAt(shop));
    }
}

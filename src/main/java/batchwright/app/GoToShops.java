package batchwright.app;

import batchwright.food.Kitchen;
import batchwright.quantity.Money;
import batchwright.text.NearestName;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** A kitchen whose cook goes to some shops only. */
final class GoToShops {
    private GoToShops() {}

    /**
     * @param names of shops; none for all of them
     * @throws Refused when there is no such shop
     */
    static Kitchen only(Kitchen kitchen, List<String> names) {
        if (names.isEmpty()) {
            return kitchen;
        }
        Set<String> chosen = new LinkedHashSet<>();
        names.forEach(name -> chosen.add(known(kitchen, name)));
        return kitchen.onlyAt(chosen::contains);
    }

    private static String known(Kitchen kitchen, String name) {
        Set<String> shops = kitchen.shopNames();
        return shops.stream()
                .filter(shop -> shop.toLowerCase(Locale.ROOT).equals(name.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> Refused.because(
                        "there is no shop called \"" + name + "\"",
                        NearestName.of(name, List.copyOf(shops))
                                .map(nearest -> "Nearest: " + nearest + ".")
                                .orElse("Shops in foods/shop.csv: " + String.join(", ", shops) + ".")));
    }

    /** All is bought on one day: what that costs is not known by session, and so it is not counted. */
    static Kitchen onOneDay(Kitchen kitchen) {
        return kitchen.with(kitchen.shops().withTrip(Money.ZERO));
    }
}

package batchwright.solve;

import batchwright.food.Dish;
import batchwright.food.Pack;
import batchwright.food.Part;
import batchwright.food.Variant;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Expression;
import batchwright.solve.mip.MipModel;
import batchwright.solve.mip.Stop;
import batchwright.solve.rule.Draft;
import batchwright.solve.rule.Menu;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the drafts of totals and of days have in common: the request, the menu, the model, optional parts and packs. */
abstract class AbstractDraft implements Draft {
    private final PlanRequest request;
    private final Menu menu;
    private final MipModel model;
    private final Map<PartKey, Column> kept = new LinkedHashMap<>();
    private final Map<Variant, Column> cookedAs = new LinkedHashMap<>();
    private final Map<AsKey, Expression> gramsAs = new LinkedHashMap<>();
    private final Map<Pack, Column> packs = new LinkedHashMap<>();
    private final Map<String, Column> shops = new LinkedHashMap<>();

    private record AsKey(Seat seat, Variant variant, String part) {}

    /** A part of a dish for an eater. */
    record PartKey(Seat seat, Dish dish, String part) {
        static PartKey of(Seat seat, Dish dish, Part part) {
            return new PartKey(seat, dish, part.name());
        }

        /** For the names of columns. */
        String name() {
            return part + "." + dish.id() + "." + seat.eater().id();
        }
    }

    /** @param stop told of the work of making the model */
    AbstractDraft(PlanRequest request, Menu menu, Stop stop) {
        this.model = new MipModel(stop);
        this.request = request;
        this.menu = menu;
    }

    /** A column for whether an optional part is in; it stays out where the eater avoids it. */
    final void addKept(PartKey key, Part part, int rank) {
        if (part.optional()) {
            int most = menu.allows(key.seat(), part) ? 1 : 0;
            kept.put(key, model.column("keep." + key.name(), 0, most, true, rank));
        }
    }

    /** Columns for cooking each dish of which there are any containers as each of its variants. */
    final void addVariants(int rank) {
        for (Dish dish : menu.dishes()) {
            List<Seat> eating = request.seats().stream()
                    .filter(seat -> menu.dishes(seat).contains(dish) && mostContainers(seat, dish) > 0)
                    .toList();
            int number = 0;
            for (Variant variant : eating.isEmpty() ? List.<Variant>of() : menu.variants(dish)) {
                number++;
                String name = "swap." + dish.id() + "." + number;
                cookedAs.put(variant, model.column(name, 0, 1, true, rank));
                for (Seat seat : eating) {
                    dish.parts().stream()
                            .filter(variant::changes)
                            .forEach(part -> gramsAs.put(
                                    new AsKey(seat, variant, part.name()),
                                    gramsAs(
                                            name + "." + part.name() + "."
                                                    + seat.eater().id(),
                                            seat,
                                            dish,
                                            part)));
                }
            }
        }
    }

    /** Grams of a part in all containers of a dish for an eater, as one new column of this name. */
    abstract Expression gramsAs(String name, Seat seat, Dish dish, Part part);

    @Override
    public final Expression cookedAs(Variant variant) {
        return cookedAs.containsKey(variant) ? Expression.of(Lookup.get(cookedAs, variant)) : new Expression();
    }

    @Override
    public final Expression gramsAs(Seat seat, Variant variant, Part part) {
        return gramsAs.getOrDefault(new AsKey(seat, variant, part.name()), new Expression());
    }

    /** Columns for all packs on the menu. */
    final void addPacks(int rank) {
        packs.putAll(Packs.columns(request, menu, model, rank));
        shops.putAll(Packs.shops(request, menu, model, rank));
    }

    @Override
    public final PlanRequest request() {
        return request;
    }

    @Override
    public final Menu menu() {
        return menu;
    }

    @Override
    public final MipModel model() {
        return model;
    }

    @Override
    public final Optional<Column> kept(Seat seat, Dish dish, Part part) {
        return Optional.ofNullable(kept.get(PartKey.of(seat, dish, part)));
    }

    @Override
    public final Map<String, Column> shops() {
        return shops;
    }

    @Override
    public final Column packs(Pack pack) {
        return Lookup.get(packs, pack);
    }
}

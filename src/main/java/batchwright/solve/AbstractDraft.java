package batchwright.solve;

import batchwright.food.Dish;
import batchwright.food.Pack;
import batchwright.food.Part;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.MipModel;
import batchwright.solve.mip.Stop;
import batchwright.solve.rule.Draft;
import batchwright.solve.rule.Menu;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** What the drafts of totals and of days have in common: the request, the menu, the model, optional parts and packs. */
abstract class AbstractDraft implements Draft {
    private final PlanRequest request;
    private final Menu menu;
    private final MipModel model;
    private final Map<PartKey, Column> kept = new LinkedHashMap<>();
    private final Map<Pack, Column> packs = new LinkedHashMap<>();

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

    /** Columns for all packs on the menu. */
    final void addPacks(int rank) {
        packs.putAll(Packs.columns(request, menu, model, rank));
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
    public final Column packs(Pack pack) {
        return Lookup.get(packs, pack);
    }
}

package batchwright.solve;

import batchwright.plan.PlanRequest;
import batchwright.solve.mip.Stop;
import batchwright.solve.rule.Menu;
import java.util.List;
import java.util.Optional;

/** How the models of layouts are made: all rules, and what is aimed at. */
record LayoutModels(PlanRequest request, Menu menu, Aim aim, Depth depth, Stop stop)
        implements LayoutSearch.DraftMaker {
    @Override
    public DaysDraft make(Layout layout) {
        return aim.complete(
                depth == Depth.EVERY_DAY_ALIKE
                        ? DaysDraft.sameSnacks(request, menu, layout, stop)
                        : new DaysDraft(request, menu, layout, stop));
    }

    @Override
    public Optional<DaysDraft> withPacks(Layout layout, List<Integer> packs) {
        return Optional.of(DaysDraft.withPacks(request, menu, layout, stop, packs));
    }
}

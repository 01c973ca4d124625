package batchwright.report.needs;

import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.limit.Limit;
import batchwright.limit.Range;
import batchwright.report.plan.DaysTable;
import batchwright.report.print.BandPicture;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The cells of one limit in a row of {@link DaysTable}: the figure; how far it is from a mark, if there is one; and a picture,
 * if there is one.
 */
public record LimitCells(Limit limit, OptionalInt mark, Optional<BandPicture> picture) {
    public void heads(TextTable table) {
        table.right(measured() == Nutrient.ENERGY ? limit.unit() : Show.shortly(measured()) + "\n" + limit.unit());
        mark.ifPresent(ignored -> table.right("+-"));
        picture.ifPresent(p -> table.left(p.head()));
    }

    public List<String> target() {
        return cells(
                mark.isPresent() ? Integer.toString(mark.getAsInt()) : ends(), "", picture.map(BandPicture::empty));
    }

    public List<String> of(Nutrients holds) {
        return cells(
                Show.cell(holds, measured()),
                mark.isPresent() ? Show.difference(holds, measured(), mark.getAsInt()) : "",
                picture.map(p -> p.of(holds.get(measured()))));
    }

    private List<String> cells(String figure, String difference, Optional<String> drawn) {
        List<String> cells = new ArrayList<>(List.of(figure));
        mark.ifPresent(ignored -> cells.add(difference));
        drawn.ifPresent(cells::add);
        return cells;
    }

    private Nutrient measured() {
        return limit.measured();
    }

    private String ends() {
        Range range = limit.range();
        if (range.most().isEmpty()) {
            return Integer.toString(range.least());
        }
        return (range.hasLeast() ? range.least() + "-" : "<=") + range.most().getAsInt();
    }
}

package batchwright.report;

import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.person.DayTarget;
import batchwright.plan.Day;
import batchwright.plan.EaterDays;
import batchwright.plan.Plan;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Each day of an eater against the target; where the page is wide enough, with a picture of where its energy lies in the band.
 *
 * @param firstDay by which number the cooking day is called
 */
record DaysTable(Plan plan, EaterDays eater, int firstDay) {
    /** Columns of the table without a picture and with large figures. */
    private static final int WITHOUT = 76;

    private static final int LEAST_PICTURE = 17;
    private static final int MOST_PICTURE = 41;

    /** Explains the picture; empty where there is no room for one. */
    static String note(int width) {
        return width - WITHOUT < LEAST_PICTURE
                ? ""
                : " [-*-:-] shows where in its band the energy lies, with the aim at the colon.";
    }

    TextTable of(int width) {
        DayTarget target = eater.seat().target();
        Optional<BandPicture> picture = picture(target, width - WITHOUT);
        var table = new TextTable("  ").left("").right("kcal").right("+-");
        picture.ifPresent(p -> table.left(p.head()));
        table.right("protein\ng")
                .right("+-")
                .right("fat\ng")
                .right("fibre\ng")
                .right("+-")
                .right("fruit+veg\ng")
                .right("+-");
        row(table, energyAim(target), picture.map(BandPicture::empty), floors(target));
        for (Day day : eater.days()) {
            Nutrients holds = plan.totals(eater.seat().eater(), day);
            row(
                    table,
                    energy(target, day, holds),
                    picture.map(p -> p.of(holds.get(Nutrient.ENERGY))),
                    rest(target, holds));
        }
        return table;
    }

    /** As wide as there is room, and odd, so that its middle is one. */
    private static Optional<BandPicture> picture(DayTarget target, int room) {
        int columns = Math.min(MOST_PICTURE, room - (room + 1) % 2);
        return columns < LEAST_PICTURE
                ? Optional.empty()
                : Optional.of(new BandPicture(
                        target.energyLeastKcal(), target.energyAimKcal(), target.energyMostKcal(), columns));
    }

    private static void row(TextTable table, List<String> energy, Optional<String> picture, List<String> rest) {
        table.row(Stream.of(energy.stream(), picture.stream(), rest.stream())
                .flatMap(cells -> cells)
                .toArray(String[]::new));
    }

    private static List<String> energyAim(DayTarget target) {
        return List.of("target", Integer.toString(target.energyAimKcal()), "");
    }

    private static List<String> floors(DayTarget target) {
        return List.of(
                Integer.toString(target.proteinLeastG()),
                "",
                target.fatLeastG() + "-" + target.fatMostG(),
                Integer.toString(target.fibreLeastG()),
                "",
                Integer.toString(target.fruitVegLeastG()),
                "");
    }

    private List<String> energy(DayTarget target, Day day, Nutrients holds) {
        return List.of(
                "day " + (day.day() + firstDay - 1),
                Show.cell(holds, Nutrient.ENERGY),
                Show.difference(holds, Nutrient.ENERGY, target.energyAimKcal()));
    }

    private static List<String> rest(DayTarget target, Nutrients holds) {
        return List.of(
                Show.cell(holds, Nutrient.PROTEIN),
                Show.difference(holds, Nutrient.PROTEIN, target.proteinLeastG()),
                Show.cell(holds, Nutrient.FAT),
                Show.cell(holds, Nutrient.FIBRE),
                Show.difference(holds, Nutrient.FIBRE, target.fibreLeastG()),
                Show.cell(holds, Nutrient.FRUIT_VEG),
                Show.difference(holds, Nutrient.FRUIT_VEG, target.fruitVegLeastG()));
    }
}

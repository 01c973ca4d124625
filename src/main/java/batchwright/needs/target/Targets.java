package batchwright.needs.target;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Words;
import batchwright.needs.goal.WeeklyChange;
import batchwright.person.Adjustments;
import batchwright.person.DayTarget;
import batchwright.person.Eater;
import batchwright.quantity.Energy;
import java.util.List;

/**
 * What a day must hold, and why. Floors are rounded up and ceilings down, so that whatever meets the printed number meets the
 * published one.
 *
 * @param lines the same line by line, with sources
 */
public record Targets(DayTarget day, List<TargetLine> lines) {
    private static final double BAND_PERCENT = 3;
    private static final double FAT_LEAST = 0.20; // of energy
    private static final double FAT_MOST = 0.35;
    private static final double KCAL_PER_G_FAT = 9; // general Atwater factor
    private static final double FIBRE_G_PER_KCAL = 14.0 / 1000;
    private static final int FRUIT_VEG_G = 400;
    private static final double CONTAINER_LEAST = 0.15; // of energy
    private static final double CONTAINER_MOST = 0.45;
    private static final double CONTAINER_PROTEIN_G_PER_KG = 0.25;
    private static final double PER_CENT = 100;

    private static final Citation PROFILE = new Citation("the eater's profile");

    public static Targets of(Eater eater, Energy total, WeeklyChange change) {
        Adjustments own = eater.adjustments();
        int aim = Math.toIntExact(Math.round(total.kcal() + change.kcalADay()));
        double band = own.energyBandPercent().orElse(BAND_PERCENT);
        ProteinFloor protein = HealthFloors.protein(eater, ProteinFloor.of(eater, change));
        DayTarget day = new DayTarget(
                aim,
                Words.up(aim * (1 - band / PER_CENT)),
                Words.down(aim * (1 + band / PER_CENT)),
                Words.up(protein.grams()),
                Words.up(aim * FAT_LEAST / KCAL_PER_G_FAT),
                Words.down(aim * FAT_MOST / KCAL_PER_G_FAT),
                own.fibreG().orElse(HealthFloors.noFibre(eater) ? 0 : Words.up(aim * FIBRE_G_PER_KCAL)),
                own.fruitVegG().orElse(FRUIT_VEG_G),
                Words.up(aim * CONTAINER_LEAST),
                Words.down(aim * CONTAINER_MOST),
                Words.up(CONTAINER_PROTEIN_G_PER_KG * ProteinFloor.countedKg(eater.body())));
        return new Targets(day, lines(eater, day, band, protein));
    }

    private static List<TargetLine> lines(Eater eater, DayTarget day, double band, ProteinFloor protein) {
        Adjustments own = eater.adjustments();
        return List.of(
                new TargetLine(
                        "energy",
                        day.energyLeastKcal() + " to " + day.energyMostKcal() + " kcal: " + day.energyAimKcal() + " +- "
                                + Words.plain(band) + " %",
                        own.energyBandPercent().isPresent()
                                ? PROFILE
                                : Citation.designChoice("finer than 3 % is less than food tables can tell")),
                new TargetLine(
                        "protein", "at least " + day.proteinLeastG() + " g: " + protein.says(), protein.source()),
                new TargetLine(
                        "fat",
                        day.fatLeastG() + " to " + day.fatMostG() + " g: 20-35 % of energy",
                        new Citation("IOM, Dietary Reference Intakes, 2005, AMDR")),
                fibre(eater, day),
                new TargetLine(
                        "fruit and vegetables",
                        "at least " + day.fruitVegLeastG() + " g",
                        own.fruitVegG().isPresent() ? PROFILE : new Citation("WHO, Healthy diet")),
                new TargetLine(
                        "energy in a container",
                        day.containerLeastKcal() + " to " + day.containerMostKcal() + " kcal: 15-45 % of the day",
                        Citation.designChoice("a container is a meal")),
                new TargetLine(
                        "protein in a container",
                        "at least " + day.containerProteinLeastG() + " g: "
                                + ProteinFloor.saysPerKg(CONTAINER_PROTEIN_G_PER_KG, eater.body()),
                        new Citation("ISSN position, J Int Soc Sports Nutr 2017;14:20")));
    }

    private static TargetLine fibre(Eater eater, DayTarget day) {
        String least = "at least " + day.fibreLeastG() + " g";
        if (eater.adjustments().fibreG().isPresent()) {
            return new TargetLine("fibre", least, PROFILE);
        }
        return HealthFloors.noFibre(eater)
                ? new TargetLine(
                        "fibre", "no rule: your doctor or dietitian says how much is right", HealthFloors.NO_FIBRE)
                : new TargetLine(
                        "fibre",
                        least + ": 14 g per 1000 kcal",
                        new Citation("IOM, Dietary Reference Intakes, 2005, AI"));
    }
}

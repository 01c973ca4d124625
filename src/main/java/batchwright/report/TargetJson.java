package batchwright.report;

import batchwright.person.DayTarget;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** A day's target for scripts. */
final class TargetJson {
    private TargetJson() {}

    static ObjectNode of(DayTarget target) {
        ObjectNode targets = Json.object();
        targets.putObject("energy_kcal")
                .put("min", target.energyLeastKcal())
                .put("aim", target.energyAimKcal())
                .put("max", target.energyMostKcal());
        targets.putObject("protein_g").put("min", target.proteinLeastG());
        targets.putObject("fat_g").put("min", target.fatLeastG()).put("max", target.fatMostG());
        targets.putObject("fibre_g").put("min", target.fibreLeastG());
        targets.putObject("fruit_veg_g").put("min", target.fruitVegLeastG());
        targets.putObject("container_energy_kcal")
                .put("min", target.containerLeastKcal())
                .put("max", target.containerMostKcal());
        targets.putObject("container_protein_g").put("min", target.containerProteinLeastG());
        return targets;
    }
}

package batchwright.report.needs;

import batchwright.needs.Needs;
import batchwright.needs.caution.BmiBand;
import batchwright.needs.target.EnergyAvailability;
import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/** Body mass index and energy availability for scripts; part of batchwright.needs/1. */
final class BodyMassJson {
    private BodyMassJson() {}

    static void put(ObjectNode root, Needs needs) {
        double bmi = needs.eater().body().bmi();
        ObjectNode node = root.putObject("bmi")
                .put("kg_per_m2", Json.hundredth(bmi))
                .put("who_band", BmiBand.of(bmi).id());
        BmiBand.asianActionPoint(bmi)
                .ifPresentOrElse(
                        point -> node.put("asian_action_point", point), () -> node.putNull("asian_action_point"));
        node.put("source", BmiBand.SOURCE.text());
        availability(root.putObject("energy_availability"), needs.energyAvailability());
    }

    /** All null when there is no target, body fat is not known, or from BMI 30 on. */
    private static void availability(ObjectNode node, Optional<EnergyAvailability> found) {
        found.ifPresentOrElse(
                available -> node.put("kcal_per_kg_fat_free", NeedsJson.tenth(available.kcalPerKg())),
                () -> node.putNull("kcal_per_kg_fat_free"));
        found.ifPresent(available -> node.put("least", NeedsJson.tenth(available.leastKcalPerKg()))
                .put("most", NeedsJson.tenth(available.mostKcalPerKg())));
        found.map(EnergyAvailability::exercise)
                .ifPresentOrElse(
                        exercise -> node.put(
                                        "training_kcal",
                                        NeedsJson.tenth(exercise.likely().kcal()))
                                .put("training_counted", exercise.counted()),
                        () -> node.putNull("training_kcal"));
        node.put("source", EnergyAvailability.SOURCE.text());
    }
}

package batchwright.needs.target;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Numerals;
import batchwright.person.Body;
import batchwright.person.Eater;
import batchwright.person.HealthEffect;
import batchwright.person.HealthQuestion;

/** Floors of a target that an answer to a question of health changes. */
final class HealthFloors {
    static final Citation NO_FIBRE = new Citation("answers to questions of health");
    private static final double G_PER_KG = 1.2;
    private static final double G_A_DAY = 60;

    private HealthFloors() {}

    static boolean noFibre(Eater eater) {
        return eater.health().has(HealthEffect.NO_FIBRE_FLOOR);
    }

    /** The floor, or a higher one that an answer asks for, even where the profile asks for less. */
    static ProteinFloor protein(Eater eater, ProteinFloor usual) {
        ProteinFloor floor = usual;
        for (HealthQuestion question : eater.health().yes()) {
            double grams = grams(question, eater.body());
            if (Numerals.above(grams, floor.grams())) {
                floor = new ProteinFloor(
                        grams,
                        says(question, eater.body()),
                        new Citation(question.afterYes().source()),
                        false);
            }
        }
        return floor;
    }

    /** No cure asks for less than this [g]. */
    static double leastProteinG(Eater eater) {
        return eater.health().yes().stream()
                .mapToDouble(question -> grams(question, eater.body()))
                .max()
                .orElse(0);
    }

    private static double grams(HealthQuestion question, Body body) {
        if (question.has(HealthEffect.PROTEIN_1_2_G_PER_KG)) {
            return G_PER_KG * ProteinFloor.countedKg(body);
        }
        return question.has(HealthEffect.PROTEIN_60_G) ? G_A_DAY : 0;
    }

    private static String says(HealthQuestion question, Body body) {
        String least = question.has(HealthEffect.PROTEIN_1_2_G_PER_KG)
                ? ProteinFloor.saysPerKg(G_PER_KG, body)
                : Numerals.whole(G_A_DAY) + " g";
        return least + ", the least with " + question.words();
    }
}

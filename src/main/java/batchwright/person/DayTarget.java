package batchwright.person;

/**
 * What each day of an eater must hold, and each container. Whole numbers, so that what is printed is what is planned and
 * audited: floors are rounded up and ceilings down.
 *
 * @param energyAimKcal the aim
 * @param energyLeastKcal lower end of the energy band
 * @param energyMostKcal upper end of the energy band
 * @param proteinLeastG protein floor
 * @param fatLeastG lower end of the fat band
 * @param fatMostG upper end of the fat band
 * @param fibreLeastG fibre floor
 * @param fruitVegLeastG fruit and vegetables floor
 * @param containerLeastKcal least energy in one container
 * @param containerMostKcal most energy in one container
 * @param containerProteinLeastG least protein in one container
 */
public record DayTarget(
        int energyAimKcal,
        int energyLeastKcal,
        int energyMostKcal,
        int proteinLeastG,
        int fatLeastG,
        int fatMostG,
        int fibreLeastG,
        int fruitVegLeastG,
        int containerLeastKcal,
        int containerMostKcal,
        int containerProteinLeastG) {
    public DayTarget withEnergy(int leastKcal, int mostKcal) {
        return with(leastKcal, mostKcal, proteinLeastG, fatLeastG, fatMostG, fibreLeastG, fruitVegLeastG);
    }

    public DayTarget withProtein(int leastG) {
        return with(energyLeastKcal, energyMostKcal, leastG, fatLeastG, fatMostG, fibreLeastG, fruitVegLeastG);
    }

    public DayTarget withFat(int leastG, int mostG) {
        return with(energyLeastKcal, energyMostKcal, proteinLeastG, leastG, mostG, fibreLeastG, fruitVegLeastG);
    }

    public DayTarget withFibre(int leastG) {
        return with(energyLeastKcal, energyMostKcal, proteinLeastG, fatLeastG, fatMostG, leastG, fruitVegLeastG);
    }

    public DayTarget withFruitVeg(int leastG) {
        return with(energyLeastKcal, energyMostKcal, proteinLeastG, fatLeastG, fatMostG, fibreLeastG, leastG);
    }

    private DayTarget with(
            int energyLeast, int energyMost, int protein, int fatLeast, int fatMost, int fibre, int fruitVeg) {
        return new DayTarget(
                energyAimKcal,
                energyLeast,
                energyMost,
                protein,
                fatLeast,
                fatMost,
                fibre,
                fruitVeg,
                containerLeastKcal,
                containerMostKcal,
                containerProteinLeastG);
    }

    public DayTarget withContainer(int leastKcal, int mostKcal, int leastProteinG) {
        return new DayTarget(
                energyAimKcal,
                energyLeastKcal,
                energyMostKcal,
                proteinLeastG,
                fatLeastG,
                fatMostG,
                fibreLeastG,
                fruitVegLeastG,
                leastKcal,
                mostKcal,
                leastProteinG);
    }
}

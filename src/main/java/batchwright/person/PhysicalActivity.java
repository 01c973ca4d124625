package batchwright.person;

/**
 * How active the eater is over the whole day, training included. So nothing is ever added for training: it is included.
 */
public sealed interface PhysicalActivity
        permits FaoLevel, CommonMultiplier, PalNumber, Diary, ActivityFacts, PalFromWeighings {
    /** One result for each way of saying it. */
    interface Cases<R> {
        R level(FaoLevel level);

        R multiplier(CommonMultiplier multiplier);

        R number(PalNumber number);

        R diary(Diary diary);

        R facts(ActivityFacts facts);

        R weighings(PalFromWeighings weighings);
    }

    <R> R match(Cases<R> cases);

    /** Physical activity level: total energy / resting energy. */
    double pal();

    /** How the eater said it: a level's name, the number, and so on. */
    String label();
}

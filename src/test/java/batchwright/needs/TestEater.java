package batchwright.needs;

import batchwright.person.Adjustments;
import batchwright.person.Avoided;
import batchwright.person.Body;
import batchwright.person.BodyFat;
import batchwright.person.Box;
import batchwright.person.Eater;
import batchwright.person.FaoLevel;
import batchwright.person.Goal;
import batchwright.person.Health;
import batchwright.person.Health.Answer;
import batchwright.person.HealthQuestion;
import batchwright.person.PalNumber;
import batchwright.person.PhysicalActivity;
import batchwright.person.Sex;
import batchwright.person.Training;
import batchwright.person.Wishes;
import batchwright.quantity.Length;
import batchwright.quantity.Mass;
import batchwright.quantity.Share;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** Eaters for tests: healthy adults who hold their weight, until told otherwise. */
public final class TestEater {
    /** No to every question. */
    public static final Health HEALTHY =
            new Health(HealthQuestion.all().stream().collect(Collectors.toMap(q -> q, q -> Answer.NO)));

    private final Body body;
    private final PhysicalActivity activity;
    private final Goal goal;
    private final Health health;
    private final Adjustments adjustments;
    private final Training training;

    private TestEater(Body body, PhysicalActivity activity, Goal goal, Health health, Adjustments adjustments) {
        this(body, activity, goal, health, adjustments, Training.NOT_SAID);
    }

    private TestEater(
            Body body,
            PhysicalActivity activity,
            Goal goal,
            Health health,
            Adjustments adjustments,
            Training training) {
        this.training = training;
        this.body = body;
        this.activity = activity;
        this.goal = goal;
        this.health = health;
        this.adjustments = adjustments;
    }

    public static Body body(Sex sex, double kg, double cm, double years) {
        return new Body(sex, years, new Mass(kg), new Length(cm), Optional.empty());
    }

    public static Body body(Sex sex, double kg, double cm, double years, Double fatPercent) {
        return new Body(
                sex,
                years,
                new Mass(kg),
                new Length(cm),
                Optional.ofNullable(fatPercent).map(Share::ofPercent).map(BodyFat.Measured::new));
    }

    public static TestEater of(Body body) {
        return new TestEater(body, FaoLevel.SEDENTARY, Goal.HOLD, HEALTHY, Adjustments.NONE);
    }

    public TestEater pal(double pal) {
        return activity(new PalNumber(pal));
    }

    public TestEater activity(PhysicalActivity activity) {
        return new TestEater(body, activity, goal, health, adjustments, training);
    }

    public TestEater percentAWeek(double percent) {
        return goal(new Goal.PercentAWeek(percent));
    }

    public TestEater kcalADay(double kcal) {
        return goal(new Goal.EnergyADay(kcal));
    }

    public TestEater goal(Goal goal) {
        return new TestEater(body, activity, goal, health, adjustments, training);
    }

    public TestEater health(HealthQuestion question, Answer answer) {
        return health(health.with(question, answer));
    }

    public TestEater health(String question, Answer answer) {
        return health(HealthQuestion.of(question), answer);
    }

    public TestEater health(Health other) {
        return new TestEater(body, activity, goal, other, adjustments, training);
    }

    public TestEater adjusted(double bandPercent, double proteinGPerKg, int fibreG, int fruitVegG) {
        return new TestEater(
                body,
                activity,
                goal,
                health,
                new Adjustments(
                        OptionalDouble.of(bandPercent),
                        OptionalDouble.of(proteinGPerKg),
                        OptionalInt.of(fibreG),
                        OptionalInt.of(fruitVegG)),
                training);
    }

    public TestEater onAverage(double percent) {
        return new TestEater(
                body,
                activity,
                goal,
                health,
                new Adjustments(
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalInt.empty(),
                        OptionalInt.empty(),
                        OptionalInt.empty(),
                        OptionalDouble.of(percent),
                        Box.USUAL),
                training);
    }

    public TestEater protein(double gPerKg) {
        return new TestEater(
                body,
                activity,
                goal,
                health,
                new Adjustments(
                        OptionalDouble.empty(), OptionalDouble.of(gPerKg), OptionalInt.empty(), OptionalInt.empty()),
                training);
    }

    /** Training with weights. */
    public TestEater lifts(int timesAWeek) {
        return new TestEater(
                body, activity, goal, health, adjustments, new Training(Optional.of(timesAWeek), Optional.empty()));
    }

    public Eater eater() {
        Wishes wishes = new Wishes(3, Avoided.NOTHING, List.of(), Optional.empty(), 3, 2);
        return new Eater("somebody", "Somebody", body, activity, goal, health, adjustments, wishes, training);
    }

    public Needs needs() {
        return NeedsCalculator.needsOf(eater());
    }
}

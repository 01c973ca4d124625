package batchwright.schedule;

import batchwright.food.Appliance;
import batchwright.food.Equipment;
import batchwright.food.HandTimes;
import batchwright.food.Handled;
import batchwright.food.Step;
import batchwright.food.TimeLaw;
import batchwright.food.Way;
import batchwright.plan.Batch;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Adds up the laws of a step for one batch in one kitchen. */
final class LawfulWork implements TimeLaw.Cases<Integer> {
    /** Pots are filled this far: common practice. */
    private static final double USABLE = 0.75;
    /** How much longer two and three trays take together: common practice, from the arithmetic of heat. */
    private static final double[] TRAYS_TOGETHER = {1, 1.2, 1.35};
    /** How much of an 800 W microwave oven reaches the food [kW]. */
    private static final double MICROWAVE_KILOWATTS = 0.44;

    private final Batch batch;
    private final Way way;
    private final Equipment equipment;
    private final Pots pots;
    private double hands;
    private double rest;
    private int places;
    private Optional<StepWork.Loads> loads = Optional.empty();

    private LawfulWork(Batch batch, Way way, Equipment equipment) {
        this.batch = batch;
        this.way = way;
        this.equipment = equipment;
        this.pots = way.pot().map(this::pots).orElse(Pots.ONE);
        this.places =
                occupies() ? Math.max(uses(Appliance.OVEN) ? Math.min(way.shelves(), shelves()) : 1, pots.atOnce()) : 0;
    }

    static StepWork of(Batch batch, Step step, Way way, Equipment equipment) {
        var work = new LawfulWork(batch, way, equipment);
        way.laws().forEach(law -> law.match(work));
        if (step.fills() && !way.isForFive()) {
            work.hands += portioning(batch);
        }
        int handsOn = HandTimes.whole(work.hands);
        int minutes = Math.max(1, HandTimes.whole(work.hands + work.rest));
        return new StepWork(minutes, handsOn, work.places, work.loads.or(work::potLoads));
    }

    /** Minutes to weigh, close and label all containers. */
    static double portioning(Batch batch) {
        double minutes = HandTimes.PORTION_START;
        for (var fill : batch.fills()) {
            long parts = fill.portions().stream().filter(p -> p.rawGrams() > 0).count();
            minutes += fill.containers() * (HandTimes.PORTION_CONTAINER + HandTimes.PORTION_PART * parts);
        }
        return minutes;
    }

    @Override
    public Integer handWork(TimeLaw.HandWork law) {
        hands += law.minutes();
        for (Map.Entry<Handled, Double> each : law.perKg().entrySet()) {
            hands += each.getValue() * boughtKg(each.getKey());
        }
        return 0;
    }

    /** As bought: peel and stalks take time, too. */
    private double boughtKg(Handled handled) {
        double share = handled instanceof Handled.OfFood food
                ? food.food().edibleShare().doubleValue()
                : 1;
        return kg(handled) / share;
    }

    private double kg(Handled handled) {
        return batch.grams(handled).map(BigDecimal::doubleValue).orElse(0.0) / HandTimes.GRAMS_PER_KG;
    }

    private double kg(List<Handled> all) {
        return all.stream().mapToDouble(this::kg).sum();
    }

    @Override
    public Integer loads(TimeLaw.Loads law) {
        double grams = kg(law.of()) * HandTimes.GRAMS_PER_KG;
        int number = (int) Math.ceil(grams / (law.grams() * size()) - HandTimes.TOLERANCE);
        if (number == 0) {
            return 0;
        }
        int atOnce = Math.min(number, atOnce());
        int rounds = (number + atOnce - 1) / atOnce;
        double minutes = law.minutes() + rounds * law.each() * together(atOnce);
        if (uses(Appliance.BURNER)) {
            hands += minutes + (rounds - 1) * HandTimes.BETWEEN_LOADS;
        } else {
            rest += minutes;
        }
        places = occupies() ? Math.max(places, atOnce) : 0;
        if (number > 1) {
            loads = Optional.of(new StepWork.Loads(vessel(), number, atOnce, (int) Math.round(grams / number)));
        }
        return 0;
    }

    private double together(int atOnce) {
        return uses(Appliance.OVEN) ? TRAYS_TOGETHER[Math.min(atOnce, TRAYS_TOGETHER.length) - 1] : 1;
    }

    private double size() {
        return uses(Appliance.BURNER) ? HandTimes.panSize(equipment) : 1;
    }

    private int atOnce() {
        if (uses(Appliance.OVEN)) {
            return Math.max(1, shelves());
        }
        return uses(Appliance.BURNER) ? HandTimes.pansAtOnce(equipment) : 1;
    }

    private int shelves() {
        return equipment.oven().shelves();
    }

    private String vessel() {
        if (uses(Appliance.OVEN)) {
            return "tray";
        }
        return uses(Appliance.BURNER) ? "pan" : "load";
    }

    @Override
    public Integer power(TimeLaw.Power law) {
        double kilowatts = uses(Appliance.MICROWAVE)
                ? MICROWAVE_KILOWATTS
                : equipment.hob().kilowatts();
        double minutes = 0;
        for (Map.Entry<Handled, Double> each : law.perKg().entrySet()) {
            minutes += each.getValue() * kg(each.getKey());
        }
        rest += law.minutes() + minutes / (kilowatts * pots.atOnce());
        return 0;
    }

    @Override
    public Integer byItself(TimeLaw.ByItself law) {
        rest += law.minutes() * pots.rounds();
        return 0;
    }

    /** As written for five containers: the hands in proportion, to the nearest whole tray, and pots that are large enough. */
    @Override
    public Integer forFive(TimeLaw.ForFive law) {
        int containers = batch.containers();
        int all = law.handsOn() * containers;
        int handsOn = Math.max(law.handsOn(), (all + Step.FOR_CONTAINERS - 1) / Step.FOR_CONTAINERS);
        hands += handsOn;
        int trays = Math.max(
                way.shelves(), (2 * way.shelves() * containers + Step.FOR_CONTAINERS) / (2 * Step.FOR_CONTAINERS));
        int lots = uses(Appliance.OVEN) ? (trays + shelves() - 1) / shelves() : 1;
        rest += (law.minutes() - law.handsOn()) * lots;
        places = uses(Appliance.OVEN) ? Math.min(trays, shelves()) : places;
        return 0;
    }

    private boolean occupies() {
        return way.on().isPresent();
    }

    private boolean uses(Appliance appliance) {
        return way.uses(appliance);
    }

    /** How many pots a step fills side by side, and how often. */
    private record Pots(int atOnce, int rounds) {
        static final Pots ONE = new Pots(1, 1);
    }

    private Pots pots(Way.Volume volume) {
        double litres = kg(volume.of()) * volume.litresPerKg();
        List<BigDecimal> vessels = uses(Appliance.BURNER)
                ? equipment.pots()
                : way.on().map(equipment.others()::get).stream().toList();
        int most = uses(Appliance.BURNER)
                ? Math.min(vessels.size(), equipment.hob().burners())
                : vessels.size();
        double held = 0;
        for (int pot = 0; pot < most; pot++) {
            held += vessels.get(pot).doubleValue() * USABLE;
            if (held >= litres - HandTimes.TOLERANCE) {
                return new Pots(pot + 1, 1);
            }
        }
        return most == 0 ? Pots.ONE : new Pots(most, (int) Math.ceil(litres / held - HandTimes.TOLERANCE));
    }

    private Optional<StepWork.Loads> potLoads() {
        int number = pots.atOnce() * pots.rounds();
        return number < 2
                ? Optional.empty()
                : way.pot()
                        .map(volume -> new StepWork.Loads("pot", number, pots.atOnce(), (int)
                                Math.round(kg(volume.of()) * HandTimes.GRAMS_PER_KG / number)));
    }
}

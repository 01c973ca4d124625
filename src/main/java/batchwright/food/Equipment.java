package batchwright.food;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a kitchen cooks with.
 *
 * @param pots litres of each, the largest first
 * @param pans litres of each, the largest first; 2.3 l is a pan of 28 cm
 * @param others appliances of which there is one each, such as a rice cooker, with their litres
 * @param cooks how many pairs of hands, at least 1
 * @param limits what one session and one box may come to
 */
public record Equipment(
        Hob hob,
        Oven oven,
        List<BigDecimal> pots,
        List<BigDecimal> pans,
        Map<Appliance, BigDecimal> others,
        int cooks,
        Limits limits) {
    /**
     * @param burners 0 where there are none
     * @param kilowatts that reach what stands on one of them
     */
    public record Hob(int burners, double kilowatts) {
        public Hob {
            if (burners < 0 || kilowatts <= 0) {
                throw new IllegalArgumentException(
                        "burners (" + burners + ") must be at least 0, kilowatts (" + kilowatts + ") above 0.");
            }
        }
    }

    /**
     * @param shelves of all ovens together, which are at one temperature; 0 where there is none
     * @param heatingMinutes until it is at another temperature, also from cold
     * @param toleranceCelsius dishes whose temperatures differ by no more share it
     */
    public record Oven(int shelves, int heatingMinutes, int toleranceCelsius) {
        public Oven {
            if (shelves < 0 || heatingMinutes < 0 || toleranceCelsius < 0) {
                throw new IllegalArgumentException("shelves (" + shelves + "), heatingMinutes (" + heatingMinutes
                        + ") and toleranceCelsius (" + toleranceCelsius + ") must be at least 0.");
            }
        }
    }

    /**
     * @param handsOnMinutes most that a session may take the cooks' hands, all of them together
     * @param doneWithinMinutes most from the start of a session until its last step ends
     * @param boxMillilitres largest box there is
     * @param boxGrams most that a box should weigh
     */
    public record Limits(
            OptionalInt handsOnMinutes,
            OptionalInt doneWithinMinutes,
            OptionalInt boxMillilitres,
            OptionalInt boxGrams) {
        public static final Limits NONE =
                new Limits(OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty());
    }

    /** The litres of a pan of 28 cm, for which loads are written. */
    public static final BigDecimal USUAL_PAN = new BigDecimal("2.3");

    /**
     * A usual home kitchen, common practice: four burners, an oven with two trays, three pots, two pans. 1.2 kW is what a large gas
     * flame or a ceramic plate brings into the food (arithmetic from 3.0 kW at 40 %, 2.2 kW at 60 %).
     */
    public static final Equipment USUAL = new Equipment(
            new Hob(4, 1.2),
            new Oven(2, 10, 10),
            List.of(new BigDecimal("9.9"), new BigDecimal("5.4"), new BigDecimal("3.0")),
            List.of(USUAL_PAN, USUAL_PAN),
            Map.of(),
            1,
            Limits.NONE);

    public Equipment {
        pots = pots.stream().sorted(Collections.reverseOrder()).toList();
        pans = pans.stream().sorted(Collections.reverseOrder()).toList();
        var ordered = new EnumMap<Appliance, BigDecimal>(Appliance.class);
        ordered.putAll(others);
        others = Collections.unmodifiableMap(ordered);
        if (cooks < 1) {
            throw new IllegalArgumentException("cooks (" + cooks + ") must be at least 1.");
        }
    }

    public boolean has(Appliance appliance) {
        return switch (appliance) {
            case BURNER -> hob.burners() > 0;
            case OVEN -> oven.shelves() > 0;
            default -> others.containsKey(appliance);
        };
    }

    /** How many steps can be on it at once: burners, shelves, or one. */
    public int places(Appliance appliance) {
        return switch (appliance) {
            case BURNER -> hob.burners();
            case OVEN -> oven.shelves();
            default -> others.containsKey(appliance) ? 1 : 0;
        };
    }

    /** The first step of a dish, by its text, that nothing in this kitchen can do; empty when the dish can be cooked. */
    public Optional<Step> obstacle(Dish dish) {
        return dish.steps().stream().filter(step -> step.way(this).isEmpty()).findFirst();
    }

    public Equipment withHandsOnMinutes(OptionalInt most) {
        return with(new Limits(most, limits.doneWithinMinutes(), limits.boxMillilitres(), limits.boxGrams()));
    }

    public Equipment withDoneWithinMinutes(OptionalInt most) {
        return with(new Limits(limits.handsOnMinutes(), most, limits.boxMillilitres(), limits.boxGrams()));
    }

    private Equipment with(Limits other) {
        return new Equipment(hob, oven, pots, pans, others, cooks, other);
    }

    /** Most hands-on minutes, all cooks together, of a session that keeps both limits on its time; empty without them. */
    public OptionalInt mostHandsOnMinutes() {
        OptionalInt inTime = limits.doneWithinMinutes();
        if (inTime.isEmpty()) {
            return limits.handsOnMinutes();
        }
        int all = inTime.getAsInt() * cooks;
        return OptionalInt.of(Math.min(all, limits.handsOnMinutes().orElse(all)));
    }
}

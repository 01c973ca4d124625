package batchwright.cli;

import batchwright.app.DishQuestion;
import batchwright.app.Refused;
import batchwright.plan.ContainerWish;
import batchwright.plan.DishRequest;
import batchwright.plan.EnergyBand;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options that ask for containers of one dish. */
final class FillOptions {
    private static final int MOST_KCAL = 5000;
    private static final int MOST_PROTEIN = 300;
    private static final int MOST_FAT = 500;
    private static final int MOST_BAND = 50;

    @Option(
            names = "--containers",
            paramLabel = "N",
            description = "How many containers to fill, all alike, 1 to " + DishRequest.MOST_CONTAINERS + "; default "
                    + DishRequest.USUAL_CONTAINERS + ".")
    private @Nullable String containers;

    @Option(
            names = "--kcal",
            paramLabel = "K",
            description = "Energy of each container [kcal]: 700, or from-to: 600-700.")
    private @Nullable String kcal;

    @Option(
            names = "--band",
            paramLabel = "PERCENT",
            description = "How far each may be off --kcal, 0 to 50 per cent; default 3.")
    private @Nullable String band;

    @Option(names = "--protein", paramLabel = "G", description = "Least protein of each container [g].")
    private @Nullable String protein;

    @Option(names = "--fat", paramLabel = "G", description = "Most fat of each container [g]; default no limit.")
    private @Nullable String fat;

    @Option(names = "--with", paramLabel = "PART", description = "An optional part that must be in; may be repeated.")
    private List<String> with = new ArrayList<>();

    @Option(names = "--without", paramLabel = "PART", description = "An optional part to leave out; may be repeated.")
    private List<String> without = new ArrayList<>();

    @Option(names = "--no-pantry", description = "Buy everything: use nothing of what is at home.")
    private boolean noPantry;

    @Option(
            names = "--budget",
            paramLabel = "M",
            description = "Most to spend at the checkout, such as 12 or 12.50; default no limit.")
    private @Nullable String budget;

    /** Whether containers are asked for. */
    boolean any() {
        return Stream.of(containers, kcal, band, protein, fat, budget).anyMatch(option -> option != null)
                || !with.isEmpty()
                || !without.isEmpty()
                || noPantry;
    }

    /** @throws Refused when an option is not right */
    DishQuestion question(String dish) {
        if (kcal == null && protein == null) {
            throw Refused.because(
                    "nothing says how much a container of " + dish + " should hold",
                    "Enter --kcal, --protein or both: dishes " + dish + " --containers 5 --kcal 700 --protein 40.");
        }
        return new DishQuestion(
                dish,
                Optional.ofNullable(containers)
                        .map(text ->
                                new Given("--containers", text).whole(1, DishRequest.MOST_CONTAINERS, "containers"))
                        .orElse(DishRequest.USUAL_CONTAINERS),
                ContainerWish.NONE
                        .withEnergy(energy())
                        .withProtein(amount("--protein", protein, MOST_PROTEIN))
                        .withFat(amount("--fat", fat, MOST_FAT)),
                with,
                without,
                !noPantry,
                Optional.ofNullable(budget).map(text -> new Given("--budget", text).money()));
    }

    private static Optional<BigDecimal> amount(String name, @Nullable String text, int most) {
        return Optional.ofNullable(text).map(given -> new Given(name, given).oneDecimal(most, "g"));
    }

    private Optional<EnergyBand> energy() {
        Optional<BigDecimal> percent =
                Optional.ofNullable(band).map(text -> new Given("--band", text).oneDecimal(MOST_BAND, "per cent"));
        if (kcal == null) {
            if (percent.isPresent()) {
                throw Refused.because("--band needs --kcal", "Enter the energy too: --kcal 700 --band " + band + ".");
            }
            return Optional.empty();
        }
        if (!kcal.matches("[^-]+-[^-]+")) {
            BigDecimal aim = new Given("--kcal", kcal).oneDecimal(MOST_KCAL, "kcal, or two as in 600-700,");
            return Optional.of(EnergyBand.around(aim, percent.orElse(EnergyBand.USUAL_PERCENT)));
        }
        if (percent.isPresent()) {
            throw Refused.because(
                    "--kcal " + kcal + " is a band already", "Leave --band out, or enter one number of kcal.");
        }
        String[] ends = kcal.split("-", 2);
        BigDecimal least = new Given("--kcal", ends[0]).oneDecimal(MOST_KCAL, "kcal");
        BigDecimal most = new Given("--kcal", ends[1]).oneDecimal(MOST_KCAL, "kcal");
        if (least.compareTo(most) > 0) {
            throw Refused.because(
                    "--kcal " + kcal + " begins above its end", "Write it as --kcal " + ends[1] + "-" + ends[0] + ".");
        }
        return Optional.of(EnergyBand.between(least, most));
    }
}

package batchwright.cli;

import batchwright.app.Refused;
import batchwright.app.SeenPrice;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** A price that is entered: foods ID --price 2.49 --pack 500g --shop NAME. */
final class PriceOptions {
    @Option(
            names = "--price",
            paramLabel = "M",
            description = "Put the price of a pack of this food into your foods/shop.csv; needs --pack and --shop.")
    private @Nullable String price;

    @Option(
            names = "--pack",
            paramLabel = "WEIGHT",
            description = "Weight of the pack: 500g, \"1 kg\" or \"4 x 400 g\".")
    private @Nullable String pack;

    @Option(names = "--shop", paramLabel = "NAME", description = "The shop with that price.")
    private @Nullable String shop;

    @Option(
            names = "--label",
            paramLabel = "TEXT",
            description = "What the shelf calls the pack, such as \"bag\"; default pack.")
    private @Nullable String label;

    /** Whether any of them is given. */
    boolean any() {
        return Stream.of(price, pack, shop, label).anyMatch(given -> given != null);
    }

    /** @throws Refused when one of the three that are needed is missing */
    SeenPrice seen(String food) {
        String asked = "foods " + food + " --price 2.49 --pack 500g --shop \"corner market\"";
        return new SeenPrice(
                need(shop, "--shop", asked),
                need(pack, "--pack", asked),
                Optional.ofNullable(label),
                need(price, "--price", asked));
    }

    private static String need(@Nullable String given, String option, String asked) {
        if (given == null || given.isBlank()) {
            throw Refused.because("a price is entered without " + option, "Write " + asked + ".");
        }
        return given.strip();
    }
}

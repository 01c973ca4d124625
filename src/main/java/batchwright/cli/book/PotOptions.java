package batchwright.cli.book;

import batchwright.answer.PotAnswer;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.app.book.SharePot;
import batchwright.app.book.SharePot.SharedPot;
import batchwright.app.book.WriteInBook;
import batchwright.cli.Batchwright;
import batchwright.cli.FilesBeside;
import batchwright.cli.LabelOptions;
import batchwright.food.Kitchen;
import batchwright.report.book.BookText;
import batchwright.report.book.PotText;
import batchwright.report.labels.LabelStyle;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The pot as it came out: what goes into each container. */
final class PotOptions {
    private static final Pattern WEIGHT = Pattern.compile("([0-9]{1,6}(?:\\.[0-9]{1,3})?)\\s*(g|kg)");
    private static final Pattern FILLED = Pattern.compile("filled (\\S+)( as planned)?");

    @Option(
            names = "--pot-with-lid",
            paramLabel = "WEIGHT",
            description =
                    "With \"filled DISH\": what the full pot weighs, its lid on or off like the empty one: 5.3kg.")
    private @Nullable String full;

    @Option(names = "--pot", paramLabel = "WEIGHT", description = "What it weighs empty, such as 1.9kg; default 0.")
    private @Nullable String empty;

    @Option(names = "--part", paramLabel = "NAME", description = "Which part of the dish is in it; default the first.")
    private @Nullable String part;

    @Mixin
    private LabelOptions labels = new LabelOptions();

    @Option(names = "--force", description = "Replace a file of that name although the program did not make it.")
    private boolean force;

    boolean isGiven() {
        return full != null || empty != null || part != null || labels.isWanted();
    }

    int share(Batchwright program, Workspace workspace, List<String> words, LocalDate day, boolean sure) {
        Matcher filled = FILLED.matcher(String.join(" ", words));
        if (!filled.matches() || full == null) {
            throw Refused.because(
                    "a pot is shared out with \"filled DISH\" and the weight of the full pot",
                    "Say: book filled DISH --pot-with-lid 5.3kg --pot 1.9kg.");
        }
        BigDecimal net =
                grams("--pot-with-lid", full).subtract(empty == null ? BigDecimal.ZERO : grams("--pot", empty));
        if (net.signum() <= 0) {
            throw Refused.because("the full pot weighs no more than the empty one", "Weigh both again.");
        }
        Kitchen kitchen = workspace.kitchen();
        LabelStyle style = labels.style();
        FilesBeside files = program.filesBeside(force);
        labels.check(files);
        SharedPot shared = new SharePot(workspace, kitchen, day).share(filled.group(1), Optional.ofNullable(part), net);
        PotAnswer answer = shared.answer();
        String written = "";
        if (filled.group(2) != null) {
            written = BookText.of(new WriteInBook(workspace, kitchen, sure).add(String.join(" ", words), day, answer));
        }
        int exit = program.answer(program.isJson() ? PotText.json(answer) : PotText.of(answer) + written);
        labels.write(shared.labels(), style, files);
        return files.exit(exit);
    }

    private static BigDecimal grams(String option, String text) {
        Matcher weight = WEIGHT.matcher(text.strip());
        if (!weight.matches()) {
            throw Refused.because(option + " cannot be \"" + text + "\"", "Enter a weight such as 5300g or 5.3kg.");
        }
        BigDecimal number = new BigDecimal(weight.group(1));
        return weight.group(2).equals("kg") ? number.movePointRight(3) : number;
    }
}

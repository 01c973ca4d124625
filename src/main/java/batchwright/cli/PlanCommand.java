package batchwright.cli;

import batchwright.answer.EatenFirst;
import batchwright.answer.PlanAnswer;
import batchwright.answer.RestOfPlan;
import batchwright.app.DishesWanted;
import batchwright.app.PlanQuestion;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.app.book.LastTime;
import batchwright.cli.book.Before;
import batchwright.cli.book.StockOptions;
import batchwright.plan.PlanRequest;
import batchwright.report.cooking.KitchenClock;
import batchwright.report.export.WholePlan;
import batchwright.report.html.HtmlReport;
import batchwright.report.html.ReportStyle;
import batchwright.report.labels.LabelStyle;
import batchwright.report.plan.EatenFirstJson;
import batchwright.report.plan.EatenFirstText;
import batchwright.report.plan.PlanJson;
import batchwright.report.plan.PlanText;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** plan EATER... */
@Command(
        name = "plan",
        header = "What to cook, eat and buy, at the lowest cost in whole packs.",
        customSynopsis = "plan EATER... [--days N] [--budget M] [OPTIONS]",
        footer = {
            "  java -jar target/batchwright.jar plan lifter-gaining --budget 60",
            "  java -jar target/batchwright.jar plan desk-cutting parent-holding --days 4"
        })
final class PlanCommand implements Callable<Integer> {
    private static final int MOST_DISHES = 10;
    private static final int MOST_SECONDS = 3600;
    private static final int MOST_MINUTES = 24 * 60;
    private static final int MOST_RESERVE = 50;
    private static final int MOST_EATERS = 6;

    /** Set by the command line's parser before {@link #call()}. */
    @ParentCommand
    @SuppressWarnings("NullAway.Init")
    private Batchwright program;

    @Parameters(
            arity = "0..*",
            hideParamSyntax = true,
            paramLabel = "EATER",
            description = "Profiles of those who share the batches: files, or short names in profiles/.")
    private List<String> eaters = new ArrayList<>();

    @Option(
            names = "--days",
            paramLabel = "N",
            description = "Days to plan, 1 to 28; default " + PlanRequest.USUAL_DAYS + ".")
    private @Nullable String days;

    @Option(
            names = "--budget",
            paramLabel = "M",
            description = "Most to spend at the checkout, such as 75 or 75.50; default no limit.")
    private @Nullable String budget;

    @Option(
            names = "--cook",
            paramLabel = "DISH",
            split = ",",
            description = "Cook only among these dishes, separated by commas; default any.")
    private List<String> cook = new ArrayList<>();

    @Option(
            names = "--shelves",
            paramLabel = "SHELF",
            split = ",",
            description = "Cook among the dishes of these shelves: everyday, others that \"dishes\" lists, or all;"
                    + " default everyday.")
    private List<String> shelves = new ArrayList<>();

    @Option(
            names = "--with",
            paramLabel = "DISH",
            split = ",",
            description = "Cook these dishes in any case; the rest is chosen. To keep a dish of a plan, name it here.")
    private List<String> with = new ArrayList<>();

    @Option(
            names = "--without",
            paramLabel = "NAME",
            split = ",",
            description =
                    "Leave out these dishes, foods or groups such as pork, this time. To swap a dish, name it here.")
    private List<String> without = new ArrayList<>();

    @Option(
            names = "--shops",
            paramLabel = "SHOP",
            split = ",",
            description =
                    "Buy only in these shops of foods/shop.csv, separated by commas; default any. A trip costs what"
                            + " foods/kitchen.yaml says.")
    private List<String> shops = new ArrayList<>();

    @Option(
            names = "--dishes",
            paramLabel = "N",
            defaultValue = "" + PlanRequest.USUAL_MOST_DISHES,
            description = "Most dishes in a cooking session, 1 to 10, or the least and the most, such as 2-3; default"
                    + " ${DEFAULT-VALUE}.")
    private String dishes = "";

    @Option(
            names = "--last-time",
            paramLabel = "DISH",
            split = ",",
            description =
                    "Dishes that you cooked last time, or book for those of the plan kept last: at most one of them is cooked again.")
    private List<String> lastTime = new ArrayList<>();

    @Option(
            names = "--most-minutes",
            paramLabel = "M",
            description =
                    "Most minutes that a cooking session may take your hands, filling and washing up counted; default what"
                            + " foods/kitchen.yaml says, or no limit.")
    private @Nullable String mostMinutes;

    @Option(
            names = "--done-within",
            paramLabel = "M",
            description = "Most minutes from the start of a cooking session until its last step ends; default what"
                    + " foods/kitchen.yaml says, or no limit.")
    private @Nullable String doneWithin;

    @Option(
            names = "--seconds",
            paramLabel = "S",
            defaultValue = "30",
            description = "How long to search, 1 to 3600; default ${DEFAULT-VALUE}.")
    private String seconds = "";

    @Option(
            names = "--within",
            paramLabel = "P%",
            description =
                    "End the search when no plan can be cheaper by more than so many per cent, such as 2%%; default: search to"
                            + " the proof.")
    private @Nullable String within;

    @Option(
            names = "--reserve",
            paramLabel = "P%",
            description =
                    "Room to spare: have so many per cent more at hand of what is weighed into dishes, such as 5%%, for a"
                            + " thick peel or a spill; default what foods/kitchen.yaml says, or none.")
    private @Nullable String reserve;

    @Option(
            names = "--nutrients",
            description =
                    "Show every nutrient of an average day beside published amounts, not only those that are too low or too high.")
    private boolean nutrients;

    @Option(
            names = "--force",
            description =
                    "Let --report, --label-pdf, --shopping, --calendar, --model and --proof replace files that this program did not make.")
    private boolean force;

    @Mixin
    private StockOptions stock = new StockOptions();

    @Mixin
    private SessionOptions sessions = new SessionOptions();

    @Mixin
    private ModelOption model = new ModelOption();

    @Mixin
    private ProofOption proof = new ProofOption();

    @Mixin
    private InsightOptions insight = new InsightOptions();

    @Mixin
    private ReportOptions report = new ReportOptions();

    @Mixin
    private LabelOptions labels = new LabelOptions();

    @Mixin
    private ExportOptions export = new ExportOptions();

    @Mixin
    private LookOptions look = new LookOptions();

    @Override
    public Integer call() {
        if (eaters.isEmpty()) {
            throw Refused.because("no eater is named", "Name one or more profiles: plan lifter-gaining.");
        }
        if (eaters.size() > MOST_EATERS) {
            throw Refused.because(eaters.size() + " eaters are named", "Name at most " + MOST_EATERS + ".");
        }
        Workspace today = workspace();
        PlanQuestion asked = question(today);
        if (stock.isRest()) {
            return rest(today, asked);
        }
        EatenFirst first = stock.first(today.quietly(), asked.eaters(), asked.days());
        if (first.days() == asked.days()) {
            return nothingToCook(first);
        }
        Workspace workspace = today.on(first.next());
        PlanQuestion question = asked.withDays(asked.days() - first.days());
        return plan(workspace, question, Before.of(first, program.commands()));
    }

    /** The rest of a kept plan, with what is there. */
    private int rest(Workspace today, PlanQuestion asked) {
        if (days != null) {
            throw Refused.because(
                    "--rest and --days cannot be used together",
                    "The rest of a plan has its own days: leave one of the two out.");
        }
        if (asked.cooking().sessions() > 1) {
            throw Refused.because("--rest goes with one cooking session", "Leave out --cooks or --rest.");
        }
        model.refuse("--rest");
        proof.refuse("--rest");
        insight.refuse("--rest");
        RestOfPlan rest = stock.rest(today.quietly(), asked.eaters());
        return plan(
                today.on(rest.stretch().first()),
                asked.withDays(rest.stretch().days()).with(rest.left()),
                Before.of(rest));
    }

    private int plan(Workspace workspace, PlanQuestion question, Before before) {
        if (question.cooking().sessions() > 1) {
            if (!with.isEmpty()) {
                throw Refused.because(
                        "--with cannot be used with several cooking sessions",
                        "Each session chooses its own dishes: leave one of the two out, or use --cook.");
            }
            if (!lastTime.isEmpty()) {
                throw Refused.because(
                        "--last-time cannot be used with several cooking sessions",
                        "Leave one of the two out; --vary cooks no dish in two sessions in a row.");
            }
            model.refuse("--cooks");
            proof.refuse("--cooks");
            insight.refuse("--cooks");
        }
        KitchenClock clock = export.clock();
        LabelStyle style = labels.style();
        FilesBeside files = program.filesBeside(force);
        report.check(files);
        labels.check(files);
        export.check(files);
        int width = look.width(program);
        try (var interruption = new Interruption(() -> program.complain("\nStopped at once: no plan is shown.\n"))) {
            model.check(files);
            proof.check(files);
            stock.check(workspace);
            PlanAnswer answer = answer(workspace, question, interruption);
            ExitCode exit = exit(answer, interruption.asked(), insight.isWanted());
            program.answer(
                    program.json
                            ? before.json(answer, clock)
                            : before.text(answer, width)
                                    + PlanText.of(answer, program.commands(), nutrients, clock, width));
            stock.write(answer, a -> PlanJson.of(a, clock))
                    .ifPresent(file -> program.complain("Kept as " + file + "\n"));
            model.write(files);
            proof.write(files, workspace, question, answer, interruption::asked);
            write(() -> HtmlReport.of(answer, new ReportStyle(style, clock)), WholePlan.of(answer), style, files);
            return files.exit(exit).code();
        }
    }

    private int nothingToCook(EatenFirst first) {
        return program.answer(
                program.json
                        ? EatenFirstJson.ofAll(first)
                        : EatenFirstText.of(first, program.commands(), look.width(program))
                                + "Nothing needs to be cooked: what is left lasts for all days that are asked for.\n");
    }

    private PlanAnswer answer(Workspace workspace, PlanQuestion question, Interruption interruption) {
        try (var progress = program.progress(interruption)) {
            PlanAnswer answer = program.plans().answer(workspace, question, progress, model::asked);
            ownUp(progress);
            return answer;
        }
    }

    private void write(Supplier<String> html, Optional<WholePlan> plan, LabelStyle style, FilesBeside files) {
        report.write(html, plan.isPresent(), files);
        labels.write(plan, style, files);
        export.write(plan, files);
    }

    /** Reports faults that did not cost the plan, but perhaps a cheaper one. */
    private void ownUp(ProgressLine progress) {
        progress.close();
        progress.faults()
                .forEach(fault ->
                        program.complain("a fault of ours: something went wrong in the search, so the plan shown is the"
                                + " best that passed its audit.\nPlease report this line: " + fault + "\n"));
    }

    private Workspace workspace() {
        return program.workspace()
                .withMinutes(minutes("--most-minutes", mostMinutes), minutes("--done-within", doneWithin))
                .withReserve(Optional.ofNullable(reserve).map(PlanCommand::share));
    }

    private static OptionalInt minutes(String option, @Nullable String given) {
        return given == null
                ? OptionalInt.empty()
                : OptionalInt.of(new Given(option, given).whole(10, MOST_MINUTES, "minutes"));
    }

    private PlanQuestion question(Workspace today) {
        int howLong = new Given("--days", days == null ? "" + PlanRequest.USUAL_DAYS : days)
                .whole(1, PlanRequest.MOST_DAYS, "days");
        return new PlanQuestion(
                eaters,
                howLong,
                Optional.ofNullable(budget).map(text -> new Given("--budget", text).money()),
                sessions.cooking(wanted(today), new Given("--dishes", dishes).dishes(MOST_DISHES), howLong),
                names(shops),
                new PlanQuestion.HowLong(
                        Duration.ofSeconds(new Given("--seconds", seconds).whole(1, MOST_SECONDS, "seconds")),
                        Optional.ofNullable(within).map(PlanCommand::perCent)),
                insight.wanted());
    }

    private DishesWanted wanted(Workspace today) {
        var wanted = new DishesWanted(names(cook), names(with), names(without), lastTime(today));
        return shelves.isEmpty() ? wanted : wanted.andShelves(today.kitchen(), names(shelves));
    }

    private static BigDecimal perCent(String text) {
        return perCent("--within", text, 100);
    }

    private static BigDecimal share(String text) {
        return perCent("--reserve", text, MOST_RESERVE).movePointLeft(2);
    }

    private static BigDecimal perCent(String option, String text, int most) {
        return new Given(option, text.replaceFirst("\\s*%$", "")).oneDecimal(most, "per cent");
    }

    private List<String> lastTime(Workspace today) {
        List<String> dishes = names(lastTime);
        return dishes.equals(List.of("book")) ? LastTime.dishes(today.quietly()) : dishes;
    }

    private static List<String> names(List<String> typed) {
        return typed.stream().map(String::strip).toList();
    }

    private static ExitCode exit(PlanAnswer answer, boolean interrupted, boolean more) {
        return answer.isContradicted() ? ExitCode.OUR_FAULT : exit(answer.status(), interrupted, more);
    }

    /** @param more whether more was asked for than the plan, so that an interruption cuts that short */
    private static ExitCode exit(PlanAnswer.Status status, boolean interrupted, boolean more) {
        return switch (status) {
            case PLANNED -> interrupted && more ? ExitCode.INTERRUPTED : ExitCode.DONE;
            case NO_PLAN -> interrupted ? ExitCode.INTERRUPTED : ExitCode.NO_PLAN;
            case NOT_PROVEN -> interrupted ? ExitCode.INTERRUPTED : ExitCode.NOT_PROVEN;
        };
    }
}

package batchwright.report.html;

import batchwright.answer.PlanAnswer;
import batchwright.app.CookingWanted;
import batchwright.app.DishNumber;
import batchwright.app.DishesWanted;
import batchwright.app.InsightWanted;
import batchwright.app.MakePlan;
import batchwright.app.PlanQuestion;
import batchwright.app.TypedSum;
import batchwright.app.Workspace;
import batchwright.app.WriteStarterFiles;
import batchwright.plan.Watch;
import batchwright.report.labels.LabelRounding;
import batchwright.report.labels.LabelSheet;
import batchwright.report.labels.LabelStyle;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import org.jspecify.annotations.Nullable;

/** Plans for the tests of the report, of the starter files or of some with odd names. */
public final class Reports {
    public static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    static final ReportStyle STYLE = new ReportStyle(new LabelStyle(LabelSheet.A4_2X7, LabelRounding.US));

    /** Markup, quotes, right to left, an emoji. */
    private static final String ODD = "<b>\"R\" & 'friends'</b> <script>alert(1)</script> שלום עולם \uD83C\uDF72";

    private static final int LONG = 200;

    private static @Nullable PlanAnswer twoEaters;
    private static @Nullable PlanAnswer oddNames;

    private Reports() {}

    /** 200 characters. */
    public static String oddName(String first) {
        var name = new StringBuilder(first + " " + ODD);
        while (name.codePointCount(0, name.length()) < LONG) {
            name.append(" and so on");
        }
        return name.substring(0, name.offsetByCodePoints(0, LONG)).strip();
    }

    /** Made once: a plan takes seconds. */
    public static synchronized PlanAnswer twoEaters(Path folder) {
        if (twoEaters == null) {
            twoEaters = makeTwoEaters(folder);
        }
        return twoEaters;
    }

    private static PlanAnswer makeTwoEaters(Path folder) {
        new WriteStarterFiles().into(folder);
        return plan(folder, List.of("desk-cutting", "parent-holding"), List.of("lentil_ragu", "pepper_eggs"), 2);
    }

    /** The same with a name of each kind that no one should have. */
    static synchronized PlanAnswer oddNames(Path folder) throws IOException {
        if (oddNames == null) {
            oddNames = makeOddNames(folder);
        }
        return oddNames;
    }

    private static PlanAnswer makeOddNames(Path folder) throws IOException {
        new WriteStarterFiles().into(folder);
        replace(folder.resolve("profiles/parent-holding.yaml"), "(?m)^name: .*$", "name: " + yaml(oddName("Eater")));
        replace(folder.resolve("foods/dishes/lentil_ragu.yaml"), "(?m)^name: .*$", "name: " + yaml(oddName("Dish")));
        replace(
                folder.resolve("foods/catalogue.csv"),
                "(?m)^lentils,[^,]*?(\"[^\"]*\")?,",
                "lentils,\"" + oddName("Food").replace("\"", "\"\"") + "\",");
        return plan(folder, List.of("parent-holding"), List.of("lentil_ragu"), 2);
    }

    /** No budget is enough. */
    static PlanAnswer noPlan(Path folder) {
        new WriteStarterFiles().into(folder);
        return plan(
                folder,
                List.of("parent-holding"),
                List.of("lentil_ragu"),
                1,
                Optional.of(new TypedSum(BigDecimal.ONE)));
    }

    public static void replace(Path file, String pattern, String other) throws IOException {
        String before = Files.readString(file);
        String after = before.replaceFirst(pattern, Matcher.quoteReplacement(other));
        if (after.equals(before)) {
            throw new IllegalArgumentException("pattern (" + pattern + ") is not in " + file + ".");
        }
        Files.writeString(file, after);
    }

    public static PlanAnswer plan(Path folder, List<String> eaters, List<String> dishes, int days) {
        return plan(folder, eaters, dishes, days, Optional.of(new TypedSum(new BigDecimal("90.00"))));
    }

    private static PlanAnswer plan(
            Path folder, List<String> eaters, List<String> dishes, int days, Optional<TypedSum> budget) {
        return new MakePlan()
                .answer(
                        Workspace.open(Optional.of(folder), folder, TODAY, note -> {}),
                        new PlanQuestion(
                                eaters,
                                days,
                                budget,
                                new CookingWanted(DishesWanted.only(dishes), DishNumber.atMost(3)),
                                List.of(),
                                new PlanQuestion.HowLong(Duration.ofSeconds(60)),
                                InsightWanted.NONE),
                        Watch.NONE,
                        request -> {});
    }

    /** Two days, cooked for on each of them. */
    static PlanAnswer sessions(Path folder, boolean shopOnce) {
        new WriteStarterFiles().into(folder);
        var question = new PlanQuestion(
                List.of("parent-holding"),
                2,
                Optional.empty(),
                new CookingWanted(
                        DishesWanted.only(List.of("lentil_ragu", "pepper_eggs")),
                        DishNumber.atMost(3),
                        2,
                        false,
                        shopOnce),
                List.of(),
                new PlanQuestion.HowLong(Duration.ofSeconds(60)),
                InsightWanted.NONE);
        return new MakePlan()
                .answer(
                        Workspace.open(Optional.of(folder), folder, TODAY, note -> {}),
                        question,
                        Watch.NONE,
                        request -> {});
    }

    public static String yaml(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n") + "\"";
    }
}

package batchwright.cli;

import batchwright.app.NeedsOfEater;
import batchwright.app.ProfileAnswers;
import batchwright.app.ProfileDraft;
import batchwright.app.ProfileQuestion;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.needs.Needs;
import batchwright.needs.Outlook;
import batchwright.needs.goal.GoalFinding;
import batchwright.needs.learning.Learned;
import batchwright.report.html.NeedsPage;
import batchwright.report.needs.ActivitiesJson;
import batchwright.report.needs.ActivitiesText;
import batchwright.report.needs.NeedsJson;
import batchwright.report.needs.NeedsText;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** needs EATER, needs with answers or questions, needs --activities */
@Command(
        name = "needs",
        header = "How much should I eat: energy and protein a day, with every source.",
        customSynopsis = {
            "needs EATER [--weeks N] [--stages] [--adopt] [--report FILE.html] [OPTIONS]",
            "needs [ANSWERS] [--save NAME] [OPTIONS]   without an eater it asks",
            "needs --activities [OPTIONS]"
        },
        footer = {
            "  java -jar target/batchwright.jar needs lifter-gaining",
            "  java -jar target/batchwright.jar needs desk-cutting --weeks 12"
        })
final class NeedsCommand implements Callable<Integer> {
    private static final int MOST_WEEKS = 104;
    private static final int HALF_A_YEAR_WEEKS = 24;

    /** Set by the command line's parser before {@link #call()}. */
    @ParentCommand
    @SuppressWarnings("NullAway.Init")
    private Batchwright program;

    @Parameters(
            arity = "0..*",
            hideParamSyntax = true,
            paramLabel = "EATER",
            description = "A profile: its file, or its short name in profiles/.")
    private List<String> eaters = new ArrayList<>();

    @Option(
            names = "--weeks",
            paramLabel = "N",
            description = "Also where weight, fat and lean mass go in N weeks of the target, 1 to 104.")
    private @Nullable String weeks;

    @Option(
            names = "--stages",
            description = "Also the target in steps of four weeks, as weight changes; for 24 weeks, or for --weeks.")
    private boolean steps;

    @Option(
            names = "--activities",
            description =
                    "List what a profile may say of activity: levels, multipliers, and the activities of a diary.")
    private boolean activities;

    @Option(
            names = "--adopt",
            description =
                    "Take the step that your weighings offer: writes one line into the book; then the needs with it.")
    private boolean adopt;

    @Option(
            names = "--report",
            paramLabel = "FILE.html",
            description = "Also write a page: the target, and what weighings say in pictures. Replaces an older one.")
    private @Nullable String report;

    @Option(names = "--force", description = "Replace a file of that name although the program did not make it.")
    private boolean force;

    @Mixin
    private AnswerOptions options = new AnswerOptions();

    @Option(names = "--save", paramLabel = "NAME", description = "Also write the answers to profiles/NAME.yaml.")
    private @Nullable String save;

    @Option(names = "--no-input", description = "Never ask: answers that are missing are an error.")
    private boolean noInput;

    @Override
    public Integer call() {
        if (activities) {
            return listActivities();
        }
        if (eaters.isEmpty()) {
            return ofAnswers();
        }
        if (eaters.size() != 1) {
            throw Refused.because("needs answers for one eater at a time", "Name one profile: needs lifter-gaining.");
        }
        if (options.any() || save != null) {
            throw Refused.because(
                    "an eater is named, and answers are given too",
                    "Change the profile of " + eaters.get(0) + ", or leave it out and give all answers.");
        }
        Workspace workspace = program.workspace();
        if (adopt) {
            NeedsOfEater.adopt(workspace.quietly(), eaters.get(0));
        }
        return answer(
                NeedsOfEater.answer(workspace, eaters.get(0)),
                NeedsOfEater.learned(workspace.quietly(), eaters.get(0)));
    }

    private int ofAnswers() {
        Optional<Input> keyboard = noInput ? Optional.empty() : program.keyboard();
        if (keyboard.isEmpty() && !options.any()) {
            throw Refused.because(
                    "no eater is named",
                    "Name one profile: needs lifter-gaining; or give answers: "
                            + missing(ProfileQuestion.list().stream()
                                    .filter(question -> question.needed()
                                            && question.applies().test(Map.of()))
                                    .toList())
                            + ".");
        }
        var answers = new ProfileAnswers(program.workspace());
        options.putInto(answers);
        return keyboard.isPresent() && !answers.missing().isEmpty() ? asked(answers, keyboard.get()) : given(answers);
    }

    private int given(ProfileAnswers answers) {
        if (!answers.missing().isEmpty()) {
            throw Refused.because(
                    "answers are missing: " + missing(answers.missing()), "Give them too, or name a profile.");
        }
        Needs needs = NeedsOfEater.answer(answers);
        checkSave(answers);
        int code = answer(needs);
        return save == null ? code : saved(answers, save).code();
    }

    private int asked(ProfileAnswers answers, Input keyboard) {
        checkSave(answers);
        var draft = new ProfileDraft(program.workspace());
        var dialogue = new ProfileDialogue(keyboard, program::complain, answers, draft);
        try {
            dialogue.run();
            program.complain("\n");
            int code = answer(NeedsOfEater.answer(answers));
            ExitCode saving = save == null ? offeredToSave(dialogue) : saved(answers, save);
            if (saving != ExitCode.DONE) {
                return saving.code();
            }
            draft.remove();
            return code;
        } catch (Asking.Quit quit) {
            program.complain("\n" + ended(draft) + "\n");
            return ExitCode.INTERRUPTED.code();
        }
    }

    private void checkSave(ProfileAnswers answers) {
        if (save != null) {
            answers.checkCanBeSaved(save, save);
        }
    }

    private ExitCode offeredToSave(ProfileDialogue dialogue) {
        return written(dialogue::save);
    }

    private ExitCode saved(ProfileAnswers answers, String name) {
        return written(() -> Optional.of(answers.save(name, name)));
    }

    /** After the answer, which is not lost when this fails. */
    private ExitCode written(Supplier<Optional<String>> saving) {
        try {
            saving.get().ifPresent(path -> program.complain("Written: " + path + "\n"));
            return ExitCode.DONE;
        } catch (Refused notWritten) {
            notWritten.faults().forEach(fault -> program.complain(fault.text()));
            return ExitCode.NOT_WRITTEN;
        }
    }

    private static String ended(ProfileDraft draft) {
        if (draft.isKept()) {
            return "Kept in " + draft.path().orElse("a draft") + ": needs without a name goes on there.";
        }
        return draft.path().isPresent()
                ? "Nothing was answered."
                : "Nothing was kept: there is no folder of your own. Write one first, init my-kitchen.";
    }

    private static String missing(List<ProfileQuestion> questions) {
        return questions.stream()
                .map(question -> AnswerOptions.of(question.key()))
                .collect(Collectors.joining(", "));
    }

    private int answer(Needs needs) {
        return answer(needs, Optional.empty());
    }

    private int answer(Needs needs, Optional<Learned> learned) {
        var outlook = new Outlook(ahead(), stepWeeks(needs));
        FilesBeside files = program.filesBeside(force);
        ReportOptions.check(report, files);
        int exit = program.answer(
                program.json ? NeedsJson.of(needs, outlook, learned) : NeedsText.of(needs, outlook, learned),
                needs.stopsPlanning() ? ExitCode.NO_PLAN : ExitCode.DONE);
        if (report != null) {
            files.write(report, NeedsPage.of(needs, learned), "");
        }
        return files.exit(exit);
    }

    private OptionalInt ahead() {
        return weeks == null
                ? OptionalInt.empty()
                : OptionalInt.of(new Given("--weeks", weeks).whole(1, MOST_WEEKS, "weeks"));
    }

    /** As many as are projected; else until the day of a weight by a date, or half a year. */
    private OptionalInt stepWeeks(Needs needs) {
        if (!steps) {
            return OptionalInt.empty();
        }
        int untilDay = needs.goal()
                .flatMap(GoalFinding::reach)
                .map(reach -> (int) Math.min(MOST_WEEKS, Math.ceil(reach.weeks())))
                .orElse(HALF_A_YEAR_WEEKS);
        return OptionalInt.of(ahead().orElse(untilDay));
    }

    private int listActivities() {
        if (!eaters.isEmpty() || weeks != null || steps) {
            String other = weeks == null ? "--stages" : "--weeks";
            throw Refused.because(
                    "--activities cannot be used with " + (eaters.isEmpty() ? other : "an eater"),
                    "Write it alone, it is the same for all: needs --activities.");
        }
        return program.answer(program.json ? ActivitiesJson.list() : ActivitiesText.list());
    }
}

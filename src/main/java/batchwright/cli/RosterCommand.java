package batchwright.cli;

import batchwright.answer.roster.RosterAnswer;
import batchwright.answer.roster.TogetherAnswer;
import batchwright.app.OutputFiles;
import batchwright.app.Refused;
import batchwright.app.roster.AnswerRoster;
import batchwright.app.roster.PlanTogether;
import batchwright.app.roster.RosterFile;
import batchwright.app.roster.RosterList;
import batchwright.app.roster.RosterPages;
import batchwright.cli.roster.ColumnsForAll;
import batchwright.cli.roster.PlanColumns;
import batchwright.report.html.HtmlReport;
import batchwright.report.html.ReportStyle;
import batchwright.report.html.roster.RosterPage;
import batchwright.report.labels.LabelRounding;
import batchwright.report.labels.LabelSheet;
import batchwright.report.labels.LabelStyle;
import batchwright.report.roster.RosterJson;
import batchwright.report.roster.TogetherJson;
import batchwright.report.roster.TogetherText;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** roster LIST */
@Command(
        name = "roster",
        header = "Plans for many clients in one run, a line of JSON for each.",
        customSynopsis = "roster LIST [--out FILE] [--summary FILE.html] [OPTIONS]",
        footer = {
            "  java -jar target/batchwright.jar roster clients.csv --out answers.jsonl",
            "  java -jar target/batchwright.jar roster profiles --together 3 --out answers.jsonl"
        })
final class RosterCommand implements Callable<Integer> {
    private static final String STREAM = "-";
    private static final int MOST_THREADS = 256;
    private static final int MOST_EFFORT = 10_000;
    private static final LabelStyle USUAL = new LabelStyle(LabelSheet.A4_2X7, LabelRounding.US);
    private static final long PROGRESS_NANOS = 10_000_000_000L;

    /** Set by the command line's parser before {@link #call()}. */
    @ParentCommand
    @SuppressWarnings("NullAway.Init")
    private Batchwright program;

    @Parameters(
            arity = "0..1",
            hideParamSyntax = true,
            paramLabel = "LIST",
            description =
                    "A table (CSV) with a client on each line, lines of JSON, or a folder of profiles; - for standard input.")
    private @Nullable String list;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Where the answers go, a line each; default standard output.")
    private @Nullable String out;

    @Option(
            names = "--resume",
            description = "With --out: go on where an earlier run ended; who has an answer is not asked.")
    private boolean resume;

    @Option(
            names = "--summary",
            paramLabel = "FILE.html",
            description = "With --out: also one page, first those whom somebody should look at.")
    private @Nullable String summary;

    @Option(
            names = "--pages",
            paramLabel = "DIR",
            description = "Also a report of each pot, as plan --report writes it, in this folder.")
    private @Nullable String pages;

    @Option(
            names = "--threads",
            paramLabel = "N",
            description =
                    "Clients that are answered at once; default one for each core. The answers do not depend on it.")
    private @Nullable String threads;

    @Option(
            names = "--effort",
            paramLabel = "N",
            defaultValue = "5",
            description =
                    "How much to search for each plan, about seconds of a core, counted in work: the same on every machine;"
                            + " default ${DEFAULT-VALUE}.")
    private String effort = "";

    @Option(
            names = "--together",
            paramLabel = "DISHES",
            description = "Cook once for all: at most so many common dishes, one shopping, containers for each.")
    private @Nullable String together;

    @Option(
            names = "--as-ready",
            description = "Write each answer as soon as it is there, not in the order of the list.")
    private boolean asReady;

    @Option(names = "--force", description = "Let the files that are named here replace others.")
    private boolean force;

    /** What was written for a pot. */
    private record Done(String lines, boolean cutShort, int clients, int plans, int faults) {}

    /** What was written so far. */
    private static final class Counts {
        private long clients;
        private long plans;
        private long faults;
        private long nextLook = System.nanoTime() + PROGRESS_NANOS;

        void add(Done done) {
            clients += done.clients();
            plans += done.plans();
            faults += done.faults();
        }

        boolean isTimeToTell() {
            boolean due = System.nanoTime() > nextLook;
            nextLook += due ? PROGRESS_NANOS : 0;
            return due;
        }

        String says() {
            return clients + " answered, " + plans + " with a plan, " + faults + " with an error";
        }
    }

    @Override
    public Integer call() {
        if (list == null) {
            throw Refused.because(
                    "no list is named", "Name a table of clients, a folder of profiles, or - for a stream.");
        }
        if (out == null && (resume || summary != null)) {
            throw Refused.because(
                    (resume ? "--resume" : "--summary") + " needs a file of answers", "Name one: --out answers.jsonl.");
        }
        var files = new OutputFiles(kitchen(), force);
        FilesBeside beside = program.filesBeside(force);
        if (summary != null) {
            beside.add(summary, HtmlReport::isIn);
        }
        Optional<RosterPages> reports = Optional.ofNullable(pages)
                .map(name -> new RosterPages(program.folder(name), kitchen(), force, HtmlReport::isIn));
        int workers = threads == null
                ? Runtime.getRuntime().availableProcessors()
                : new Given("--threads", threads).whole(1, MOST_THREADS, "threads");
        long work = AnswerRoster.WORK_OF_AN_EFFORT
                * new Given("--effort", effort).whole(1, MOST_EFFORT, "seconds of a core");
        var counts = new Counts();
        try (var interruption = new Interruption(() -> program.complain("\nStopped at once.\n"))) {
            var way = new AnswerRoster.Way(work, workers, !asReady, interruption::asked);
            var roster = new AnswerRoster(program.workspace(), new PlanColumns());
            if (together == null) {
                run(roster, way, reports, files, counts);
            } else {
                cookForAll(roster, way, together, files, counts);
            }
            program.complain(counts.says() + "\n");
            if (summary != null && out != null) {
                beside.write(summary, page(program.folder(out)), "");
            }
            ExitCode exit = counts.faults > 0 ? ExitCode.NOT_RIGHT : ExitCode.DONE;
            return beside.exit(interruption.asked() ? ExitCode.INTERRUPTED : exit)
                    .code();
        }
    }

    private Path kitchen() {
        return program.folder(program.data == null ? "" : program.data);
    }

    private void run(
            AnswerRoster roster,
            AnswerRoster.Way way,
            Optional<RosterPages> reports,
            OutputFiles files,
            Counts counts) {
        try (BufferedReader lines = lines()) {
            if (out == null) {
                roster.run(lines, client -> false, way, a -> done(a, reports), done -> {
                    program.answer(take(done, counts));
                });
                return;
            }
            try (RosterFile file = RosterFile.open(out, program.folder(out), resume, files)) {
                roster.run(lines, file::isAnswered, way, a -> done(a, reports), done -> file.add(take(done, counts)));
            }
        } catch (IOException gone) {
            throw Refused.because("the list cannot be read to its end", "What was answered is kept; --resume goes on.");
        }
    }

    private void cookForAll(
            AnswerRoster roster, AnswerRoster.Way way, String dishes, OutputFiles files, Counts counts) {
        if (resume || pages != null || asReady) {
            throw Refused.because(
                    "--together answers all clients at once",
                    "Leave out " + (resume ? "--resume." : asReady ? "--as-ready." : "--pages."));
        }
        var columns = new ColumnsForAll(new Given("--together", dishes).whole(1, PlanColumns.MOST_DISHES, "dishes"));
        TogetherAnswer answer;
        try (BufferedReader lines = lines()) {
            answer = new PlanTogether(roster, columns).answer(lines, way);
        } catch (IOException gone) {
            throw Refused.because("the list cannot be read to its end", "Read it again.");
        }
        if (answer.cutShort()) {
            return;
        }
        counts.add(done(answer));
        if (out == null) {
            program.answer(TogetherJson.lines(answer));
        } else {
            try (RosterFile file = RosterFile.open(out, program.folder(out), false, files)) {
                file.add(TogetherJson.lines(answer));
            }
        }
        program.complain(TogetherText.of(answer));
    }

    private static Done done(TogetherAnswer answer) {
        int planned = answer.shares().size();
        int faults = (int) answer.others().stream()
                .filter(other -> other.answer().isEmpty())
                .count();
        return new Done("", false, answer.clients().size() + answer.others().size(), planned, faults);
    }

    private BufferedReader lines() {
        return STREAM.equals(list)
                ? RosterList.of(System.in)
                : RosterList.of(program.folder(""), list == null ? STREAM : list);
    }

    private String take(Done done, Counts counts) {
        counts.add(done);
        if (counts.isTimeToTell()) {
            program.complain(counts.says() + "\n");
        }
        return done.lines();
    }

    private Done done(RosterAnswer answer, Optional<RosterPages> reports) {
        if (answer.cutShort()) {
            return new Done("", true, 0, 0, 0);
        }
        int clients = answer.clients().size();
        Optional<String> page = page(answer, reports);
        boolean hasPlan = answer.answer().flatMap(a -> a.plan()).isPresent();
        return new Done(
                RosterJson.lines(answer, page),
                false,
                clients,
                hasPlan ? clients : 0,
                answer.answer().isEmpty() ? clients : 0);
    }

    /** Its name among the reports. */
    private static Optional<String> page(RosterAnswer answer, Optional<RosterPages> reports) {
        return reports.flatMap(all -> answer.answer().map(plan -> {
            String name = plan.needs().get(0).eater().id() + ".html";
            all.write(name, HtmlReport.of(plan, new ReportStyle(USUAL)));
            return name;
        }));
    }

    private static String page(Path answers) {
        try (BufferedReader lines = Files.newBufferedReader(answers, StandardCharsets.UTF_8)) {
            return RosterPage.of(lines, ReportStyle.styleSheet());
        } catch (IOException why) {
            throw Refused.because(
                    "the answers cannot be read again", "The file with the answers is as it was written.");
        }
    }
}

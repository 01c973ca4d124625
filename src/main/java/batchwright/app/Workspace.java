package batchwright.app;

import batchwright.book.Book;
import batchwright.book.KeptPlan;
import batchwright.book.KeptPlans;
import batchwright.files.disk.DataFiles;
import batchwright.files.disk.FolderFiles;
import batchwright.files.disk.Read;
import batchwright.files.disk.StarterFiles;
import batchwright.food.Equipment;
import batchwright.food.Kitchen;
import batchwright.report.plan.KeptPlanJson;
import batchwright.text.Problem;
import batchwright.text.SourceFile;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where foods/ and profiles/ are read from: the folder that was named, else the current folder if it has foods/, else the
 * starter files that travel with the program.
 *
 * @param here the current folder: paths of single files start there
 * @param cookingDay from which use-by dates and ages of prices are counted
 * @param notes takes what the user should know besides the answer, a line or a few
 * @param mostMinutes of hands-on work in a cooking session, whatever the kitchen says; empty for what it says
 * @param doneWithin most minutes of a cooking session, in the same way
 * @param reserve room to spare as a share, in the same way
 */
public record Workspace(
        KitchenSource source,
        Path here,
        LocalDate cookingDay,
        Consumer<String> notes,
        OptionalInt mostMinutes,
        OptionalInt doneWithin,
        Optional<BigDecimal> reserve) {
    private static final String FOODS = "foods";
    /** In the name of a plan that was kept: it is not the first for its cooking day. */
    private static final Pattern NUMBER = Pattern.compile("-\\d\\d-\\d\\d-(\\d{1,4})\\.json$");

    private static final String PROFILES = "profiles";

    public Workspace(KitchenSource source, Path here, LocalDate cookingDay, Consumer<String> notes) {
        this(source, here, cookingDay, notes, OptionalInt.empty(), OptionalInt.empty(), Optional.empty());
    }

    /**
     * The folder of a kitchen of one's own, to be written into.
     *
     * @param so what follows where there is none, such as "so there is no book"
     * @throws Refused where the starter files are read
     */
    public FolderFiles ownFolder(String so) {
        return source.folder()
                .map(FolderFiles::new)
                .orElseThrow(() -> Refused.because(
                        "there is no kitchen of your own here, " + so,
                        "Begin with the starter files in a folder, and name that folder."));
    }

    /**
     * Empty for what the kitchen says.
     *
     * @param handsOn most minutes of hands-on work
     * @param within most minutes of a cooking session
     */
    public Workspace withMinutes(OptionalInt handsOn, OptionalInt within) {
        return new Workspace(source, here, cookingDay, notes, handsOn, within, reserve);
    }

    /** @param share of room to spare; empty for what the kitchen says */
    public Workspace withReserve(Optional<BigDecimal> share) {
        return new Workspace(source, here, cookingDay, notes, mostMinutes, doneWithin, share);
    }

    public static Workspace open(Optional<Path> data, Path here, LocalDate cookingDay, Consumer<String> notes) {
        if (data.isPresent()) {
            return in(new FolderFiles(checked(here.resolve(data.get()))), here, cookingDay, notes);
        }
        var current = new FolderFiles(here);
        if (hasFolder(current, FOODS)) {
            return in(current, here, cookingDay, notes);
        }
        if (hasFolder(current, PROFILES)) {
            notes.accept("note: there is no foods/ here, so foods, dishes and profiles are the starter files\n");
        }
        return in(new StarterFiles(), here, cookingDay, notes);
    }

    private static Workspace in(DataFiles files, Path here, LocalDate cookingDay, Consumer<String> notes) {
        return new Workspace(new KitchenInFiles(files), here, cookingDay, notes);
    }

    private static Path checked(Path folder) {
        var files = new FolderFiles(folder);
        if (!foundFolder(files, "")
                .orElseThrow(() -> Refused.because(
                        "there is no folder " + folder, "Name the folder that holds foods/ and profiles/."))) {
            throw Refused.because(folder + " is a file", "Name the folder that holds foods/ and profiles/.");
        }
        if (!hasFolder(files, FOODS)) {
            throw Refused.because(
                    "there is no foods/ in " + folder,
                    "Name the folder that holds foods/ and profiles/; the starter files are a beginning.");
        }
        return folder;
    }

    private static boolean hasFolder(FolderFiles files, String path) {
        return foundFolder(files, path).orElse(false);
    }

    /**
     * Whether what is there is a folder; empty when nothing is.
     *
     * @throws Refused when that cannot be found out: a kitchen that cannot be read is not replaced by the starter files
     */
    private static Optional<Boolean> foundFolder(FolderFiles files, String path) {
        return files.isFolder(path).match(Optional::empty, Optional::of, problem -> {
            throw Refused.by(List.of(problem));
        });
    }

    /** @throws Refused when a file has an error */
    public Kitchen kitchen() {
        Kitchen read = value(source.kitchen(cookingDay));
        Kitchen kitchen =
                reserve.map(share -> read.with(read.shops().withReserve(share))).orElse(read);
        Equipment equipment = kitchen.equipment();
        if (mostMinutes.isPresent()) {
            equipment = equipment.withHandsOnMinutes(mostMinutes);
        }
        if (doneWithin.isPresent()) {
            equipment = equipment.withDoneWithinMinutes(doneWithin);
        }
        return equipment.equals(kitchen.equipment()) ? kitchen : kitchen.with(equipment);
    }

    /**
     * The kitchen without its dishes: a mistake in a dish is no obstacle to a question about foods.
     *
     * @throws Refused when a file about foods has an error
     */
    public Kitchen foods() {
        return value(source.foods(cookingDay));
    }

    /**
     * What happened up to the day that is asked about. Its warnings are told with those of the kitchen.
     *
     * @throws Refused when the book has an error
     */
    public Book book() {
        Read<Book> read = source.book();
        return read.value().orElseThrow(() -> Refused.by(read.problems())).until(cookingDay);
    }

    /** @throws Refused when a plan that was kept cannot be read */
    public KeptPlans keptPlans() {
        return new KeptPlans(
                value(source.keptPlans()).stream().map(Workspace::kept).toList());
    }

    private static KeptPlan kept(SourceFile file) {
        Matcher number = NUMBER.matcher(file.path());
        return KeptPlanJson.read(String.join("\n", file.lines()), number.find() ? Integer.parseInt(number.group(1)) : 1)
                .orElseThrow(() -> Refused.because(
                        file.path() + " is no plan that this version of the program can read",
                        "Keep the plan again, and move this file away."));
    }

    /** The same, telling no warnings: for what is read a second time. */
    public Workspace quietly() {
        return new Workspace(source, here, cookingDay, note -> {}, mostMinutes, doneWithin, reserve);
    }

    /** The same kitchen from another place. */
    public Workspace from(KitchenSource other) {
        return new Workspace(other, here, cookingDay, notes, mostMinutes, doneWithin, reserve);
    }

    /** The same on another day. */
    public Workspace on(LocalDate day) {
        return new Workspace(source, here, day, notes, mostMinutes, doneWithin, reserve);
    }

    /** The value, after telling the warnings. */
    public <T> T value(Read<T> read) {
        if (read.value().isEmpty()) {
            throw Refused.by(read.problems());
        }
        read.problems().stream().map(Problem::render).forEach(notes);
        return read.value().get();
    }
}

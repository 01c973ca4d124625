package batchwright.page;

import batchwright.app.Workspace;
import batchwright.app.WriteStarterFiles;
import batchwright.app.memory.RememberedKitchen;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Which files the page works with: those of the command line. They are looked at anew for each request, as somebody may change them
 * meanwhile. Who has none yet gets a folder of the starter files beside the program's own.
 */
public final class PageFiles {
    /** Where a kitchen is begun by the page. */
    private static final String BEGUN = "my-kitchen";

    private final Optional<Path> named;
    private final Path here;
    private final Clock clock;
    private final Optional<LocalDate> day;
    private final RememberedKitchen.Memory memory = new RememberedKitchen.Memory();

    /**
     * @param named the folder that was named at the start
     * @param here the current folder
     * @param day on which the page is told to be; empty for the day it is
     */
    public PageFiles(Optional<Path> named, Path here, Clock clock, Optional<LocalDate> day) {
        this.named = named;
        this.here = here;
        this.clock = clock;
        this.day = day;
    }

    public Clock clock() {
        return clock;
    }

    public LocalDate today() {
        return day.orElseGet(() -> LocalDate.now(clock));
    }

    /** @throws batchwright.app.Refused when they cannot be opened */
    public Workspace now() {
        Workspace usual = open(named);
        return named.isEmpty() && usual.source().folder().isEmpty() ? begun().orElse(usual) : usual;
    }

    private Optional<Workspace> begun() {
        var in = Workspace.open(Optional.empty(), here.resolve(BEGUN), today(), note -> {});
        return in.source().folder().isPresent() ? Optional.of(open(Optional.of(Path.of(BEGUN)))) : Optional.empty();
    }

    private Workspace open(Optional<Path> folder) {
        var opened = Workspace.open(folder, here, today(), note -> {});
        return new Workspace(
                new RememberedKitchen(opened.source(), memory), opened.here(), opened.cookingDay(), opened.notes());
    }

    /** Whether there is a kitchen of the user's own, which can be written into. */
    public boolean isOwn() {
        return now().source().folder().isPresent();
    }

    /** Where {@link #begin} would write. */
    public String begins() {
        return here.resolve(BEGUN).toAbsolutePath().toString();
    }

    /** @throws batchwright.app.Refused when it cannot be written */
    public void begin() {
        if (!isOwn()) {
            new WriteStarterFiles().into(here.resolve(BEGUN));
        }
    }
}

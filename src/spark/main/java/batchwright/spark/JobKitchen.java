package batchwright.spark;

import batchwright.app.Workspace;
import batchwright.app.roster.AnswerRoster;
import batchwright.cli.roster.PlanColumns;
import java.io.Serializable;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;
import org.apache.spark.SparkFiles;

/**
 * What all tasks of a job share; sent to each executor, which reads the kitchen once.
 *
 * @param data the folder of the kitchen; one that is not absolute is among the files that Spark brought; empty for the starter files
 * @param day of cooking, as a text
 * @param effort of a search, as {@code roster} has it
 */
record JobKitchen(String data, String day, int effort) implements Serializable {
    private static final Map<JobKitchen, AnswerRoster> OF_THIS_EXECUTOR = new ConcurrentHashMap<>();

    /** @throws batchwright.app.Refused when a file of the kitchen has an error: then the job ends */
    AnswerRoster roster(Tally tally) {
        return OF_THIS_EXECUTOR.computeIfAbsent(this, kitchen -> {
            tally.kitchenRead();
            return kitchen.read();
        });
    }

    private AnswerRoster read() {
        Path here = Path.of(SparkFiles.getRootDirectory());
        Optional<Path> folder = Optional.of(data).filter(name -> !name.isEmpty()).map(here::resolve);
        return new AnswerRoster(Workspace.open(folder, here, LocalDate.parse(day), note -> {}), new PlanColumns());
    }

    /** A task is one thread; there are as many of them as the executor has cores. */
    AnswerRoster.Way way(BooleanSupplier ends) {
        return new AnswerRoster.Way(effort * AnswerRoster.WORK_OF_AN_EFFORT, 1, true, ends);
    }
}

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
import java.util.random.RandomGeneratorFactory;
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
            findRandomNumbers();
            return kitchen.read();
        });
    }

    private AnswerRoster read() {
        Path here = Path.of(SparkFiles.getRootDirectory());
        Optional<Path> folder = Optional.of(data).filter(name -> !name.isEmpty()).map(here::resolve);
        return new AnswerRoster(Workspace.open(folder, here, LocalDate.parse(day), note -> {}), new PlanColumns());
    }

    /**
     * Java looks once for its generators of random numbers, with the class loader of the thread that needs one first; Spark's threads have
     * one that does not see them.
     */
    static void findRandomNumbers() {
        Thread here = Thread.currentThread();
        ClassLoader before = here.getContextClassLoader();
        here.setContextClassLoader(ClassLoader.getSystemClassLoader());
        try {
            RandomGeneratorFactory.all().findAny().orElseThrow();
        } finally {
            here.setContextClassLoader(before);
        }
    }

    /** A task is one thread; there are as many of them as the executor has cores. */
    AnswerRoster.Way way(BooleanSupplier ends) {
        return new AnswerRoster.Way(effort * AnswerRoster.WORK_OF_AN_EFFORT, 1, true, ends);
    }
}

package batchwright.spark;

import java.io.Serializable;
import java.util.Locale;
import org.apache.spark.SparkContext;
import org.apache.spark.util.LongAccumulator;

/** What was done on all executors; what was done twice because a worker was lost is counted twice where Spark heard of both. */
final class Tally implements Serializable {
    private final LongAccumulator clients;
    private final LongAccumulator nanos;
    private final LongAccumulator kitchens;

    Tally(SparkContext spark) {
        clients = spark.longAccumulator("clients answered");
        nanos = spark.longAccumulator("nanoseconds of CPU");
        kitchens = spark.longAccumulator("kitchens read");
    }

    /** @param cpu nanoseconds of this thread */
    void answered(int of, long cpu) {
        clients.add(of);
        nanos.add(cpu);
    }

    void kitchenRead() {
        kitchens.add(1);
    }

    String says() {
        return String.format(
                Locale.ROOT,
                "%d answered in %.1f s of CPU; the kitchen was read %d times",
                clients.value(),
                nanos.value() / 1e9,
                kitchens.value());
    }
}

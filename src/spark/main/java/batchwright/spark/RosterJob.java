package batchwright.spark;

import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.concurrent.Callable;
import org.apache.spark.sql.SparkSession;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * Answers the clients of a list on a cluster: started by {@code spark-submit}, which ships this class and the program's jar to every
 * executor. What is written appears when all clients are answered; Spark sees to it that a task that is done again counts once.
 */
@Command(
        name = "roster-job",
        header = "Plans for many clients on Apache Spark, a line of JSON for each.",
        mixinStandardHelpOptions = true)
public final class RosterJob implements Callable<Integer> {
    /** Clients of a task: few, so that little is lost with a worker and no task is long after the others. */
    private static final int CLIENTS_OF_A_TASK = 20;

    @Parameters(
            index = "0",
            paramLabel = "LIST",
            description = "Lines of JSON; or a table: a name that ends with .csv or .parquet, or table:NAME.")
    private String list = "";

    @Parameters(
            index = "1",
            paramLabel = "ANSWERS",
            description = "A new folder of lines of JSON; or a table, named in the same way.")
    private String answers = "";

    @Option(
            names = "--data",
            paramLabel = "DIR",
            defaultValue = "",
            description = "The kitchen, as each executor sees it: a shared folder, or the name of an unpacked archive;"
                    + " default the starter files.")
    private String data = "";

    @Option(
            names = "--effort",
            paramLabel = "N",
            defaultValue = "5",
            description = "How much to search for each plan, as roster has it; default ${DEFAULT-VALUE}.")
    private int effort;

    @Option(
            names = "--date",
            paramLabel = "YYYY-MM-DD",
            description = "The cooking day, YYYY-MM-DD; default today.")
    private LocalDate day = LocalDate.now(ZoneId.systemDefault());

    @Option(
            names = "--task",
            paramLabel = "N",
            defaultValue = "" + CLIENTS_OF_A_TASK,
            description = "Clients of a task; default ${DEFAULT-VALUE}.")
    private int clientsOfATask;

    public static void main(String[] args) {
        int code = new CommandLine(new RosterJob()).execute(args);
        if (code != 0) {
            System.exit(code);
        }
    }

    @Override
    public Integer call() throws IOException {
        if (effort < 1 || clientsOfATask < 1) {
            throw new IllegalArgumentException("--effort and --task are 1 or more");
        }
        try (SparkSession spark = SparkSession.builder().appName("batchwright roster").getOrCreate()) {
            var tally = new Tally(spark.sparkContext());
            var kitchen = new JobKitchen(data, day.toString(), effort);
            var clients = new ClientRows(spark, clientsOfATask).of(list);
            new AnswerRows(spark).write(clients.mapPartitions(new AnswerTask(kitchen, tally), AnswerRows.CODED), answers);
            System.err.println(tally.says());
            return 0;
        }
    }
}

package batchwright.spark;

import static org.apache.spark.sql.functions.col;

import batchwright.answer.roster.Client;
import batchwright.app.roster.ClientLine;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;
import scala.Tuple2;

/**
 * The clients of a list as rows: the number of the line, its text as JSON, and a key that is the same for those who share a pot. These
 * stand together, in the order of the list, in one of the partitions.
 *
 * @param clientsOfATask about how many rows a partition has
 */
record ClientRows(SparkSession spark, int clientsOfATask) {
    static final String LINE = "line";
    static final String TEXT = "text";
    private static final String POT = "pot";
    private static final int MOST_PARTITIONS = 1_000_000;
    private static final StructType COLUMNS = new StructType()
            .add(LINE, DataTypes.LongType)
            .add(TEXT, DataTypes.StringType)
            .add(POT, DataTypes.StringType);

    Dataset<Row> of(String list) {
        JavaRDD<Row> rows = lines(list)
                .zipWithIndex()
                .map(ClientRows::numbered)
                .filter(row -> isClient(row.getString(1)));
        long partitions = Math.max(1, Math.min(MOST_PARTITIONS, rows.count() / clientsOfATask));
        return spark.createDataFrame(rows, COLUMNS)
                .repartition((int) partitions, col(POT))
                .sortWithinPartitions(col(POT), col(LINE));
    }

    private JavaRDD<String> lines(String list) {
        return switch (Place.of(list)) {
            case LINES -> JavaSparkContext.fromSparkContext(spark.sparkContext()).textFile(list);
            case CSV -> spark.read().option("header", true).csv(list).toJSON().javaRDD();
            case PARQUET -> spark.read().parquet(list).toJSON().javaRDD();
            case TABLE -> spark.table(Place.table(list)).toJSON().javaRDD();
        };
    }

    /** Blank lines and remarks are none. */
    private static boolean isClient(String text) {
        return !text.isEmpty() && !text.startsWith("#");
    }

    private static Row numbered(Tuple2<String, Long> indexed) {
        long number = indexed._2() + 1;
        String text = indexed._1().strip();
        return RowFactory.create(number, text, pot(number, text));
    }

    /** Its own for a client who shares with nobody. */
    private static String pot(long number, String text) {
        Client client = ClientLine.ofJson(number, text);
        return client.pot().map(name -> "pot " + name).orElse("line " + number);
    }

    /** What the use case takes. */
    static Client client(Row row) {
        return ClientLine.ofJson(row.getLong(row.fieldIndex(LINE)), row.getString(row.fieldIndex(TEXT)));
    }
}

package batchwright.spark;

import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoder;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;

/**
 * Answers as rows: the client's id (none for a line that cannot be read), the number of the line, and the line of JSON that
 * {@code roster} writes.
 */
record AnswerRows(SparkSession spark) {
    private static final String ANSWER = "answer";
    private static final StructType COLUMNS = new StructType()
            .add("client", DataTypes.StringType)
            .add("line", DataTypes.LongType)
            .add(ANSWER, DataTypes.StringType);
    static final Encoder<Row> CODED = Encoders.row(COLUMNS);

    /** Where something is already, nothing is written, and the job ends with an error. */
    void write(Dataset<Row> answers, String to) {
        switch (Place.of(to)) {
            case LINES -> answers.select(ANSWER).write().text(to);
            case CSV -> answers.write().option("header", true).csv(to);
            case PARQUET -> answers.write().parquet(to);
            case TABLE -> answers.write().saveAsTable(Place.table(to));
        }
    }
}

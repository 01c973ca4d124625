package batchwright.spark;

import batchwright.answer.roster.Client;
import batchwright.answer.roster.RosterAnswer;
import batchwright.app.roster.AnswerRoster;
import batchwright.app.roster.Pots;
import batchwright.report.roster.RosterJson;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.apache.spark.TaskContext;
import org.apache.spark.api.java.function.MapPartitionsFunction;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;

/** Answers the clients of a partition, one pot after the other: rows of {@link ClientRows} to rows of {@link AnswerRows}. */
record AnswerTask(JobKitchen kitchen, Tally tally) implements MapPartitionsFunction<Row, Row> {
    @Override
    public Iterator<Row> call(Iterator<Row> rows) {
        TaskContext task = TaskContext.get();
        AnswerRoster roster = kitchen.roster(tally);
        AnswerRoster.Way way = kitchen.way(task::isInterrupted);
        var pots = new Pots(new Clients(rows));
        return new Iterator<>() {
            private Iterator<Row> ready = List.<Row>of().iterator();

            @Override
            public boolean hasNext() {
                return ready.hasNext() || pots.hasNext();
            }

            @Override
            public Row next() {
                if (!ready.hasNext()) {
                    ready = answered(roster, pots.next(), way, task).iterator();
                }
                return ready.next();
            }
        };
    }

    private List<Row> answered(AnswerRoster roster, List<Client> pot, AnswerRoster.Way way, TaskContext task) {
        long begun = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        RosterAnswer answer = roster.answer(pot, way);
        if (answer.cutShort()) {
            task.killTaskIfInterrupted();
        }
        List<Row> rows = new ArrayList<>();
        Iterator<Client> clients = pot.iterator();
        RosterJson.lines(answer, Optional.empty()).lines().forEach(line -> {
            Client client = clients.next();
            rows.add(RowFactory.create(client.wrong().isPresent() ? null : client.id(), client.line(), line));
        });
        tally.answered(pot.size(), ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - begun);
        return rows;
    }

    /** Read one at a time. */
    private record Clients(Iterator<Row> rows) implements Iterator<Client> {
        @Override
        public boolean hasNext() {
            return rows.hasNext();
        }

        @Override
        public Client next() {
            return ClientRows.client(rows.next());
        }
    }
}

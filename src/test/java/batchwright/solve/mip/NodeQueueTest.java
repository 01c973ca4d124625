package batchwright.solve.mip;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.solve.mip.NodeQueue.Node;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NodeQueueTest {
    private final Map<Long, Long> until = new HashMap<>();
    private long time;
    private final NodeQueue queue = new NodeQueue(node -> until.getOrDefault(node.id(), 0L), () -> time);

    private void add(long id, double bound) {
        queue.add(new Node(new double[0], new double[0], bound, id));
    }

    private List<Long> all() {
        List<Long> ids = new ArrayList<>();
        Optional<Node> next = queue.next(node -> false);
        while (next.isPresent()) {
            ids.add(next.get().id());
            next = queue.next(node -> false);
        }
        return ids;
    }

    @Test
    void the_least_bound_comes_first_and_of_equal_ones_the_youngest() {
        add(1, 30);
        add(2, 10);
        add(3, 20);
        add(4, 10);

        assertThat(queue.leastBound()).isEqualTo(10);
        assertThat(all()).containsExactly(4L, 2L, 3L, 1L);
        assertThat(queue.leastBound()).isInfinite();
    }

    @Test
    void closed_nodes_are_dropped() {
        add(1, 10);
        add(2, 40);

        assertThat(queue.next(node -> node.bound() > 30).map(Node::id)).contains(1L);
        assertThat(queue.next(node -> node.bound() > 30)).isEmpty();
        assertThat(queue.leastBound()).isInfinite();
    }

    @Test
    void a_postponed_node_lets_others_go_first_but_its_bound_counts() {
        until.put(1L, 100L);
        add(1, 10);
        add(2, 20);
        add(3, 30);

        assertThat(queue.next(node -> false).map(Node::id)).contains(2L);
        assertThat(queue.leastBound()).isEqualTo(10);
        time = 100;
        assertThat(queue.next(node -> false).map(Node::id)).contains(1L);
        assertThat(queue.next(node -> false).map(Node::id)).contains(3L);
    }

    @Test
    void where_all_are_postponed_nobody_waits_for_the_clock() {
        until.put(1L, 100L);
        until.put(2L, 50L);
        add(1, 10);
        add(2, 20);

        assertThat(all()).containsExactly(2L, 1L);
    }

    @Test
    void what_was_seen_is_dropped() {
        until.put(1L, Completion.NEVER);
        add(1, 10);

        assertThat(queue.next(node -> false)).isEmpty();
        assertThat(queue.leastBound()).isInfinite();
    }

    @Test
    void a_node_in_hand_that_is_not_ready_goes_back() {
        until.put(1L, 100L);
        var node = new Node(new double[0], new double[0], 10, 1);

        assertThat(queue.isReady(node)).isFalse();
        assertThat(queue.leastBound()).isEqualTo(10);
        time = 100;
        assertThat(queue.isReady(node)).isTrue();
    }
}

package batchwright.solve.mip;

import java.util.Optional;

/**
 * The end of a search.
 *
 * @param best the cheapest solution found below the cutoff, if any
 * @param cost its cost; infinite when there is none
 * @param bound no solution costs less; equals the cost (or the cutoff) when the search was done
 * @param nodes relaxations solved
 */
public record SearchResult<S>(State state, Optional<S> best, double cost, double bound, long nodes) {
    /** Of a search that was ended before anything was known. */
    public static <S> SearchResult<S> stopped(long nodes) {
        return new SearchResult<>(
                State.STOPPED, Optional.empty(), Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, nodes);
    }

    /** Of a search that found nothing, and will go on. */
    public static <S> SearchResult<S> stoppedAt(double bound) {
        return new SearchResult<>(State.STOPPED, Optional.empty(), Double.POSITIVE_INFINITY, bound, 0);
    }

    /** Of a search that has proven that nothing costs less than the cutoff. */
    public static <S> SearchResult<S> nothingBelow(double cutoff) {
        return new SearchResult<>(State.DONE, Optional.empty(), Double.POSITIVE_INFINITY, cutoff, 0);
    }

    /** The best with its cost. */
    public Optional<Completion.Found<S>> found() {
        return best.map(solution -> new Completion.Found<>(cost, solution));
    }

    /** How a search ended. */
    public enum State {
        /** Everything was searched: the best is proven, or there is none. */
        DONE,
        /** Told to stop before the end. */
        STOPPED,
        /** The cost has no lower end. */
        UNBOUNDED
    }
}

package batchwright.files.shop;

import java.util.Arrays;

/** The median of some numbers, also as it would be without one of them. */
final class Median {
    private final double[] sorted;

    Median(double[] values) {
        this.sorted = values.clone();
        Arrays.sort(sorted);
    }

    int size() {
        return sorted.length;
    }

    double ofAll() {
        return middle(sorted.length);
    }

    /** @param value one of the numbers, of which there must be another */
    double without(double value) {
        return middle(Arrays.binarySearch(sorted, value));
    }

    /** @param leftOut index of a number that does not count */
    private double middle(int leftOut) {
        int count = leftOut < sorted.length ? sorted.length - 1 : sorted.length;
        return (at((count - 1) / 2, leftOut) + at(count / 2, leftOut)) / 2;
    }

    private double at(int index, int leftOut) {
        return sorted[index < leftOut ? index : index + 1];
    }
}

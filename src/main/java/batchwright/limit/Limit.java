package batchwright.limit;

import batchwright.food.Nutrient;
import java.util.Optional;

/**
 * A limit on what an eater gets.
 *
 * @param name for people: in needs, plans, checks and clashes
 * @param scope over what it is added up
 * @param measured what is added up; its unit is that of the range
 * @param range whole numbers, so that what is printed is what is planned and checked
 * @param setting where the eater changes it; empty when nobody can
 */
public record Limit(
        String name, Scope scope, Nutrient measured, Range range, Reason reason, Optional<Setting> setting) {
    /** For machines: fibre, container_energy, mean_energy. There is one limit for each scope and measure. */
    public String id() {
        return scope.id(measured);
    }

    public String unit() {
        return scope.unit(measured);
    }

    /** Whether it is on single containers. */
    public boolean isOnContainers() {
        return scope == Scope.CONTAINER || scope == Scope.PER_100_G;
    }

    public Limit with(Range other) {
        return new Limit(name, scope, measured, other, reason, setting);
    }

    public Limit because(Reason other) {
        return new Limit(name, scope, measured, range, other, setting);
    }

    public Limit changedBy(Setting other) {
        return new Limit(name, scope, measured, range, reason, Optional.of(other));
    }

    boolean isOn(Scope where, Nutrient nutrient) {
        return scope == where && measured == nutrient;
    }

    /** As far as it may be loosened. */
    public Range widest() {
        return setting.map(Setting::widest).orElse(Range.ANY);
    }

    /** At least 28 g of fibre; of energy the unit says enough. */
    public String says() {
        return range.says(unit()) + (measured == Nutrient.ENERGY ? "" : " of " + measured.label());
    }
}

package batchwright.person;

/** A physical activity level that weighings and recorded food came to: what holds the weight / resting energy. */
public record PalFromWeighings(double pal) implements PhysicalActivity {
    @Override
    public String label() {
        return "by weighings";
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.weighings(this);
    }
}

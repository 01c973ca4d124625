package batchwright.audit;

/** What a label states of one container is what the files' foods hold. */
record ContainerContents() implements Inspection {
    @Override
    public String name() {
        return "container contents";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        evidence.fills((batch, fill) -> Stated.compare(
                "a container of " + batch.dish().id() + fill.forWhom(),
                fill.perContainer(),
                evidence.eaten().inContainer(batch.dish(), fill),
                findings));
    }
}

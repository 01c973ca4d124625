package batchwright.report.html.web;

/** A situation that has pages of its own, in the order in which the page leads through them. */
public enum Place {
    FRIDGE("Fridge", "/fridge"),
    SHOP("Shop", "/shop"),
    STOVE("Stove", "/stove"),
    DESK("Desk", "/desk"),
    CUPBOARD("Cupboard", "/cupboard"),
    START("Eaters", "/start"),
    PHONE("Phone", "/phone");

    private final String label;
    private final String path;

    Place(String label, String path) {
        this.label = label;
        this.path = path;
    }

    public String label() {
        return label;
    }

    public String path() {
        return path;
    }
}

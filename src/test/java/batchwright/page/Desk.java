package batchwright.page;

/** Waits at the desk for what a search comes to. */
final class Desk {
    private static final int MOST_TRIES = 600;

    private Desk() {}

    /** What is shown once no search runs. */
    static String answer(OpenedPage page) throws InterruptedException {
        for (int i = 0; i < MOST_TRIES; i++) {
            String shown = page.get("/desk").body();
            if (shown.contains("id=\"working\"></p>") && shown.contains("class=\"tiles\"")) {
                return shown;
            }
            Thread.sleep(200);
        }
        throw new IllegalStateException("no answer came");
    }
}

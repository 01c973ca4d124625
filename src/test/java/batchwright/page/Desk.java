package batchwright.page;

/** Waits at the desk for what a search comes to. */
final class Desk {
    private static final int MOST_TRIES = 600;

    private Desk() {}

    /** The plan that is shown once no search runs. */
    static String answer(OpenedPage page) throws InterruptedException {
        return shown(page, "class=\"tiles\"");
    }

    /** What is shown, a plan or not, once no search runs. */
    static String end(OpenedPage page) throws InterruptedException {
        return shown(page, "data-stamp");
    }

    private static String shown(OpenedPage page, String holds) throws InterruptedException {
        for (int i = 0; i < MOST_TRIES; i++) {
            String shown = page.get("/desk").body();
            if (shown.contains("id=\"working\"></p>") && shown.contains(holds)) {
                return shown;
            }
            Thread.sleep(i < MOST_TRIES / 2 ? 20 : 400);
        }
        throw new IllegalStateException("no answer came");
    }
}

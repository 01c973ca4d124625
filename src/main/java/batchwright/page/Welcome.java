package batchwright.page;

/** The first page: where there is something to do. */
final class Welcome implements Situation {
    @Override
    public void open(Routes routes) {
        routes.get("/", visit -> visit.go(visit.files().isOwn() ? "/fridge" : "/start"));
    }
}

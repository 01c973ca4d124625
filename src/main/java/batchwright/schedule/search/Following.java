package batchwright.schedule.search;

/** An activity starts when all it follows have ended. */
final class Following implements Propagator {
    private final Project project;

    Following(Project project) {
        this.project = project;
    }

    @Override
    public boolean tighten(Windows windows) {
        for (int i = 0; i < project.size(); i++) {
            for (int before : project.activities().get(i).after()) {
                int ends = windows.earliest(before)
                        + project.activities().get(before).minutes();
                if (!windows.notBefore(i, ends)) {
                    return false;
                }
            }
        }
        for (int i = project.size() - 1; i >= 0; i--) {
            for (int before : project.activities().get(i).after()) {
                int start = windows.latest(i) - project.activities().get(before).minutes();
                if (!windows.notAfter(before, start)) {
                    return false;
                }
            }
        }
        return true;
    }
}

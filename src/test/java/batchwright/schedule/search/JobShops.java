package batchwright.schedule.search;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;

/** Published job shops: each job is a chain, each machine a resource of which there is one. */
record JobShops(String name, int optimum, Project project) {
    static List<JobShops> published() {
        List<JobShops> shops = new ArrayList<>();
        String name = "";
        List<String> jobs = new ArrayList<>();
        for (String line : lines()) {
            if (line.contains("optimum")) {
                addTo(shops, name, jobs);
                name = line;
                jobs.clear();
            } else {
                jobs.add(line);
            }
        }
        addTo(shops, name, jobs);
        return shops;
    }

    private static void addTo(List<JobShops> shops, String line, List<String> jobs) {
        if (!line.isEmpty()) {
            String[] words = line.split(" ", -1);
            shops.add(new JobShops(words[0], Integer.parseInt(words[2]), project(jobs)));
        }
    }

    private static Project project(List<String> jobs) {
        List<Activity> activities = new ArrayList<>();
        int machines = 0;
        for (String job : jobs) {
            String[] words = job.split(" ", -1);
            machines = Math.max(machines, words.length / 2);
            for (int at = 0; at < words.length; at += 2) {
                int minutes = Integer.parseInt(words[at + 1]);
                activities.add(new Activity(
                        minutes,
                        List.of(new Need(Integer.parseInt(words[at]), 1, minutes)),
                        OptionalInt.empty(),
                        at == 0 ? List.of() : List.of(activities.size() - 1)));
            }
        }
        return new Project(Collections.nCopies(machines, 1), activities, 0, 0);
    }

    private static List<String> lines() {
        try (var in = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(JobShops.class.getResourceAsStream("/published/job_shop.txt")),
                StandardCharsets.UTF_8))) {
            return in.lines().filter(line -> !line.startsWith("#")).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String toString() {
        return name;
    }
}

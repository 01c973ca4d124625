package batchwright.files;

import batchwright.files.disk.DataFiles;
import batchwright.files.value.Problems;
import batchwright.files.value.Sources;
import batchwright.text.NearestName;
import batchwright.text.Problem;
import batchwright.text.SourceFile;
import batchwright.text.Span;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Warns of files that are not read but whose names are close to one that is. Other files may lie anywhere. */
final class StrayFiles {
    private static final String FOODS = "foods";
    private static final String DISHES = "foods/dishes";
    private static final String PROFILES = "profiles";
    private static final List<String> FOOD_TABLES = List.of("catalogue", "labels", "measures", "shop", "yields");
    private static final List<String> PROFILE_TABLES = List.of("pantry");
    private static final Pattern PAGE = Pattern.compile("[^.].*\\.(yaml|yml|yaml\\.txt)", Pattern.CASE_INSENSITIVE);
    private static final Pattern TABLE =
            Pattern.compile("([^.]+)\\.(csv|csv\\.txt|txt|tsv|xls|xlsx|ods|numbers)", Pattern.CASE_INSENSITIVE);

    private final Sources sources;
    private final Problems problems;

    StrayFiles(Sources sources, Problems problems) {
        this.sources = sources;
        this.problems = problems;
    }

    void check() {
        files(FOODS).stream().filter(path -> !path.equals(EquipmentReader.PATH)).forEach(this::tableOrDish);
        sources.list(FOODS).stream()
                .filter(DataFiles.Entry::isFolder)
                .map(DataFiles.Entry::path)
                .forEach(this::folder);
        pages(DISHES);
        sources.list(DISHES).stream()
                .filter(DataFiles.Entry::isFolder)
                .map(DataFiles.Entry::path)
                .forEach(this::pages);
        pages(PROFILES);
        files(PROFILES).forEach(path -> table(path, PROFILES, PROFILE_TABLES));
    }

    private List<String> files(String folder) {
        return sources.list(folder).stream()
                .filter(entry -> !entry.isFolder())
                .map(DataFiles.Entry::path)
                .toList();
    }

    private void tableOrDish(String path) {
        if (PAGE.matcher(name(path)).matches()) {
            warn(path, "a dish here is not read", "expected it in the folder " + DISHES, Optional.empty());
        } else {
            table(path, FOODS, FOOD_TABLES);
        }
    }

    private void table(String path, String folder, List<String> known) {
        var parts = TABLE.matcher(name(path));
        if (!parts.matches() || known.stream().anyMatch(table -> path.equals(folder + "/" + table + ".csv"))) {
            return;
        }
        NearestName.of(parts.group(1), known)
                .ifPresent(table -> warn(
                        path,
                        "this file is not read",
                        "expected another name if it should be",
                        Optional.of(folder + "/" + table + ".csv")));
    }

    private void folder(String path) {
        if (!path.equals(DISHES)
                && NearestName.of(name(path), List.of("dishes")).isPresent()
                && files(path).stream()
                        .anyMatch(file -> PAGE.matcher(name(file)).matches())) {
            warn(
                    path,
                    "dishes in this folder are not read",
                    "expected another name if they should be",
                    Optional.of(DISHES));
        }
    }

    private void pages(String folder) {
        for (String path : files(folder)) {
            var page = PAGE.matcher(name(path));
            if (page.matches() && !path.endsWith(".yaml")) {
                warn(
                        path,
                        "files ending in .%s are not read".formatted(page.group(1)),
                        "expected the ending .yaml",
                        Optional.empty());
            }
        }
    }

    private void warn(String path, String wrong, String expected, Optional<String> nearest) {
        var file = new SourceFile(sources.shown(path), List.of());
        problems.add(Problem.warning(Span.whole(file), wrong, expected).near(nearest));
    }

    private static String name(String path) {
        return path.substring(path.lastIndexOf('/') + 1);
    }
}

package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.app.MakePlan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import batchwright.plan.Watch;
import batchwright.solve.BatchPlanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which files a plan never writes over, by whatever way their names lead to them. */
@DisabledOnOs(OS.WINDOWS)
@Timeout(120)
class WrittenFilesTest {
    private static final String PLAN = "plan parent-holding --days 1 --cook lentil_ragu ";
    private static final String READ_ONLY = "is among your own files, which are only read";
    private static final String NOT_OURS = "is there already, and not made by this program";

    @TempDir
    Path folder;

    private Path kitchen;

    @BeforeEach
    void a_kitchen() {
        kitchen = Folders.starter(folder.resolve("k"));
    }

    private static Cli.Result plan(Path here, String options) {
        return Cli.in(here).run((PLAN + options).split(" "));
    }

    private void refused(Path here, String options, String says) throws IOException {
        Map<String, String> before = Folders.content(folder);

        Cli.Result run = plan(here, options);

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(says);
        assertThat(Folders.content(folder)).isEqualTo(before);
    }

    @ParameterizedTest
    @CsvSource({
        "k/foods, shop.csv",
        "k/foods, new.csv",
        "k/foods/dishes, new.csv",
        "k/profiles, pantry.csv",
        "k, profiles/pantry.csv",
        "., k/foods/measures.csv",
        "., k/foods/../foods/new.csv"
    })
    void the_files_of_a_kitchen_wherever_one_stands(String here, String file) throws IOException {
        refused(folder.resolve(here), "--shopping " + file, READ_ONLY);
        refused(folder.resolve(here), "--force --shopping " + file, READ_ONLY);
    }

    @Test
    void the_files_of_another_kitchen_than_the_one_that_is_read() throws IOException {
        Folders.starter(folder.resolve("other"));

        refused(kitchen, "--force --shopping ../other/foods/measures.csv", READ_ONLY);
        refused(kitchen, "--force --shopping ../other/profiles/pantry.csv", READ_ONLY);
        Files.delete(folder.resolve("other/profiles/pantry.csv"));
        refused(folder, "--data k --force --shopping other/profiles/pantry.csv", READ_ONLY);
    }

    @Test
    void a_kitchen_without_foods_of_its_own() throws IOException {
        Files.createDirectories(folder.resolve("p/profiles"));
        Files.writeString(folder.resolve("p/profiles/pantry.csv"), "food,amount\n");

        refused(folder.resolve("p"), "--force --shopping profiles/pantry.csv", READ_ONLY);
        Files.createDirectories(folder.resolve("new/foods"));
        refused(folder, "--shopping new/foods/s.csv", READ_ONLY);
    }

    @Test
    void a_symbolic_link_is_what_it_leads_to() throws IOException {
        Files.createSymbolicLink(folder.resolve("list.csv"), kitchen.resolve("foods/shop.csv"));
        Files.createSymbolicLink(folder.resolve("there"), kitchen.resolve("foods"));

        refused(folder, "--force --shopping list.csv", READ_ONLY);
        refused(folder, "--force --shopping there/shop.csv", READ_ONLY);
        refused(folder, "--shopping there/new.csv", READ_ONLY);
    }

    @Test
    void a_hard_link_is_the_same_file() throws IOException {
        Files.createLink(folder.resolve("list.csv"), kitchen.resolve("foods/shop.csv"));

        refused(folder, "--shopping list.csv", NOT_OURS);
        refused(folder, "--data k --force --shopping list.csv", READ_ONLY);
    }

    @Test
    void a_folder_of_data_that_is_a_link_or_is_made_of_links() throws IOException {
        Files.createSymbolicLink(folder.resolve("linked"), kitchen);
        Files.createDirectories(folder.resolve("made"));
        Files.createDirectories(folder.resolve("people"));
        Files.createSymbolicLink(folder.resolve("made/foods"), kitchen.resolve("foods"));
        Files.createSymbolicLink(folder.resolve("made/profiles"), folder.resolve("people"));

        refused(folder, "--data linked --shopping k/foods/shop.csv", READ_ONLY);
        refused(folder, "--data k --shopping linked/foods/new.csv", READ_ONLY);
        refused(folder, "--data made --shopping people/new.csv", READ_ONLY);
    }

    @Test
    void tables_in_a_folder_of_another_name() throws IOException {
        Files.move(kitchen.resolve("foods"), folder.resolve("tables"));
        Files.createSymbolicLink(kitchen.resolve("foods"), folder.resolve("tables"));

        refused(folder, "--shopping tables/new.csv", READ_ONLY);
        refused(kitchen, "--force --shopping foods/shop.csv", READ_ONLY);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"--report f.html", "--shopping f.csv", "--shopping f.txt", "--calendar f.ics", "--model f.mps"})
    void a_file_of_somebody_else_is_replaced_only_when_that_is_said(String options) throws IOException {
        Path file = Files.writeString(folder.resolve(options.replaceFirst(".* ", "")), "SHOPPING\nqzx\n");
        refused(folder, options, NOT_OURS);
        assertThat(plan(folder, options).err()).contains("--force");

        assertThat(plan(folder, "--force " + options).code()).isZero();
        assertThat(file).content().doesNotContain("qzx");
        assertThat(plan(folder, options).code()).isZero();
    }

    /** Spreadsheets write tables anew: with semicolons, quotes, a mark for UTF-8. */
    @Test
    void a_list_is_known_again_after_a_spreadsheet_or_a_phone_wrote_it() throws IOException {
        plan(folder, "--shopping s.csv --shopping s.txt");
        Path table = folder.resolve("s.csv");
        Path note = folder.resolve("s.txt");
        Files.writeString(
                table,
                "\uFEFF"
                        + Files.readString(table)
                                .replaceFirst("shop_on,cook_on", "\"shop_on\",cook_on")
                                .replace(',', ';'));
        Files.writeString(
                note, "\uFEFF\n" + Files.readString(note).replace("[ ]", "[x]").replace("\n", "\r\n"));

        assertThat(plan(folder, "--shopping s.csv --shopping s.txt").code()).isZero();
        assertThat(note).content().startsWith("SHOPPING").doesNotContain("[x]");
    }

    @Test
    void an_empty_file_holds_nothing_to_lose_and_keeps_its_permissions() throws IOException {
        Path file = Files.createFile(
                folder.resolve("r.html"),
                PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));

        assertThat(plan(folder, "--report r.html").code()).isZero();
        assertThat(Files.size(file)).isPositive();
        assertThat(Files.getPosixFilePermissions(file)).isEqualTo(PosixFilePermissions.fromString("rw-------"));
    }

    @Test
    void a_link_to_a_list_of_ours_stays_a_link() throws IOException {
        plan(folder, "--shopping old.txt");
        Files.createSymbolicLink(folder.resolve("list.txt"), Path.of("old.txt"));
        Files.writeString(folder.resolve("old.txt"), "SHOPPING (made by Batchwright)\n");

        assertThat(plan(folder, "--shopping list.txt").code()).isZero();
        assertThat(folder.resolve("list.txt")).isSymbolicLink();
        assertThat(folder.resolve("old.txt")).content().contains("Total");
    }

    @Test
    void what_is_no_ordinary_file() throws Exception {
        assertThat(new ProcessBuilder("mkfifo", folder.resolve("pipe.csv").toString())
                        .start()
                        .waitFor())
                .isZero();
        Files.createSymbolicLink(folder.resolve("null.csv"), Path.of("/dev/null"));
        Files.createSymbolicLink(folder.resolve("nothing.csv"), Path.of("nowhere.csv"));

        for (String file : new String[] {"pipe.csv", "null.csv"}) {
            Cli.Result run = plan(folder, "--force --shopping " + file);
            assertThat(run.code()).isEqualTo(2);
            assertThat(run.err()).contains("is no ordinary file", "standard output");
        }
        assertThat(plan(folder, "--shopping nothing.csv").err()).contains("a link to something that is not there");
        assertThat(plan(folder, "--shopping -").code()).isEqualTo(2);
        assertThat(plan(folder, "--shopping /dev/stdout").code()).isEqualTo(2);
        assertThat(Files.isRegularFile(Path.of("/dev/null"))).isFalse();
        assertThat(folder.resolve("nothing.csv")).isSymbolicLink();
    }

    @Test
    void a_file_that_is_protected_costs_no_search() throws IOException {
        plan(folder, "--report r.html");
        Files.setPosixFilePermissions(folder.resolve("r.html"), PosixFilePermissions.fromString("r--r--r--"));

        refused(folder, "--force --report r.html", "is protected against writing");
    }

    @ParameterizedTest
    @CsvSource({"s.csv, s.csv", "s.csv, ./s.csv", "s.csv, link.csv", "s.csv, hard.csv", "s.csv, there/s.csv"})
    void two_names_of_one_file(String one, String other) throws IOException {
        plan(folder, "--shopping s.csv");
        Files.createSymbolicLink(folder.resolve("link.csv"), Path.of("s.csv"));
        Files.createLink(folder.resolve("hard.csv"), folder.resolve("s.csv"));
        Files.createSymbolicLink(folder.resolve("there"), folder);

        Cli.Result run = plan(folder, "--shopping " + one + " --model x.mps --shopping " + other);

        if (one.equals(other)) {
            assertThat(run.code()).isZero();
        } else {
            assertThat(run.code()).isEqualTo(2);
            assertThat(run.err()).contains("is named for two things");
        }
    }

    /** Something happens to the file while the plan is searched. */
    private Cli.Result meanwhile(String options, Meanwhile action) {
        var planner = new BatchPlanner();
        return Cli.in(folder, new MakePlan(new Planner() {
                    @Override
                    public PlanResult plan(PlanRequest request) {
                        return plan(request, Watch.NONE);
                    }

                    @Override
                    public PlanResult plan(PlanRequest request, Watch watch) {
                        try {
                            action.happens();
                        } catch (IOException e) {
                            throw new AssertionError(e);
                        }
                        return planner.plan(request, watch);
                    }

                    @Override
                    public Possible possible(PlanRequest request) {
                        return planner.possible(request);
                    }
                }))
                .run((PLAN + options).split(" "));
    }

    @FunctionalInterface
    private interface Meanwhile {
        void happens() throws IOException;
    }

    @Test
    void a_file_that_fails_never_costs_the_plan_and_the_others_are_written() throws IOException {
        Files.createDirectory(folder.resolve("gone"));

        Cli.Result run = meanwhile(
                "--report gone/r.html --shopping s.csv --model gone/m.mps", () -> Files.delete(folder.resolve("gone")));

        assertThat(run.code()).isEqualTo(5);
        assertThat(run.out()).isEqualTo(plan(folder, "").out()).contains("BUY: ");
        assertThat(run.err())
                .contains("r.html\" cannot be written", "m.mps\" cannot be written".replace("m.mps", "m.names.csv"))
                .contains("Wrote s.csv");
        assertThat(folder.resolve("s.csv")).exists();
    }

    @Test
    void json_stays_one_document_when_a_file_fails() throws IOException {
        Files.createDirectory(folder.resolve("gone"));

        Cli.Result run = meanwhile("--json --report gone/r.html", () -> Files.delete(folder.resolve("gone")));

        assertThat(run.code()).isEqualTo(5);
        assertThat(Shape.parse(run.out()).get("status").textValue()).isEqualTo("planned");
    }

    @Test
    void a_file_that_the_user_made_meanwhile_is_the_users() throws IOException {
        Cli.Result run = meanwhile("--report r.html", () -> Files.writeString(folder.resolve("r.html"), "mine"));

        assertThat(run.code()).isEqualTo(5);
        assertThat(run.out()).contains("BUY: ");
        assertThat(run.err()).contains(NOT_OURS);
        assertThat(folder.resolve("r.html")).hasContent("mine");
    }
}

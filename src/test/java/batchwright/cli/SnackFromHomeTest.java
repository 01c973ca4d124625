package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** 430 kcal are missing in the evening, and the shop is shut. */
class SnackFromHomeTest {
    @TempDir
    private Path here;

    @BeforeEach
    void kitchen() {
        Cli.in(here).run("init", ".");
    }

    private void atHome(String... lines) throws IOException {
        Files.writeString(
                here.resolve("profiles/pantry.csv"), "food,grams,note,use_by\n" + String.join("\n", lines) + "\n");
    }

    private Cli.Result snack(String... more) {
        String[] args = new String[more.length + 2];
        args[0] = "snack";
        args[1] = "--from-home";
        System.arraycopy(more, 0, args, 2, more.length);
        return Cli.in(here).run(args);
    }

    /** A banana of 118 g takes 184 g as bought (64 % of it is eaten, SR28 09040): 400 g are two of them, however many would be wanted. */
    @Test
    void no_more_than_there_is() throws IOException {
        atHome("banana,400,two");

        Cli.Result two = snack("200", "--kinds", "1");
        Cli.Result three = snack("300", "--kinds", "1");

        assertThat(two.code()).isZero();
        assertThat(two.flat()).startsWith("2 x medium banana (236 g)").contains("from what is at home");
        assertThat(three.flat()).doesNotContain("3 x medium banana");
    }

    @Test
    void only_what_is_at_home() throws IOException {
        atHome("banana,800,bunch", "peanut_butter,180,open jar");

        Cli.Result result = snack("430", "--kinds", "2", "--json");

        assertThat(result.code()).isZero();
        Shape.parse(result.out())
                .findValuesAsText("food")
                .forEach(food -> assertThat(food).isIn("banana", "peanut_butter"));
        assertThat(Shape.parse(result.out()).get("ask").get("from_home").asBoolean())
                .isTrue();
    }

    @Test
    void nothing_at_home_is_said() {
        Cli.Result result = snack("430");

        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("no snack is at home", "profiles/pantry.csv");
    }
}

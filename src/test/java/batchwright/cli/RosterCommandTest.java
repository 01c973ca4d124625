package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** roster: many clients in one run. What is right for one of them is what {@code plan} answers for that one. */
class RosterCommandTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String TABLE = """
            client,profile,pot,days,dishes,name,sex,age,weight,height,activity,goal,health,avoid
            # a remark
            a 1,lifter-gaining,,2,2
            b-2,,,2,1,Ann B.,female,34,64 kg,168 cm,active,hold,none,peanut
            c-3,,,,,,male,16,64 kg,168 cm,active,hold,none

            d-4,nobody
            e-5,,,2,1,,male,,80 kg,1.81 m,active,hold,none
            f-6,"open
            g-7,lifter-gaining,one,2,2
            h-8,parent-holding,one
            i-9,desk-cutting,,2,2
            """;

    @TempDir
    Path here;

    @BeforeEach
    void kitchen() throws IOException {
        Folders.starter(here);
        Folders.keepDishes(here, "lentil_ragu", "peanut_stew", "egg_muffins", "tilapia_couscous");
        Files.writeString(here.resolve("clients.csv"), TABLE);
    }

    private Cli.Result roster(String... more) {
        List<String> args = new ArrayList<>(List.of("roster"));
        args.addAll(List.of(more));
        return Cli.in(here).run(args.toArray(new String[0]));
    }

    private static List<JsonNode> lines(String text) throws IOException {
        List<JsonNode> lines = new ArrayList<>();
        for (String line : text.lines().toList()) {
            lines.add(JSON.readTree(line));
        }
        return lines;
    }

    private String answers() throws IOException {
        return Files.readString(here.resolve("answers.jsonl"));
    }

    @Test
    void each_line_has_one_answer_or_one_error_in_the_order_of_the_list() throws IOException {
        Cli.Result result = roster("clients.csv");
        List<JsonNode> lines = lines(result.out());

        assertThat(lines)
                .extracting(line -> line.path("client").asText())
                .containsExactly("a 1", "b-2", "c-3", "d-4", "e-5", "null", "g-7", "h-8", "i-9");
        assertThat(lines.get(0).path("plan").path("status").asText()).isEqualTo("planned");
        assertThat(lines.get(1).path("plan").path("eaters").path(0).path("name").asText())
                .isEqualTo("Ann B.");
        assertThat(lines.get(2).path("plan").path("cautions").toString()).contains("\"stops_planning\":true");
        assertThat(lines.get(3).toString()).contains("no eater called");
        assertThat(lines.get(4).toString()).contains("does not say age");
        assertThat(lines.get(5).toString()).contains("quote");
        assertThat(lines.get(7).path("same_pot_as").asText()).isEqualTo("g-7");
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("9 answered", "3 with an error");
    }

    @Test
    void an_answer_is_that_of_plan() throws IOException {
        JsonNode one = lines(roster("clients.csv").out()).get(0).path("plan");
        ObjectNode alone = (ObjectNode) JSON.readTree(Cli.in(here)
                .run("plan", "lifter-gaining", "--days", "2", "--dishes", "2", "--json")
                .out());
        ((ObjectNode) alone.path("proof")).remove("seconds");

        assertThat(one).isEqualTo(alone);
    }

    @ParameterizedTest
    @CsvSource({"1", "3", "16"})
    void answers_do_not_depend_on_the_number_of_threads(String threads) {
        String here = roster("clients.csv", "--threads", threads).out();

        assertThat(here).isEqualTo(roster("clients.csv", "--threads", "2").out());
        assertThat(new TreeSet<>(roster("clients.csv", "--threads", threads, "--as-ready")
                        .out()
                        .lines()
                        .toList()))
                .isEqualTo(new TreeSet<>(here.lines().toList()));
    }

    @Test
    void a_file_that_was_cut_off_is_gone_on_with_and_nobody_is_asked_twice() throws IOException {
        roster("clients.csv", "--out", "answers.jsonl");
        String whole = answers();
        int cut = whole.indexOf("\"client\":\"c-3\"");
        Files.writeString(here.resolve("answers.jsonl"), whole.substring(0, cut + 40));

        Cli.Result again = roster("clients.csv", "--out", "answers.jsonl", "--resume");

        assertThat(answers()).isEqualTo(whole);
        assertThat(again.err()).contains("7 answered");
        assertThat(roster("clients.csv", "--out", "answers.jsonl", "--resume").err())
                .contains("0 answered");
        assertThat(answers()).isEqualTo(whole);
    }

    @Test
    void a_file_of_somebody_else_stays() throws IOException {
        Files.writeString(here.resolve("answers.jsonl"), "mine\n");

        assertThat(roster("clients.csv", "--out", "answers.jsonl").code()).isEqualTo(2);
        assertThat(answers()).isEqualTo("mine\n");
        assertThat(roster("clients.csv", "--out", "profiles/answers.jsonl").err())
                .contains("among your own files");
    }

    @Test
    void lines_of_json_say_the_same_as_a_table() throws IOException {
        Files.writeString(here.resolve("clients.jsonl"), """
                {"client":"b-2","days":2,"dishes":1,"name":"Ann B.","sex":"female","age":34,"weight":"64 kg",\
                "height":"168 cm","activity":"active","goal":"hold","health":"none","avoid":["peanut"]}
                {"client": 7}
                [1]
                """);
        List<JsonNode> lines = lines(roster("clients.jsonl").out());

        assertThat(lines.get(0).path("plan"))
                .isEqualTo(lines(roster("clients.csv").out()).get(1).path("plan"));
        assertThat(lines.get(1).path("client").asText()).isEqualTo("7");
        assertThat(lines.get(2).toString()).contains("no JSON object");
    }

    @Test
    void a_folder_of_profiles_is_a_list() throws IOException {
        List<JsonNode> lines = lines(roster("profiles", "--effort", "1").out());

        assertThat(lines)
                .extracting(line -> line.path("client").asText())
                .containsExactly("desk-cutting", "lifter-gaining", "parent-holding");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "client,profile,pot,days;x,lifter-gaining,p,2;y,desk-cutting,p,3 | ask for days 2 and 3",
                "client,profile,pot;x,lifter-gaining,p;y,lifter-gaining,p | short name lifter-gaining",
                "client,profile,weight;x,lifter-gaining,80 kg | names a profile, and also weight",
                "client,profile,days;x,lifter-gaining,40 | days cannot be \"40\"",
                "client,profile,buget;x,lifter-gaining,40 | names a profile, and also buget",
                "name,profile;x,lifter-gaining | no column \"client\"",
                "client,client;x,y | names a column twice",
                "client,profile;,lifter-gaining | the line has no \"client\"",
                "client,profile;x,lifter-gaining,1,2 | 4 cells"
            })
    void what_cannot_be_understood_is_said(String list, String says) throws IOException {
        Files.writeString(here.resolve("clients.csv"), list.replace(';', '\n') + "\n");

        assertThat(roster("clients.csv").out().replace("\\\"", "\"")).contains(says);
    }

    @Test
    void the_page_tells_who_needs_attention_and_leads_to_the_plans() throws IOException {
        Files.createDirectory(here.resolve("pages"));
        Files.writeString(
                here.resolve("profiles/book.txt"), "# batchwright book 1\n2026-11-20 weighed lifter-gaining 75.2 kg\n");
        roster("clients.csv", "--out", "answers.jsonl", "--summary", "all.html", "--pages", "pages");
        String page = Files.readString(here.resolve("all.html"));

        assertThat(page)
                .contains("Who needs attention", "All is well", "There is no eater called", "75.2 kg on 2026-11-20")
                .contains("href=\"lifter-gaining.html\"");
        assertThat(here.resolve("pages/lifter-gaining.html")).exists();
    }

    /** Each is planned for by themselves in the other tests; here one shopping is for all, and the parts are the whole. */
    @Test
    void one_kitchen_for_all_has_one_shopping_and_the_shares_are_its_cost() throws IOException {
        Files.writeString(here.resolve("all.csv"), """
                client,profile,days,budget,name,sex,age,weight,height,activity,goal,health
                a 1,lifter-gaining,2
                b-2,,2,,Ann B.,female,34,64 kg,168 cm,active,hold,none
                c-3,,,,,male,16,64 kg,168 cm,active,hold,none
                d-4,desk-cutting,3
                e-5,parent-holding,2,30
                f-6,parent-holding
                """);
        Cli.Result result = roster("all.csv", "--together", "2", "--effort", "1", "--threads", "3");
        List<JsonNode> lines = lines(result.out());
        JsonNode all = lines.get(6).path("together");

        assertThat(lines)
                .extracting(line -> line.path("client").asText())
                .containsExactly("a 1", "b-2", "c-3", "d-4", "e-5", "f-6", "");
        assertThat(lines.get(2).path("plan").path("status").asText()).isEqualTo("no_plan");
        assertThat(lines.get(3).toString()).contains("asks for days 3, a line before it for 2");
        assertThat(lines.get(4).toString()).contains("asks for budget, which one client cannot");
        assertThat(all.path("audit").path("passed").asBoolean()).isTrue();
        assertThat(all.path("left_out").findValuesAsText("client")).containsExactly("c-3", "d-4", "e-5");
        assertThat(all.path("batches")).hasSizeLessThanOrEqualTo(2);
        assertThat(all.path("shopping")).isNotEmpty();
        long shares = 0;
        int containers = 0;
        for (int at : new int[] {0, 1, 5}) {
            shares += lines.get(at).path("plan").path("cost_minor").asLong();
            for (JsonNode batch : lines.get(at).path("plan").path("batches")) {
                containers += batch.path("containers").asInt();
            }
        }
        assertThat(shares).isEqualTo(all.path("cost_minor").asLong());
        int cooked = 0;
        for (JsonNode batch : all.path("batches")) {
            cooked += batch.path("containers").asInt();
        }
        assertThat(containers).isEqualTo(cooked);
        assertThat(result.err()).contains("3 clients, one shopping: ", "6 answered, 3 with a plan, 2 with an error");
        assertThat(roster("all.csv", "--together", "2", "--effort", "1", "--threads", "1")
                        .out())
                .isEqualTo(result.out());
    }

    @Test
    void one_kitchen_for_all_refuses_what_it_cannot_do() throws IOException {
        Files.writeString(here.resolve("one.csv"), "client,profile,days\na,lifter-gaining,1\n");

        assertThat(roster("one.csv", "--together", "2").err()).contains("one day is no batch for many");
        assertThat(roster("one.csv", "--together", "2", "--as-ready").err()).contains("answers all clients at once");
        Files.writeString(here.resolve("foods/kitchen.yaml"), "most_minutes: 100\n");
        Files.writeString(here.resolve("two.csv"), "client,profile,days\na,lifter-gaining,2\n");
        assertThat(roster("two.csv", "--together", "2").err()).contains("limits the minutes of a session");
    }

    @Test
    void the_page_about_all_shows_each_who_shares_a_kitchen_once() throws IOException {
        Files.writeString(here.resolve("all.csv"), "client,profile,days\na,lifter-gaining,2\nb,parent-holding,2\n");

        roster("all.csv", "--together", "2", "--effort", "1", "--out", "all.jsonl", "--summary", "all.html");

        assertThat(Files.readString(here.resolve("all.html")))
                .contains("Clients")
                .doesNotContain("100 % too dear");
    }
}

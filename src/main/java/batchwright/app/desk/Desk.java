package batchwright.app.desk;

import batchwright.answer.PlanAnswer;
import batchwright.app.InsightWanted;
import batchwright.app.MakePlan;
import batchwright.app.PlanQuestion;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.explain.cost.Insight;
import batchwright.food.Kitchen;
import batchwright.person.Eater;
import batchwright.plan.PlanRequest;
import batchwright.plan.Planner;
import batchwright.plan.Watch;
import batchwright.solve.BatchPlanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntConsumer;
import org.jspecify.annotations.Nullable;

/**
 * One question that is asked again and again while its figures are moved. Files are read once, when the desk is made: make another one
 * when they change. What was found and proven before is used again: every answer is audited, and is what the question would be
 * answered without a desk, as far as it is proven. May be used by several threads.
 */
public final class Desk {
    private final PlanQuestion question;
    private final MakePlan.Table table;
    private final Memory memory = new Memory();

    private Desk(PlanQuestion question, MakePlan.Table table) {
        this.question = question;
        this.table = table;
    }

    /**
     * Reads all files.
     *
     * @param question what is asked at first; nothing is answered yet. What it wants to know besides the plan is left out
     * @throws Refused when there is no such eater or shop, or a file has an error
     */
    public static Desk of(Workspace workspace, PlanQuestion question) {
        return new Desk(question.withInsight(InsightWanted.NONE), MakePlan.Table.of(workspace, question));
    }

    /**
     * Whether this desk can answer what another was made for: only what sliders move may differ. A kitchen counts as the same only when
     * it is the same object: what was read anew may have changed.
     */
    @SuppressWarnings("ReferenceEquality")
    public boolean isFor(PlanQuestion other, Kitchen kitchen) {
        return table.kitchen() == kitchen && Sliders.of(other).in(question).equals(other);
    }

    /** The same desk, nothing having been asked yet. */
    Desk fresh() {
        return new Desk(question, table);
    }

    /** As nothing was moved yet. */
    public Sliders asAsked() {
        return Sliders.of(question);
    }

    /**
     * A plan near the one that was last answered with: its dishes, as far as they may be cooked, with containers, snacks and packs that fit.
     * Not proven, unless what was proven before says enough. Without a plan when there was none before, or none is found soon: then
     * the whole search has to say.
     *
     * @throws Refused when a figure is outside what a profile or a command line may say, or a name is unknown
     */
    public PlanAnswer quick(Sliders sliders) {
        return answer(sliders, MakePlan.withoutReasons(new FromMemory(memory, false)), Watch.NONE);
    }

    /**
     * The whole search, which begins with the plans known from before; as long as the question says. When there is no plan,
     * {@link #reasons} says why.
     *
     * @param watch told of costs and bounds, and may end the search
     * @throws Refused as {@link #quick}
     */
    public PlanAnswer full(Sliders sliders, Watch watch) {
        return answer(sliders, MakePlan.withoutReasons(whole()), watch);
    }

    /**
     * The whole search again, and why there is no plan where there is none: what stands in the way and what would help. Takes up to twice
     * as long.
     *
     * @throws Refused as {@link #quick}
     */
    public PlanAnswer reasons(Sliders sliders, Watch watch) {
        return answer(sliders, new MakePlan(whole()), watch);
    }

    /**
     * The answer with what is found out beside it; what was found out before stays. Takes as long as a search, for each thing wanted.
     *
     * @param answer to the same sliders, with a plan within the budget
     * @param watch may end it: what comes then is of no use
     * @param planned told how many plans were worked out so far
     */
    public PlanAnswer insight(
            Sliders sliders, PlanAnswer answer, InsightWanted wanted, Watch watch, IntConsumer planned) {
        var counted = new Counted(new BatchPlanner(), planned);
        Insight more = MakePlan.withoutReasons(counted)
                .insight(table.withEaters(eaters(sliders)), sliders.in(question).withInsight(wanted), answer, watch);
        Insight known = answer.insight();
        return answer.with(new Insight(
                more.why().or(known::why),
                more.frontier().or(known::frontier),
                more.secondOpinion().or(known::secondOpinion)));
    }

    private Planner whole() {
        return new FromMemory(memory, true);
    }

    private PlanAnswer answer(Sliders sliders, MakePlan plans, Watch watch) {
        PlanQuestion asked = sliders.in(question);
        var request = new AtomicReference<@Nullable PlanRequest>();
        PlanAnswer answer = plans.answer(table.withEaters(eaters(sliders)), asked, watch, request::set);
        Optional.ofNullable(request.get()).ifPresent(made -> memory.keep(made, answer, !watch.stop()));
        return answer;
    }

    private List<Eater> eaters(Sliders sliders) {
        List<Eater> eaters = new ArrayList<>();
        for (int k = 0; k < table.eaters().size(); k++) {
            eaters.add(sliders.eater(question.eaters().get(k)).of(table.eaters().get(k), table.kitchen()));
        }
        return eaters;
    }
}

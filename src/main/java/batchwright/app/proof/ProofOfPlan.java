package batchwright.app.proof;

import batchwright.answer.PlanAnswer;
import batchwright.app.DishesWanted;
import batchwright.app.MakePlan;
import batchwright.app.PlanQuestion;
import batchwright.app.Workspace;
import batchwright.audit.proof.PlanProof;
import batchwright.plan.PlanRequest;
import batchwright.report.export.ProofFile;
import batchwright.solve.mip.OutOfTime;
import batchwright.solve.mip.Stop;
import java.util.function.BooleanSupplier;

/** A proof of what a plan that was found costs at least. */
public final class ProofOfPlan {
    private ProofOfPlan() {}

    /**
     * @param question that the plan answers, of one cooking session
     * @param answer with a plan
     * @param stop asked now and then whether somebody wants the end; then it is a proof of what is known by then
     */
    public static ProofFile of(Workspace workspace, PlanQuestion question, PlanAnswer answer, BooleanSupplier stop) {
        PlanRequest request = MakePlan.request(workspace, question).orElseThrow();
        long cost = answer.plan().orElseThrow().cost().minor();
        long end = System.nanoTime() + question.howLong().patience().toNanos();
        PlanProof proof = ProveTotals.of(request, cost, until(end, stop));
        return new ProofFile(asked(request, question), cost, proof);
    }

    private static Stop until(long end, BooleanSupplier stop) {
        return new Stop() {
            @Override
            public boolean requested() {
                return stop.getAsBoolean() || System.nanoTime() - end > 0;
            }

            @Override
            public void spend(long work) {
                if (requested()) {
                    throw new OutOfTime();
                }
            }
        };
    }

    private static ProofFile.Asked asked(PlanRequest request, PlanQuestion question) {
        DishesWanted dishes = question.cooking().dishes();
        return new ProofFile.Asked(
                question.eaters(),
                question.days(),
                new ProofFile.Dishes(
                        dishes.only(),
                        dishes.with(),
                        dishes.without(),
                        dishes.lastTime(),
                        question.cooking().number().least(),
                        question.cooking().number().most()),
                question.shops(),
                request.kitchen().cookingDay(),
                request.kitchen().shops().reserve());
    }
}

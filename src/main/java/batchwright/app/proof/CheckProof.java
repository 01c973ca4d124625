package batchwright.app.proof;

import batchwright.app.CookingWanted;
import batchwright.app.DishNumber;
import batchwright.app.DishesWanted;
import batchwright.app.InsightWanted;
import batchwright.app.MakePlan;
import batchwright.app.PlanQuestion;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.audit.proof.ProofCheck;
import batchwright.files.disk.FolderFiles;
import batchwright.plan.PlanRequest;
import batchwright.quantity.Currency;
import batchwright.report.export.ProofFile;
import batchwright.report.export.ProofLines;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** Checks a proof against the kitchen as it is now: the files are read anew, and nothing is searched. */
public final class CheckProof {
    private CheckProof() {}

    /** @param currency of the sums */
    public record Answer(ProofFile file, ProofCheck.Verdict verdict, Currency currency) {}

    /**
     * @param path of the file with the proof
     * @throws Refused when it cannot be read or is none, or what it was asked of is not there
     */
    public static Answer of(Workspace workspace, String path) {
        ProofFile file = read(workspace, path);
        ProofFile.Asked asked = file.asked();
        Workspace then = workspace.on(asked.day()).withReserve(Optional.of(asked.reserve()));
        PlanRequest request = MakePlan.request(then, question(path, asked))
                .orElseThrow(() -> Refused.because(
                        "nothing is planned for these eaters, so there is nothing to prove",
                        "needs tells why: name the eater there."));
        return new Answer(
                file, ProofCheck.of(request, file.proof()), request.kitchen().currency());
    }

    private static ProofFile read(Workspace workspace, String path) {
        return new FolderFiles(workspace.here())
                .read(path)
                .match(
                        () -> {
                            throw Refused.because("there is no file " + path, "Name a file that holds a proof.");
                        },
                        source -> ProofLines.read(source.lines()).orElseThrow(() -> noProof(path)),
                        problem -> {
                            throw Refused.by(List.of(problem));
                        });
    }

    private static Refused noProof(String path) {
        return Refused.because(
                path + " is no proof that this version of the program can read", "Make the proof again.");
    }

    private static PlanQuestion question(String path, ProofFile.Asked asked) {
        ProofFile.Dishes dishes = asked.dishes();
        boolean possible = asked.days() >= 1
                && asked.days() <= PlanRequest.MOST_DAYS
                && !asked.eaters().isEmpty()
                && asked.reserve().signum() >= 0
                && dishes.least() >= 1
                && dishes.least() <= dishes.most();
        if (!possible) {
            throw noProof(path);
        }
        return new PlanQuestion(
                asked.eaters(),
                asked.days(),
                Optional.empty(),
                new CookingWanted(
                        new DishesWanted(dishes.only(), dishes.with(), dishes.without(), dishes.lastTime()),
                        new DishNumber(dishes.least(), dishes.most())),
                asked.shops(),
                new PlanQuestion.HowLong(Duration.ZERO),
                InsightWanted.NONE);
    }
}

package batchwright.report.files;

import batchwright.audit.proof.ProofCheck;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.report.export.ProofFile;
import batchwright.report.print.Json;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** What a check of a proof came to, as text and for scripts: schema batchwright.proof_check/1. */
public final class ProofCheckText {
    private ProofCheckText() {}

    /** What a proof claims, beside what its plan costs. */
    public static String claim(ProofFile file, Currency currency) {
        long bound = file.proof().boundMinor();
        String claim = "no plan costs less than " + money(bound, currency);
        return file.costMinor() > bound
                ? claim + "; the plan costs " + money(file.costMinor(), currency)
                : claim + ", which is what the plan costs";
    }

    public static String of(ProofFile file, ProofCheck.Verdict verdict, Currency currency, int width) {
        var page = new Page(width);
        if (!verdict.holds()) {
            page.paragraph(
                    "", "  ", "The proof does not hold: " + verdict.wrong().orElseThrow() + ".");
            page.paragraph(
                    "",
                    "  ",
                    "Either it is not of these files as they are now, or it was made or changed wrongly. It was made for "
                            + asked(file) + ".");
            return page.toString();
        }
        page.paragraph("", "  ", "The proof holds: " + claim(file, currency) + ". It is of " + asked(file) + ".");
        page.paragraph(
                "",
                "  ",
                "Worked out from the files in exact arithmetic: "
                        + Show.count(verdict.parts(), "part holds", "parts hold")
                        + " every set of dishes that may be cooked; "
                        + verdict.leaves() + " times rows were added up to at least so much.");
        if (file.costMinor() > file.proof().boundMinor()) {
            page.paragraph(
                    "",
                    "  ",
                    "What lies between, "
                            + money(file.costMinor() - file.proof().boundMinor(), currency)
                            + ", it does not cover: it knows the sums over all days, not what single days, steps of the"
                            + " scale and minutes ask besides, and its time may have ended.");
        }
        return page.toString();
    }

    private static String asked(ProofFile file) {
        return String.join(", ", file.asked().eaters()) + ", "
                + Show.count(file.asked().days(), "day", "days") + " from "
                + file.asked().day();
    }

    private static String money(long minor, Currency currency) {
        return Show.money(new Money(minor), currency);
    }

    public static String json(ProofFile file, ProofCheck.Verdict verdict) {
        ObjectNode root = Json.schema("proof_check/1");
        root.put("status", verdict.holds() ? "holds" : "does_not_hold")
                .put("bound_minor", verdict.boundMinor())
                .put("cost_minor", file.costMinor())
                .put("parts", verdict.parts())
                .put("sums", verdict.leaves());
        Json.text(root, "wrong", verdict.wrong());
        return Json.text(root);
    }
}

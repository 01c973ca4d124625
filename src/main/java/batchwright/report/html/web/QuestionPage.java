package batchwright.report.html.web;

import java.util.List;

/**
 * One question, with what can be answered.
 *
 * @param asked the question
 * @param answer what stands in its fields, when it was answered before or could not be taken
 * @param mayBeLeftOut whether there is an eater without it
 * @param mayGoBack whether something was asked before
 * @param sent where the answer goes
 */
public record QuestionPage(
        Frame frame, Asked asked, Answer answer, boolean mayBeLeftOut, boolean mayGoBack, Sent sent) {
    /**
     * @param action where the answer is sent
     * @param button what sends it
     * @param back a page to go back to without an answer; empty for none
     */
    public record Sent(String action, String button, String back) {
        /** One of several questions of somebody new. */
        public static final Sent ON = new Sent("/start/questions", "Go on", "");
    }

    /** How it is answered. */
    public enum Kind {
        /** One of the choices. */
        ONE,
        /** Any of the choices. */
        ANY,
        /** In words. */
        WORDS
    }

    /** @param hint below the question; may be empty */
    public record Asked(String key, String hint, Kind kind, List<Choice> choices, String words) {
        /** Whether there is a field for words as well, and what it is called. */
        public boolean hasWords() {
            return !words.isEmpty();
        }
    }

    /** @param says in full */
    public record Choice(String value, String says) {
        /** By which it is found. */
        public String id() {
            return "choice-" + value.replaceAll("[^A-Za-z0-9]+", "-");
        }
    }

    /** @param words typed */
    public record Answer(List<String> chosen, String words) {
        public static final Answer NONE = new Answer(List.of(), "");
    }

    /** Which field a summary of errors leads to. */
    public String field() {
        return asked.choices().isEmpty() ? "words" : asked.choices().get(0).id();
    }
}

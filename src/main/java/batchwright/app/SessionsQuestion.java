package batchwright.app;

/**
 * A plan with several cooking sessions, as the user asks for it.
 *
 * @param whole all days; the most dishes are those of one session
 * @param cooks how many sessions, at least 2
 * @param vary whether no dish is cooked in two sessions in a row
 * @param shopOnce whether everything is bought before the first session, not before each
 */
public record SessionsQuestion(PlanQuestion whole, int cooks, boolean vary, boolean shopOnce) {}

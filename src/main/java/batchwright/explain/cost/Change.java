package batchwright.explain.cost;

import batchwright.plan.PlanRequest;
import java.util.function.UnaryOperator;

/**
 * A rule changed a little, whatever else in the request changes.
 *
 * @param to the changed figure, for people
 * @param made the request with the rule changed
 */
record Change(String to, UnaryOperator<PlanRequest> made) {}

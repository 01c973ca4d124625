package batchwright.plan;

/**
 * One cooking session of several.
 *
 * @param firstDay the day of the whole on which it cooks
 * @param request its own days, counted from 1, and its own kitchen: the cooking day, and what the sessions before left at home
 * @param plan what it cooks, eats and buys; its proof speaks of this session alone
 */
public record Session(int firstDay, PlanRequest request, Plan plan) {}

package batchwright.needs.resting;

import batchwright.person.Body;

/** Finds an equation by the name that the data files use. */
public final class Equations {
    private Equations() {}

    public static RestingEnergyEquation named(String name) {
        return RestingEnergyEquations.all().stream()
                .filter(equation -> equation.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no equation is called " + name));
    }

    public static double kcal(String name, Body body) {
        return named(name).perDay(body).orElseThrow().kcal();
    }
}

package batchwright.plan;

/** What the cost of a plan can be set against. */
public enum TradeOff {
    /** Protein that each day must hold. */
    PROTEIN,
    /** Energy that each day aims at. */
    ENERGY,
    /** The other way round: how much protein a day a budget can buy. */
    BUDGET
}

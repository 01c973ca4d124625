package batchwright.needs.dynamics;

/**
 * Parameters of {@link Hall2011}, in kJ, kg and days. "Seen" means seen in the named source; all others are from memory, not
 * seen. That the model then behaves as published is indirect support only.
 */
final class Hall2011Parameters {
    /** rho_F, energy of body fat [kJ/kg]. Seen: Hall 2008. */
    static final double KJ_PER_KG_FAT = 39_500;
    /** rho_L, energy of wet lean tissue [kJ/kg]. From memory, not seen. */
    static final double KJ_PER_KG_LEAN = 7_600;
    /** rho_G, energy of glycogen [kJ/kg]. Seen: web appendix. */
    static final double KJ_PER_KG_GLYCOGEN = 17_600;

    /** G_init, glycogen at the start [kg]. Seen: web appendix. */
    static final double GLYCOGEN_KG = 0.5;
    /** Glycogen with the 2.7 g of water that each gram holds [kg/kg]. Seen: web appendix. */
    static final double WET_PER_DRY_GLYCOGEN = 3.7;

    /** gamma_F, upkeep of fat [kJ/kg/d]. From memory; a transcription has 3.2 kcal, which is 13.4 kJ. */
    static final double UPKEEP_KJ_PER_KG_FAT = 13;
    /** gamma_L, upkeep of lean tissue [kJ/kg/d]. From memory; a transcription has 22 kcal, which is 92 kJ. */
    static final double UPKEEP_KJ_PER_KG_LEAN = 92;
    /** eta_F, cost of laying down fat [kJ/kg]. From memory; a transcription has 180 kcal, which is 753 kJ. */
    static final double BUILDING_KJ_PER_KG_FAT = 750;
    /** eta_L, cost of laying down lean tissue [kJ/kg]. From memory; a transcription has 230 kcal, which is 962 kJ. */
    static final double BUILDING_KJ_PER_KG_LEAN = 960;

    /** beta_TEF, cost of digestion per energy eaten. From memory, not seen. */
    static final double DIGESTION = 0.10;
    /** beta_AT, adaptive thermogenesis per change of intake, once it has settled. From memory, not seen. */
    static final double ADAPTATION = 0.14;
    /** tau_AT, how fast adaptive thermogenesis settles [d]. From memory, not seen. */
    static final double ADAPTATION_DAYS = 14;

    /** Fat mass at which fat and lean tissue change equally [kg]. Seen: Forbes 1987, in a published supplement. */
    static final double FORBES_KG = 10.4;
    /** C, the same for energy instead of mass [kg]. */
    static final double FORBES_ENERGY_KG = FORBES_KG * KJ_PER_KG_LEAN / KJ_PER_KG_FAT;

    /** [Na], sodium in a litre of extracellular fluid [mg/kg]. From memory, not seen. */
    static final double SODIUM_MG_PER_KG = 3220;
    /** xi_Na, sodium lost per surplus of fluid [mg/kg/d]. From memory, not seen. */
    static final double SODIUM_LOST_MG_PER_KG = 3000;
    /** xi_CI, sodium lost when no carbohydrate is eaten [mg/d]. From memory, not seen. */
    static final double SODIUM_LOST_WITHOUT_CARBOHYDRATE_MG = 4000;

    /** Carbohydrate / energy, before and after. A choice: neither is known here, and it moves only the water of the first days. */
    static final double CARBOHYDRATE = 0.5;

    private Hall2011Parameters() {}
}

package batchwright.files.foods;

/**
 * Energy of protein, fat, carbohydrate without fibre, and fibre [g], by the factors that labels are worked out with:
 * Regulation (EU) 1169/2011, Annex XIV. The kJ have factors of their own, so they are not 4.184 times the kcal.
 */
final class LabelFactors {
    /** kcal/g; fibre by United States rules may count as anything from nothing to carbohydrate, 21 CFR 101.9(c)(1). */
    static final double CARBOHYDRATE_KCAL = 4;

    /** kcal/g: 0 for erythritol, 2.4 for others (Annex XIV), up to 3.0 in the United States (21 CFR 101.9, from memory). */
    static final double POLYOLS_MOST_KCAL = 3;

    /** kJ / kcal: least for fibre (8 / 2), most for organic acids (13 / 3). */
    static final double KJ_PER_KCAL_LEAST = 8.0 / 2;

    static final double KJ_PER_KCAL_MOST = 13.0 / 3;

    private static final double PROTEIN_KCAL = 4;
    private static final double FAT_KCAL = 9;
    private static final double FIBRE_KCAL = 2;

    private LabelFactors() {}

    static double kcal(double protein, double fat, double carbohydrate, double fibre) {
        return PROTEIN_KCAL * protein + FAT_KCAL * fat + CARBOHYDRATE_KCAL * carbohydrate + FIBRE_KCAL * fibre;
    }
}

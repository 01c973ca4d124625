package batchwright.food;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * What is counted of a food, per 100 g edible. The tagname is that of INFOODS (FAO) and is also the column name in the
 * catalogue. Carbohydrate is "by difference" and includes fibre, as in USDA SR28.
 */
public enum Nutrient {
    ENERGY("ENERC_KCAL", "kcal", "energy"),
    PROTEIN("PROCNT", "g", "protein"),
    FAT("FAT", "g", "fat"),
    SATURATED_FAT("FASAT", "g", "saturated fat"),
    CARBOHYDRATE("CHOCDF", "g", "carbohydrate"),
    SUGAR("SUGAR", "g", "sugar"),
    FIBRE("FIBTG", "g", "fibre"),
    SODIUM("NA", "mg", "sodium"),
    POTASSIUM("K", "mg", "potassium"),
    CALCIUM("CA", "mg", "calcium"),
    IRON("FE", "mg", "iron"),
    MAGNESIUM("MG", "mg", "magnesium"),
    ZINC("ZN", "mg", "zinc"),
    VITAMIN_A("VITA_RAE", "ug", "vitamin A"),
    VITAMIN_C("VITC", "mg", "vitamin C"),
    VITAMIN_D("VITD", "ug", "vitamin D"),
    VITAMIN_B12("VITB12", "ug", "vitamin B12"),
    FOLATE("FOL", "ug", "folate"),
    FOLATE_DFE("FOLDFE", "ug", "folate, dietary equivalents"),
    WATER("WATER", "g", "water"),
    /** Grams that count towards fruit and vegetables (WHO). No nutrient, but added up in the same way. */
    FRUIT_VEG("", "g", "fruit and vegetables"),
    /** What is packed weighs this. No nutrient, and only parts of dishes have it. */
    COOKED_WEIGHT("", "g", "cooked weight"),
    /** The room that what is packed takes in a box. No nutrient, and only parts of dishes have it. */
    VOLUME("", "ml", "volume");

    /** Of foods; what only a packed container has is left out. */
    private static final List<Nutrient> OF_FOODS = Arrays.stream(values())
            .filter(n -> n != COOKED_WEIGHT && n != VOLUME)
            .toList();

    private static final List<Nutrient> COLUMNS =
            Arrays.stream(values()).filter(n -> !n.tagname.isEmpty()).toList();

    private final String tagname;
    private final String unit;
    private final String label;

    Nutrient(String tagname, String unit, String label) {
        this.tagname = tagname;
        this.unit = unit;
        this.label = label;
    }

    /** INFOODS tagname; empty for what has none and no column of its own. */
    public String tagname() {
        return tagname;
    }

    /** For machines: names of rows, keys in JSON. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    public String unit() {
        return unit;
    }

    public String label() {
        return label;
    }

    /** Those that a food can have; the rest are for containers only. */
    public static List<Nutrient> ofFoods() {
        return OF_FOODS;
    }

    /** Those with a column in the catalogue, in its order. */
    public static List<Nutrient> columns() {
        return COLUMNS;
    }
}

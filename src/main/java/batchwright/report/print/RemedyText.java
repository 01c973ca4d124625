package batchwright.report.print;

import batchwright.food.Food;
import batchwright.food.Part;
import batchwright.person.Eater;
import batchwright.plan.Remedy;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** A remedy as an option of the command line or a line of a file. */
public final class RemedyText {
    private RemedyText() {}

    public static String of(Remedy remedy) {
        if (remedy instanceof Remedy.Together both) {
            return of(both.first()) + "; besides " + of(both.besides());
        } else if (remedy instanceof Remedy.RaiseBudget budget) {
            return budget.to()
                    .map(to -> "--budget " + budget.currency().text(to))
                    .orElse("a larger --budget");
        } else if (remedy instanceof Remedy.PlanDays plan) {
            return "--days " + plan.days();
        } else if (remedy instanceof Remedy.AskForLess less) {
            return "plan without --with"
                    + less.dish().map(dish -> " " + dish.id()).orElse("");
        } else if (remedy instanceof Remedy.AllowDishes allow) {
            return "--dishes " + allow.dishes();
        } else if (remedy instanceof Remedy.GoToShop go) {
            return go.shop().map(shop -> shop + " in --shops, too").orElse("plan without --shops");
        } else if (remedy instanceof Remedy.AskForFewerDishes fewer) {
            return "a smaller first number in --dishes: " + fewer.least();
        } else if (remedy instanceof Remedy.AllowLastTime) {
            return "plan without --last-time";
        } else if (remedy instanceof Remedy.AllowMinutes allow) {
            return "--most-minutes " + allow.handsOn();
        } else if (remedy instanceof Remedy.AllowTime allow) {
            return "--done-within " + allow.minutes();
        }
        return inFiles(remedy);
    }

    private static String inFiles(Remedy remedy) {
        if (remedy instanceof Remedy.Freeze freeze) {
            return freeze.dish()
                    .map(dish -> "freezes: yes in foods/dishes/" + dish.id() + ".yaml, if it is")
                    .orElse("freezes: yes in foods/dishes, where it is");
        } else if (remedy instanceof Remedy.LeaveOut out) {
            return "take the part " + names(out) + " and its steps out of foods/dishes/"
                    + out.dish().id() + ".yaml";
        } else if (remedy instanceof Remedy.SellPacks sell) {
            return packs(sell.food()) + " in foods/shop.csv";
        } else if (remedy instanceof Remedy.OfferAnotherDish) {
            return "another dish, in --cook if you named some there, else in foods/dishes";
        } else if (remedy instanceof Remedy.WriteDishes) {
            return "dishes in foods/dishes; the command init writes starter dishes";
        } else if (remedy instanceof Remedy.ChangeWhatIsCooked) {
            return "this rule is fixed; try wider ranges of parts in foods/dishes, another dish or other snacks";
        } else if (remedy instanceof Remedy.ChangeDishesOrPacks) {
            return "other dishes or wider ranges of their parts in foods/dishes, or more packs in foods/shop.csv";
        }
        return inProfile(remedy);
    }

    private static String names(Remedy.LeaveOut out) {
        return out.parts().stream().map(Part::name).collect(Collectors.joining(", and the part "));
    }

    private static String packs(Optional<Food> food) {
        return food.map(f -> "a pack of " + f.id()).orElse("packs");
    }

    private static String inProfile(Remedy remedy) {
        if (remedy instanceof Remedy.ChangeTarget change) {
            return change.setting().key() + ": " + change.setting().written(change.range()) + " under target, in "
                    + file(change.eater());
        } else if (remedy instanceof Remedy.ChangeContainers change) {
            return "containers_a_day: " + change.aDay() + " in " + file(change.eater());
        } else if (remedy instanceof Remedy.ChangeMeal change) {
            String least = change.least() == change.most() ? "" : change.least() + " to ";
            return change.meal().name().toLowerCase(Locale.ROOT) + "_a_day: " + least + change.most() + " in "
                    + file(change.eater());
        } else if (remedy instanceof Remedy.AllowSameDish allow) {
            return (allow.aDay().isPresent()
                            ? "same_dish_a_day: " + allow.aDay().getAsInt()
                            : "same_dish_in_all: " + allow.inAll().orElse(0))
                    + " in " + file(allow.eater());
        } else if (remedy instanceof Remedy.AllowSnacks allow) {
            return snacks(allow.measuresADay(), allow.kindsADay()) + " under snacks, in " + file(allow.eater());
        } else if (remedy instanceof Remedy.AllowAnySnacks allow) {
            return "any_together: yes under snacks, in " + file(allow.eater());
        } else if (remedy instanceof Remedy.OfferEverySnack offer) {
            return "leave out only under snacks, in " + file(offer.eater());
        } else if (remedy instanceof Remedy.AvoidLess avoid) {
            return avoid.id().map(id -> "avoid without " + id).orElse("avoid: []") + ", in " + file(avoid.eater());
        }
        throw new IllegalArgumentException("a remedy (" + remedy + ") must have its words here.");
    }

    private static String snacks(OptionalInt measures, OptionalInt kinds) {
        String said = measures.isPresent() ? "measures_a_day: " + measures.getAsInt() : "";
        String and = measures.isPresent() && kinds.isPresent() ? " and " : "";
        return said + and + (kinds.isPresent() ? "kinds_a_day: " + kinds.getAsInt() : "");
    }

    private static String file(Eater eater) {
        return "profiles/" + eater.id() + ".yaml";
    }
}

package batchwright.files.shop;

import batchwright.files.table.TableRow;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Problems;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** The columns price and currency of foods/shop.csv. All prices are in the currency of the first line that names one. */
final class ShopPrices {
    /** A pack of 25 kg of rice costs 500,000 rupiah. */
    private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000);

    private static final Money EXAMPLE = new Money(249);
    private static final String FREE = "what is free at home belongs in the pantry";
    /** Such as $2.49, 2.49 USD, 2,49 \u20ac. */
    private static final Pattern WITH_CURRENCY =
            Pattern.compile("[\\p{Sc}\\p{L}]+\\.?\\s*[0-9.,]+|[0-9.,]+\\s*[\\p{Sc}\\p{L}]+\\.?");

    private final Problems problems;
    private Optional<Written> first = Optional.empty();
    private Optional<Currency> currency = Optional.empty();

    ShopPrices(Problems problems) {
        this.problems = problems;
    }

    /** US dollars when nothing is sold. */
    Currency currency() {
        return currency.orElse(Currency.USD);
    }

    /** The price of a line; empty when price or currency has an error. */
    Optional<Money> read(TableRow row) {
        Optional<Currency> here =
                row.need("currency", "Enter a currency such as USD").flatMap(this::currency);
        Optional<BigDecimal> price = price(row, here.orElse(currency()));
        if (here.isEmpty() || price.isEmpty()) {
            return Optional.empty();
        }
        Optional<Money> money = here.get().money(price.get());
        if (money.isEmpty()) {
            problems.error(
                    row.cell("price"),
                    "the price has " + tooMany(here.get()),
                    "expected a price such as " + here.get().text(EXAMPLE));
        }
        return same(row.cell("currency"), here.get()) ? money : Optional.empty();
    }

    private static String tooMany(Currency currency) {
        return switch (currency.digits()) {
            case 0 -> "decimals, but " + currency + " has none";
            case 2 -> "more than two decimals";
            default -> "more than " + currency.digits() + " decimals";
        };
    }

    private Optional<BigDecimal> price(TableRow row, Currency currency) {
        Written cell = row.cell("price");
        if (WITH_CURRENCY.matcher(cell.text()).matches()) {
            problems.error(
                    cell,
                    cell.quoted() + " is more than a number",
                    "expected the digits alone, such as 2.49: the currency has its own column");
            return Optional.empty();
        }
        return row.decimal("price", new NumberRange("price", currency.least(), MOST, "", FREE));
    }

    private Optional<Currency> currency(Written code) {
        Optional<Currency> found = Currency.of(code.text());
        if (found.isEmpty()) {
            problems.error(code, code.quoted() + " is not a currency", "expected its three letters" + such(code));
        }
        return found;
    }

    private static String such(Written code) {
        String upper = code.text().toUpperCase(Locale.ROOT);
        return Currency.of(upper).isPresent() ? ": " + upper : " in ISO 4217, such as USD, EUR";
    }

    private boolean same(Written code, Currency here) {
        if (currency.isEmpty()) {
            currency = Optional.of(here);
            first = Optional.of(code);
        }
        if (here.equals(currency())) {
            return true;
        }
        problems.error(
                code,
                "the price is in %s, others are in %s".formatted(here, currency()),
                "expected one currency; the first is on line %s"
                        .formatted(first.orElseThrow().at().line()));
        return false;
    }
}

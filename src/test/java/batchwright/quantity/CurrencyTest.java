package batchwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Codes and minor units of ISO 4217, list one (current currencies and funds), as its maintenance agency SIX publishes it; typed from
 * memory. That list is also what java.util.Currency holds.
 */
class CurrencyTest {
    private static Currency currency(String code) {
        return Currency.of(code).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "USD, 2", "EUR, 2", "GBP, 2", "INR, 2", "IDR, 2", "JPY, 0", "KRW, 0", "CLP, 0", "VND, 0", "ISK, 0", "KWD, 3",
        "BHD, 3", "JOD, 3", "OMR, 3", "TND, 3"
    })
    void has_the_minor_units_of_the_standard(String code, int digits) {
        assertThat(currency(code).digits()).isEqualTo(digits);
        assertThat(currency(code)).hasToString(code);
    }

    /** Gold, silver, special drawing rights, a code for tests, no currency: the standard gives them no minor unit. */
    @ParameterizedTest
    @ValueSource(strings = {"XAU", "XAG", "XDR", "XTS", "XXX", "ABC", "usd", "US", "USDT", "", "$"})
    void nothing_is_priced_in_what_is_no_currency_or_has_no_minor_unit(String code) {
        assertThat(Currency.of(code)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "USD, 2.49, 249, 2.49",
        "USD, 2.5, 250, 2.50",
        "USD, 3, 300, 3.00",
        "USD, 2.490, 249, 2.49",
        "JPY, 249, 249, 249",
        "JPY, 249.0, 249, 249",
        "JPY, 1000000, 1000000, 1000000",
        "KWD, 2.495, 2495, 2.495",
        "KWD, 2.5, 2500, 2.500"
    })
    void amounts_are_read_and_written_with_its_decimals(String code, BigDecimal amount, long minor, String written) {
        Currency currency = currency(code);

        assertThat(currency.money(amount)).contains(new Money(minor));
        assertThat(currency.text(new Money(minor))).isEqualTo(written);
        assertThat(currency.major(new Money(minor))).isEqualByComparingTo(amount);
    }

    @ParameterizedTest
    @CsvSource({"USD, 2.495", "JPY, 249.5", "KWD, 2.4955"})
    void more_decimals_than_it_has_are_no_amount(String code, BigDecimal amount) {
        assertThat(currency(code).money(amount)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"USD, 0.01", "JPY, 1", "KWD, 0.001"})
    void least_is_one_minor_unit(String code, BigDecimal least) {
        assertThat(currency(code).least()).isEqualTo(least);
        assertThat(currency(code).money(least)).contains(new Money(1));
    }

    @Test
    void a_share_of_a_minor_unit_is_rounded_half_up() {
        var share = new BigDecimal("248.5");

        assertThat(Currency.USD.text(share)).isEqualTo("2.49");
        assertThat(currency("JPY").text(share)).isEqualTo("249");
        assertThat(currency("KWD").text(share)).isEqualTo("0.249");
    }
}

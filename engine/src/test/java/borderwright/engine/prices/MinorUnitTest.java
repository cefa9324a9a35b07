package borderwright.engine.prices;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MinorUnitTest {
    @ParameterizedTest
    @CsvSource({"GBP, 3070, GBP 30.70", "JPY, 3070, JPY 3070", "GBP, -5, GBP -0.05", "GBP, 0, GBP 0.00"})
    void amountsHaveTheDecimalsOfTheirCurrency(String code, long units, String written) {
        assertThat(MinorUnit.of(CurrencyUnit.of(code)).money(units)).hasToString(written);
    }

    @ParameterizedTest
    @CsvSource({"2, 3070, 30.70", "3, 30700, 30.70", "4, 307025, 30.7025", "2, 3000, 30.00"})
    void amountsWithoutACurrencyHaveTwoDecimalsAndMoreOnlyWhereTheyNeedThem(int places, long units, String amount) {
        assertThat(MinorUnit.withoutCurrency(places).money(units).getAmount().toPlainString())
                .isEqualTo(amount);
    }

    @Test
    void aUnitHasNoNegativeDecimals() {
        assertThatThrownBy(() -> MinorUnit.withoutCurrency(-1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("-1");
    }
}

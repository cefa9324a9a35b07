package borderwright.engine.prices;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.Substitute;
import borderwright.engine.garden.SupplierSpec;
import borderwright.engine.garden.given.GivenBoardPrice;
import borderwright.engine.garden.given.GivenSection;
import borderwright.engine.garden.given.GivenSupplier;
import borderwright.engine.garden.resolve.SupplierResolver;
import borderwright.engine.garden.resolve.WoodResolver;
import borderwright.engine.measure.Length;
import borderwright.engine.message.English;
import java.math.BigDecimal;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class PriceListsTest {
    private static final CurrencyUnit POUND = CurrencyUnit.of("GBP");
    private static final SectionSpec CEDAR =
            WoodResolver.section(GivenSection.builder("cedar", new Length(8128), new Length(6 * 8128))
                    .build());

    /** Cedar sold in these lengths. */
    private static GivenBoardPrice.Builder cedar(Length... lengths) {
        return GivenBoardPrice.builder("cedar").lengths(List.of(lengths));
    }

    private static @Nullable BigDecimal number(@Nullable String text) {
        return text == null ? null : new BigDecimal(text);
    }

    private static PriceLists resolved(GivenBoardPrice price, @Nullable Length longest, @Nullable Boolean taxed) {
        SupplierSpec note = SupplierResolver.supplier(GivenSupplier.builder("Alder")
                .taxIncluded(taxed == null ? null : !taxed)
                .taxPercent(new BigDecimal("20"))
                .delivery(new BigDecimal("25"))
                .freeOver(new BigDecimal("300"))
                .longestBoard(longest)
                .boards(List.of(price))
                .build());
        return PriceLists.resolve(List.of(note), List.of(CEDAR), POUND);
    }

    @Test
    void aPricePerMetreIsRoundedPerBoardHalvesUp() {
        PriceLists lists = resolved(
                cedar(Length.ofMm(3000), Length.ofMm(4250))
                        .perMetre(number("2.05"))
                        .build(),
                null,
                null);
        // 3.0 m x 2.05 = 6.15; 4.25 m x 2.05 = 8.7125.
        assertThat(lists.boards()).extracting(BoardOffer::packPrice).containsExactly(615L, 871L);
    }

    @Test
    void aPricePerBoardFootCountsTheMeasuredSection() {
        // 1 in x 6 in x 8 ft = 4 board feet.
        PriceLists lists = resolved(
                cedar(new Length(96 * 8128L))
                        .perBoardFoot(number("1.055"))
                        .pack(2)
                        .build(),
                null,
                null);
        assertThat(lists.boards()).extracting(BoardOffer::packPrice).containsExactly(844L);
    }

    @Test
    void boardsTooLongToBringHomeAreLeftOut() {
        PriceLists lists = resolved(
                cedar(Length.ofMm(3000), Length.ofMm(4800))
                        .price(number("9.00"))
                        .build(),
                Length.ofMm(3600),
                null);
        assertThat(lists.boards()).extracting(BoardOffer::lengthTicks).containsExactly(960_000L);
    }

    @Test
    void taxIsOnlyAddedWherePricesAreWithoutIt() {
        GivenBoardPrice price = cedar(Length.ofMm(3000)).price(number("9.00")).build();
        assertThat(resolved(price, null, null).terms().get(0).taxPercent()).isEqualByComparingTo("0");
        assertThat(resolved(price, null, true).terms().get(0).taxPercent()).isEqualByComparingTo("20");
    }

    @Test
    void aBoardWithoutAPriceIsReported() {
        PriceLists lists = resolved(cedar(Length.ofMm(3000)).build(), null, null);
        assertThat(lists.problems())
                .singleElement()
                .satisfies(p -> assertThat(p.sentence(English.METRIC))
                        .isEqualTo("The cedar of Alder has no usable price."
                                + " Give the price of a whole board, or of a metre, foot or board foot."));
    }

    @Test
    void aSectionThatStandsInCountsItsDifferenceForEachMetre() {
        PriceLists lists = resolved(
                        cedar(Length.ofMm(3000))
                                .perMetre(number("2.00"))
                                .pack(2)
                                .build(),
                        null,
                        null)
                .withSubstitutes(List.of(new Substitute("cedar", "larch", new BigDecimal("0.40"))), POUND);
        BoardOffer standIn = lists.boards().get(1);
        assertThat(standIn.section()).isEqualTo("larch");
        assertThat(standIn.sold()).isEqualTo("cedar");
        assertThat(standIn.packPrice()).isEqualTo(1200);
        // 2 boards of 3 m at 0.40 a metre.
        assertThat(standIn.instead().counted()).isEqualTo(240);
    }

    /** Three bands of two distances, and fetching with a longest board. */
    private static SupplierSpec banded(@Nullable String distance) {
        return SupplierResolver.supplier(GivenSupplier.builder("Alder")
                .deliveryBands(List.of(band("20", null, "35"), band("20", "100", "20"), band("40", null, "60")))
                .distance(number(distance))
                .collection(new GivenSupplier.GivenCollection(number("4.50"), new Length(3000 * 320)))
                .boards(List.of(
                        cedar(Length.ofMm(2400)).price(number("6")).build(),
                        cedar(Length.ofMm(4800)).price(number("12")).build()))
                .build());
    }

    private static GivenSupplier.GivenDeliveryBand band(@Nullable String within, @Nullable String from, String charge) {
        return new GivenSupplier.GivenDeliveryBand(number(within), number(from), new BigDecimal(charge));
    }

    private static List<String> ways(PriceLists lists) {
        return lists.terms().get(0).ways().stream()
                .map(w -> (w.fetched() ? "fetched " : "from " + w.fromValue() + " ") + w.charge())
                .toList();
    }

    @Test
    void theNearestBandsThatReachTheGardenHold() {
        assertThat(ways(PriceLists.resolve(List.of(banded("20")), List.of(CEDAR), POUND)))
                .containsExactly("from 0 3500", "from 10000 2000", "fetched 450");
        assertThat(ways(PriceLists.resolve(List.of(banded("20.1")), List.of(CEDAR), POUND)))
                .containsExactly("from 0 6000", "fetched 450");
    }

    @Test
    void beyondTheLastBandOnlyWhatCanBeFetchedIsThere() {
        PriceLists far = PriceLists.resolve(List.of(banded("41")), List.of(CEDAR), POUND);
        assertThat(ways(far)).containsExactly("fetched 450");
        assertThat(far.boards()).extracting(BoardOffer::packPrice).containsExactly(600L);
    }
}

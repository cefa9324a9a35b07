package borderwright.app.cut;

import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.why.Explanation;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.DeliveryOption;
import borderwright.engine.prices.SupplierTerms;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.function.LongFunction;

/** The field {@code why} of an answer: the figures behind the basket. */
final class WhyJson {
    private final JsonGenerator json;
    private final LongFunction<BigDecimal> money;
    private final LongFunction<BigDecimal> mm;

    WhyJson(JsonGenerator json, LongFunction<BigDecimal> money, LongFunction<BigDecimal> mm) {
        this.json = json;
        this.money = money;
        this.mm = mm;
    }

    void write(ShoppingAnswer answer, Explanation why) throws IOException {
        json.writeRaw('\n');
        json.writeObjectFieldStart("why");
        json.writeArrayFieldStart("alone");
        for (ShoppingAnswer.Alternative alone : answer.alternatives()) {
            json.writeStartObject();
            json.writeStringField("supplier", alone.supplier());
            json.writeBooleanField("possible", alone.possible());
            if (alone.possible()) {
                if (alone.cost() != Long.MAX_VALUE) {
                    json.writeNumberField("cost", money.apply(alone.cost()));
                }
                json.writeNumberField("bound", money.apply(alone.bound()));
            }
            json.writeEndObject();
        }
        json.writeEndArray();
        wins(why);
        dearer(why);
        costs(why);
        json.writeEndObject();
    }

    private void wins(Explanation why) throws IOException {
        json.writeArrayFieldStart("wins_a_place");
        for (Explanation.SupplierWins wins : why.suppliers()) {
            json.writeStartObject();
            json.writeStringField("supplier", wins.supplier());
            json.writeNumberField("all_prices_lower_percent", BigDecimal.valueOf(1000L - wins.atThousandths(), 1));
            json.writeBooleanField("least", wins.sharp());
            json.writeEndObject();
        }
        for (Explanation.BoardWins wins : why.boards()) {
            json.writeStartObject();
            board(wins.offer());
            json.writeNumberField("at_pack_price", money.apply(wins.atPrice()));
            json.writeBooleanField("least", wins.sharp());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void dearer(Explanation why) throws IOException {
        json.writeArrayFieldStart("dearer_per_length");
        for (Explanation.DearerLength dearer : why.dearer()) {
            json.writeStartObject();
            board(dearer.offer());
            json.writeBooleanField("possible_without", dearer.possible());
            if (dearer.possible()) {
                json.writeNumberField("costs_more_without", money.apply(dearer.moreWithout()));
                json.writeNumberField("left_over_mm", mm.apply(dearer.offcutTicks()));
                json.writeNumberField("left_over_without_mm", mm.apply(dearer.offcutWithoutTicks()));
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void costs(Explanation why) throws IOException {
        json.writeArrayFieldStart("delivery");
        for (Explanation.Delivery delivery : why.deliveries()) {
            json.writeStartObject();
            json.writeStringField("supplier", delivery.supplier());
            json.writeNumberField("charge", money.apply(delivery.charge()));
            json.writeBooleanField("fetched", delivery.fetched());
            if (delivery.shortOfNext() != SupplierTerms.NEVER) {
                json.writeNumberField(
                        delivery.nextCharge() == 0 ? "goods_short_of_free" : "goods_short_of_next",
                        money.apply(delivery.shortOfNext()));
                json.writeNumberField("next_charge", money.apply(delivery.nextCharge()));
            }
            DeliveryOption other = delivery.other();
            if (other != null) {
                json.writeObjectFieldStart("other_way");
                json.writeBooleanField("fetched", other.fetched());
                json.writeNumberField("charge", money.apply(other.charge()));
                if (other.longestTicks() != DeliveryOption.ANY_LENGTH) {
                    json.writeNumberField("longest_mm", mm.apply(other.longestTicks()));
                }
                json.writeEndObject();
            }
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("not_cut");
        for (Explanation.Spare spare : why.spares()) {
            json.writeStartObject();
            board(spare.offer());
            json.writeNumberField("count", spare.boards());
            json.writeNumberField("value", money.apply(spare.value()));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void board(BoardOffer offer) throws IOException {
        json.writeStringField("supplier", offer.supplier());
        json.writeStringField("section", offer.section());
        json.writeNumberField("length_mm", mm.apply(offer.lengthTicks()));
        json.writeNumberField("pack", offer.pack());
        json.writeNumberField("pack_price", money.apply(offer.packPrice()));
    }
}

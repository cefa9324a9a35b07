package borderwright.engine.prices;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What a supplier charges beyond its prices.
 *
 * <p>Charges must not rise with the value of an order; otherwise a large order could claim the cheaper, lower band.
 *
 * @param name the supplier's name
 * @param taxPercent tax added to goods and delivery, percent, not below 0; 0 where prices include it
 * @param minimumOrder least value of goods as priced, minor units, 0 for none
 * @param ways how an order may be got home; none where nothing can be had
 */
public record SupplierTerms(String name, BigDecimal taxPercent, long minimumOrder, List<DeliveryOption> ways) {
    public static final long NEVER = Long.MAX_VALUE;

    public SupplierTerms {
        ways = List.copyOf(ways);
        if (taxPercent.signum() < 0 || minimumOrder < 0) {
            throw new IllegalArgumentException("terms of " + name + " must not be negative");
        }
        long charge = NEVER;
        for (DeliveryOption way : ways.stream()
                .filter(w -> !w.fetched())
                .sorted(Comparator.comparingLong(DeliveryOption::fromValue))
                .toList()) {
            if (way.charge() > charge) {
                throw new IllegalArgumentException("delivery by " + name + " costs more from " + way.fromValue()
                        + " on than below; charges must not rise with the value");
            }
            charge = way.charge();
        }
    }

    /** One delivery charge, minor units, and a value of goods from which it is free; {@link #NEVER} for never. */
    public SupplierTerms(String name, BigDecimal taxPercent, long delivery, long freeOver, long minimumOrder) {
        this(name, taxPercent, minimumOrder, delivery(delivery, freeOver));
    }

    /** One charge, and delivery for nothing from a value on; {@link #NEVER} for never. */
    static List<DeliveryOption> delivery(long charge, long freeOver) {
        List<DeliveryOption> ways = new ArrayList<>();
        ways.add(DeliveryOption.delivered(0, charge));
        if (freeOver != NEVER) {
            ways.add(DeliveryOption.delivered(freeOver, 0));
        }
        return ways;
    }

    /** Terms of a supplier that has none: prices include tax, delivery is free. */
    public static SupplierTerms none(String name) {
        return new SupplierTerms(name, BigDecimal.ZERO, 0, NEVER, 0);
    }

    /** Numerator of (100 + tax) / 100 in lowest terms. */
    public BigInteger taxTop() {
        return ratio()[0];
    }

    /** Denominator of (100 + tax) / 100 in lowest terms. */
    public BigInteger taxBottom() {
        return ratio()[1];
    }

    private BigInteger[] ratio() {
        BigDecimal percent = taxPercent.scale() < 0 ? taxPercent.setScale(0) : taxPercent;
        BigInteger bottom = BigInteger.TEN.pow(percent.scale() + 2);
        BigInteger top = bottom.add(percent.unscaledValue());
        BigInteger common = top.gcd(bottom);
        return new BigInteger[] {top.divide(common), bottom.divide(common)};
    }
}

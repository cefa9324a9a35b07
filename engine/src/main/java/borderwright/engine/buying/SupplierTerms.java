package borderwright.engine.buying;

import java.math.BigDecimal;
import java.math.BigInteger;

/**
 * What a supplier charges beyond its prices.
 *
 * @param name the supplier's name
 * @param taxPercent tax added to goods and delivery, percent, not below 0; 0 where prices include it
 * @param delivery delivery charge as priced, minor units, 0 when free or collected
 * @param freeOver value of goods as priced from which delivery is free, minor units; {@link #NEVER} for never
 * @param minimumOrder least value of goods as priced, minor units, 0 for none
 */
public record SupplierTerms(String name, BigDecimal taxPercent, long delivery, long freeOver, long minimumOrder) {
    public static final long NEVER = Long.MAX_VALUE;

    public SupplierTerms {
        if (taxPercent.signum() < 0 || delivery < 0 || freeOver < 0 || minimumOrder < 0) {
            throw new IllegalArgumentException("terms of " + name + " must not be negative");
        }
    }

    /** Terms of a supplier that has none: prices include tax, delivery is free. */
    public static SupplierTerms none(String name) {
        return new SupplierTerms(name, BigDecimal.ZERO, 0, NEVER, 0);
    }

    /** Numerator of (100 + tax) / 100 in lowest terms. */
    BigInteger taxTop() {
        return ratio()[0];
    }

    /** Denominator of (100 + tax) / 100 in lowest terms. */
    BigInteger taxBottom() {
        return ratio()[1];
    }

    private BigInteger[] ratio() {
        BigDecimal percent = taxPercent.scale() < 0 ? taxPercent.setScale(0) : taxPercent;
        BigInteger bottom = BigInteger.TEN.pow(percent.scale() + 2);
        BigInteger top = bottom.add(percent.unscaledValue());
        BigInteger common = top.gcd(bottom);
        return new BigInteger[] {top.divide(common), bottom.divide(common)};
    }

    /** Delivery charge for goods of a value, as priced, minor units. */
    long deliveryFor(long goods) {
        return goods >= freeOver ? 0 : delivery;
    }
}

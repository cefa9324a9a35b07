package borderwright.engine.garden.vocabulary;

import borderwright.engine.measure.Length;

/**
 * A length as requested: one length, or {@code {from: 1.2 m, to: 2.4 m}}.
 *
 * @param from least length
 * @param to greatest length, not less than {@code from}; equal when one length was given
 */
public record LengthRange(Length from, Length to) {
    public LengthRange {
        if (to.compareTo(from) < 0) {
            throw new IllegalArgumentException("a range runs from the smaller to the greater length");
        }
    }

    public static LengthRange of(Length fixed) {
        return new LengthRange(fixed, fixed);
    }

    public boolean isFixed() {
        return from.equals(to);
    }
}

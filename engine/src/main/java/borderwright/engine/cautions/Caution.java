package borderwright.engine.cautions;

import java.util.Optional;

/**
 * A caution with its figures; the code says their meaning and unit.
 *
 * @param code what is to be careful of
 * @param place the thing and edge that it speaks of; empty for the whole garden
 * @param found what is so here, mm
 * @param limit what is compared with or kept, mm or kg
 */
public record Caution(CautionCode code, Optional<String> place, Optional<Double> found, Optional<Double> limit) {
    static Caution of(CautionCode code) {
        return new Caution(code, Optional.empty(), Optional.empty(), Optional.empty());
    }

    static Caution limited(CautionCode code, double limit) {
        return new Caution(code, Optional.empty(), Optional.empty(), Optional.of(limit));
    }
}

package borderwright.engine.strength.soil;

import borderwright.engine.garden.SoilSpec;
import borderwright.engine.garden.StrengthSpec;
import borderwright.engine.garden.vocabulary.ground.SoilPush;
import borderwright.engine.garden.vocabulary.ground.SoilWater;
import borderwright.engine.measure.Gravity;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What a planter is filled with, and how it pushes on the walls.
 *
 * @param moistKnPerM3 unit weight as it lies for good
 * @param saturatedKnPerM3 unit weight with its pores full of water
 * @param phi angle of friction, radians
 * @param push which coefficient turns weight into push
 * @param water how wet it comes to be
 * @param heapedMm how high it is heaped above its level surface, spread evenly
 * @param treadingKnPerM2 load on top while it is trodden in
 * @param belowRimMm how far its surface lies below the top of the wall
 * @param arching whether narrow fill may hang on its walls (Janssen); never the default
 */
public record Fill(
        double moistKnPerM3,
        double saturatedKnPerM3,
        double phi,
        SoilPush push,
        SoilWater water,
        double heapedMm,
        double treadingKnPerM2,
        double belowRimMm,
        boolean arching) {
    /** Water of 1000 kg/m3. */
    static final double WATER_KN_PER_M3 = 1000 * Gravity.KN_PER_KG;

    /** Friction between wall and fill over that of the fill, for arching only (common practice, no source). */
    private static final double WALL_FRICTION_SHARE = 2 / 3.0;

    private static final double MM_PER_M = 1000;

    public Fill {
        if (!(moistKnPerM3 > 0 && saturatedKnPerM3 >= moistKnPerM3 && phi > 0 && phi < StrictMath.PI / 3)) {
            throw new IllegalArgumentException(
                    "a fill weighs more than nothing, no less when wet, and its friction lies"
                            + " above 0 and below 60 degrees; got " + moistKnPerM3 + ", " + saturatedKnPerM3
                            + " kN/m3, "
                            + StrictMath.toDegrees(phi) + " degrees");
        }
    }

    /** Soil as it pushes on the walls. */
    public static Fill of(StrengthSpec.SoilLoad load, SoilSpec soil) {
        return Fill.builder()
                .moistKnPerM3(soil.moistKnPerM3())
                .saturatedKnPerM3(soil.soakedKnPerM3())
                .phi(load.frictionRad())
                .push(load.push())
                .water(load.water())
                .heapedMm(load.heapedMm())
                .treadingKnPerM2(load.treadingKnPerM2())
                .belowRimMm(soil.belowRimMm())
                .arching(load.arching())
                .build();
    }

    /** Coefficient of the push. */
    public double coefficient() {
        return push == SoilPush.AT_REST ? EarthCoefficient.atRest(phi) : EarthCoefficient.active(phi);
    }

    /** Pressure for good: moist, with what is heaped on it. */
    public PressureProfile lasting() {
        return PressureProfile.drained(coefficient(), moistKnPerM3, heapedKnPerM2(moistKnPerM3));
    }

    /** Pressure in the wettest state. */
    public PressureProfile wettest() {
        double k = coefficient();
        double none = Double.POSITIVE_INFINITY;
        return switch (water) {
            case MOIST -> lasting();
            case SOAKED -> PressureProfile.drained(k, saturatedKnPerM3, heapedKnPerM2(saturatedKnPerM3));
            case WATERLOGGED ->
                new PressureProfile(
                        k, moistKnPerM3, saturatedKnPerM3, 0, none, heapedKnPerM2(moistKnPerM3), WATER_KN_PER_M3);
            case FLOODED ->
                new PressureProfile(
                        k, moistKnPerM3, saturatedKnPerM3, 0, 0, heapedKnPerM2(moistKnPerM3), WATER_KN_PER_M3);
        };
    }

    /** Pressure of what is put on top while it is trodden in, without the fill's own. */
    public PressureProfile treading() {
        return PressureProfile.drained(coefficient(), 0, treadingKnPerM2);
    }

    /** How much more the fill can press back at a depth than it pushes, N/mm2 (Rankine's passive state, moist). */
    public double standsAgainst(double depthMm) {
        double more = EarthCoefficient.passive(phi) - coefficient();
        return more * moistKnPerM3 * depthMm / MM_PER_M / MM_PER_M;
    }

    /** What is left of the push at a depth between walls {@code widthMm} apart: 1 unless arching is counted on. */
    public double relief(double depthMm, double widthMm) {
        return arching
                ? new Janssen(widthMm / MM_PER_M, moistKnPerM3, coefficient(), WALL_FRICTION_SHARE * phi)
                        .relief(depthMm / MM_PER_M)
                : 1;
    }

    private double heapedKnPerM2(double weight) {
        return weight * heapedMm / MM_PER_M;
    }

    public static Builder builder() {
        return new Builder();
    }

    /** Sets the parts one by one; what may be left out has a value here. */
    public static final class Builder {
        private @Nullable Double moistKnPerM3;
        private @Nullable Double saturatedKnPerM3;
        private @Nullable Double phi;
        private @Nullable SoilPush push;
        private @Nullable SoilWater water;
        private @Nullable Double heapedMm;
        private @Nullable Double treadingKnPerM2;
        private @Nullable Double belowRimMm;
        private boolean arching;

        private Builder() {}

        public Builder moistKnPerM3(double set) {
            moistKnPerM3 = set;
            return this;
        }

        public Builder saturatedKnPerM3(double set) {
            saturatedKnPerM3 = set;
            return this;
        }

        public Builder phi(double set) {
            phi = set;
            return this;
        }

        public Builder push(SoilPush set) {
            push = set;
            return this;
        }

        public Builder water(SoilWater set) {
            water = set;
            return this;
        }

        public Builder heapedMm(double set) {
            heapedMm = set;
            return this;
        }

        public Builder treadingKnPerM2(double set) {
            treadingKnPerM2 = set;
            return this;
        }

        public Builder belowRimMm(double set) {
            belowRimMm = set;
            return this;
        }

        public Builder arching(boolean set) {
            arching = set;
            return this;
        }

        /**
         * With all that was set.
         *
         * @throws NullPointerException where a part without a value is missing; its name is the message
         */
        public Fill build() {
            return new Fill(
                    Objects.requireNonNull(moistKnPerM3, "moistKnPerM3"),
                    Objects.requireNonNull(saturatedKnPerM3, "saturatedKnPerM3"),
                    Objects.requireNonNull(phi, "phi"),
                    Objects.requireNonNull(push, "push"),
                    Objects.requireNonNull(water, "water"),
                    Objects.requireNonNull(heapedMm, "heapedMm"),
                    Objects.requireNonNull(treadingKnPerM2, "treadingKnPerM2"),
                    Objects.requireNonNull(belowRimMm, "belowRimMm"),
                    arching);
        }
    }
}

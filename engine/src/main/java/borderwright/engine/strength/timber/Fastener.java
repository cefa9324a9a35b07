package borderwright.engine.strength.timber;

import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A screw or nail.
 *
 * @param kind what it is
 * @param diameterMm outer thread diameter of a screw, shank of a nail
 * @param rootMm thread root of a screw; the shank of a nail
 * @param lengthMm whole length
 * @param threadMm length of the thread from the point; of a ringed nail, of its rings
 * @param headMm diameter of the head
 * @param fuNPerMm2 tensile strength of its wire
 * @param predrilled whether holes are drilled
 * @param pull what a screw bears when it is pulled; nothing for a nail
 */
public record Fastener(
        Kind kind,
        double diameterMm,
        double rootMm,
        double lengthMm,
        double threadMm,
        double headMm,
        double fuNPerMm2,
        boolean predrilled,
        Optional<ScrewPull> pull) {
    public Fastener {
        if (!(diameterMm > 0 && rootMm > 0 && rootMm <= diameterMm && lengthMm > 0)) {
            throw new IllegalArgumentException("a fastener's diameter, root and length are above 0, got " + diameterMm
                    + ", " + rootMm + ", " + lengthMm + " mm");
        }
        if (pull.isPresent() != (kind == Kind.SCREW)) {
            throw new IllegalArgumentException(
                    "a screw, and no nail, has figures for its pull; got " + kind + ", " + pull);
        }
    }

    /** What a fastener is. */
    public enum Kind {
        SCREW,
        SMOOTH_NAIL,
        RINGED_NAIL
    }

    /**
     * A countersunk wood screw of which only diameter and length are known: root 0.64 d, head 2 d, thread on 0.6 of its
     * length, 600 N/mm2, predrilled (careful defaults, common practice, no source).
     */
    public static Fastener screw(double diameterMm, double lengthMm, ScrewPull pull) {
        return Fastener.builder()
                .kind(Kind.SCREW)
                .diameterMm(diameterMm)
                .rootMm(0.64 * diameterMm)
                .lengthMm(lengthMm)
                .threadMm(0.6 * lengthMm)
                .headMm(2 * diameterMm)
                .fuNPerMm2(600)
                .predrilled(true)
                .pull(pull)
                .build();
    }

    /** A smooth round wire nail, head 2 d, 600 N/mm2, not predrilled. */
    public static Fastener smoothNail(double diameterMm, double lengthMm) {
        return Fastener.builder()
                .kind(Kind.SMOOTH_NAIL)
                .diameterMm(diameterMm)
                .rootMm(diameterMm)
                .lengthMm(lengthMm)
                .threadMm(0)
                .headMm(2 * diameterMm)
                .fuNPerMm2(600)
                .build();
    }

    public boolean isScrew() {
        return kind == Kind.SCREW;
    }

    /** Diameter for the yield formulas: 1.1 root of a screw with its thread in the joint (8.7.1(3)), else the shank. */
    public double effectiveMm() {
        return isScrew() ? Math.min(diameterMm, 1.1 * rootMm) : diameterMm;
    }

    /** Embedment strength of a timber round it, with the diameter that bears: EN 1995-1-1 eq. 8.15, 8.16, N/mm2. */
    public double embedment(double rhoK, double dMm) {
        return predrilled ? Johansen.embedmentPredrilled(rhoK, dMm) : Johansen.embedment(rhoK, dMm);
    }

    /** How far it stands in the second timber when driven flush through the first. */
    public double penetrationMm(double fixedMm) {
        return Math.max(0, lengthMm - fixedMm);
    }

    public static Builder builder() {
        return new Builder();
    }

    /** Sets the parts one by one; what may be left out has a value here. */
    public static final class Builder {
        private @Nullable Kind kind;
        private @Nullable Double diameterMm;
        private @Nullable Double rootMm;
        private @Nullable Double lengthMm;
        private @Nullable Double threadMm;
        private @Nullable Double headMm;
        private @Nullable Double fuNPerMm2;
        private boolean predrilled;
        private @Nullable ScrewPull pull;

        private Builder() {}

        public Builder kind(Kind set) {
            kind = set;
            return this;
        }

        public Builder diameterMm(double set) {
            diameterMm = set;
            return this;
        }

        public Builder rootMm(double set) {
            rootMm = set;
            return this;
        }

        public Builder lengthMm(double set) {
            lengthMm = set;
            return this;
        }

        public Builder threadMm(double set) {
            threadMm = set;
            return this;
        }

        public Builder headMm(double set) {
            headMm = set;
            return this;
        }

        public Builder fuNPerMm2(double set) {
            fuNPerMm2 = set;
            return this;
        }

        public Builder predrilled(boolean set) {
            predrilled = set;
            return this;
        }

        public Builder pull(ScrewPull set) {
            pull = set;
            return this;
        }

        /**
         * With all that was set.
         *
         * @throws NullPointerException where a part without a value is missing; its name is the message
         */
        public Fastener build() {
            return new Fastener(
                    Objects.requireNonNull(kind, "kind"),
                    Objects.requireNonNull(diameterMm, "diameterMm"),
                    Objects.requireNonNull(rootMm, "rootMm"),
                    Objects.requireNonNull(lengthMm, "lengthMm"),
                    Objects.requireNonNull(threadMm, "threadMm"),
                    Objects.requireNonNull(headMm, "headMm"),
                    Objects.requireNonNull(fuNPerMm2, "fuNPerMm2"),
                    predrilled,
                    Optional.ofNullable(pull));
        }
    }
}

package borderwright.engine.strength.timber;

import borderwright.engine.strength.worked.StepMessage;

/**
 * What a screw bears when it is pulled, in timber of {@link #RHO_KG_PER_M3}.
 *
 * @param withdrawal parameter fax,k of its thread; where a formula covers the diameter, that goes before it
 * @param headPullThrough parameter fhead,k of its head
 */
public record ScrewPull(Figure withdrawal, Figure headPullThrough) {
    /** Density for which the figures hold (from memory of approvals). */
    public static final double RHO_KG_PER_M3 = 350;

    /**
     * A figure and where it comes from.
     *
     * @param nPerMm2 characteristic value, N/mm2
     * @param source for the sheet
     */
    public record Figure(double nPerMm2, StepMessage source) {
        public static Figure declared(double nPerMm2) {
            return new Figure(nPerMm2, StepMessage.DECLARED);
        }

        /** Where none is declared. */
        public static Figure careful(double nPerMm2) {
            return new Figure(nPerMm2, StepMessage.CAREFUL_DEFAULT);
        }
    }
}

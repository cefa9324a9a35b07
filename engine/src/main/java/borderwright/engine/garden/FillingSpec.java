package borderwright.engine.garden;

import borderwright.engine.garden.vocabulary.BoardSurface;
import borderwright.engine.measure.Length;
import java.util.List;
import java.util.Optional;

/**
 * What goes into the planters, from the bottom up, and what lines and protects them.
 *
 * @param mix what the soil is mixed from, at least one part
 * @param coarseLayer a coarse layer at the bottom, if there is one
 * @param drainageMm gravel at the bottom; 0 for none
 * @param reused share of the earth dug that goes into the planters, as a fraction
 * @param narrowestWayIn the narrowest passage on the way, if it is given
 * @param liner inside the walls, if there is one
 * @param finish on the outer faces, if there is one
 */
public record FillingSpec(
        List<MixPart> mix,
        Optional<CoarseLayer> coarseLayer,
        double drainageMm,
        double reused,
        Optional<Length> narrowestWayIn,
        Optional<LinerSpec> liner,
        Optional<FinishSpec> finish) {
    public FillingSpec {
        mix = List.copyOf(mix);
    }

    /** Depth of the coarse layer, mm; 0 for none. */
    public double baseMm() {
        return coarseLayer.map(CoarseLayer::depth).map(Length::mm).orElse(0.0);
    }

    /** One part of the mix: an item of the price lists and its parts by volume. */
    public record MixPart(String item, double parts) {}

    /** Where a layer comes from. */
    public enum LayerSource {
        BOUGHT,
        AT_HAND
    }

    /** A coarse layer at the bottom: an item of the price lists, its depth, and where it comes from. */
    public record CoarseLayer(String item, Length depth, LayerSource source) {
        /** Whether it need not be bought. */
        public boolean isAtHand() {
            return source == LayerSource.AT_HAND;
        }
    }

    /** A liner from rolls, and the distance between its staples. */
    public record LinerSpec(double widthMm, double lengthMm, double staplesMm) {}

    /**
     * A finish.
     *
     * @param coats how many
     * @param roughM2PerLitre what it covers on rough boards
     * @param planedM2PerLitre what it covers on planed ones
     */
    public record FinishSpec(int coats, double roughM2PerLitre, double planedM2PerLitre) {
        /** What a litre covers in one coat, m2. */
        public double m2PerLitre(BoardSurface surface) {
            return surface == BoardSurface.PLANED ? planedM2PerLitre : roughM2PerLitre;
        }
    }
}

package borderwright.engine.garden;

import borderwright.engine.garden.vocabulary.ground.DugSoil;
import borderwright.engine.garden.vocabulary.ground.GravelBed;
import borderwright.engine.garden.vocabulary.ground.GroundSurface;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the planters stand on, and how the ground is made ready for them.
 *
 * @param surface what lies there now
 * @param dig what is dug and where it goes
 * @param gravel the bed
 * @param membrane the sheet in the dug bed, if one is laid
 * @param feet under planters on hard ground
 * @param loadLimit greatest load of a roof, kN/m2, where units are imperial lb/sq ft; nothing where none is given
 * @param keepClearOf what has to be kept clear of
 */
public record GroundSpec(
        GroundSurface surface,
        DigSpec dig,
        GravelSpec gravel,
        Optional<MembraneSpec> membrane,
        FeetSpec feet,
        OptionalDouble loadLimit,
        List<NearbyThing> keepClearOf) {
    public GroundSpec {
        keepClearOf = List.copyOf(keepClearOf);
    }

    /**
     * What is dug.
     *
     * @param kind it decides how far the spoil swells and what it weighs
     * @param turfMm turf to strip; 0 where there is no lawn
     * @param barrowLitres in a barrow, heaped as it is pushed
     * @param skipM3 in one skip; nothing where spoil stays in the garden
     */
    public record DigSpec(DugSoil kind, double turfMm, double barrowLitres, OptionalDouble skipM3) {}

    /**
     * The gravel bed.
     *
     * @param bed where gravel goes
     * @param lowMm depth under low walls, compacted
     * @param tallMm depth under walls higher than {@code tallFromMm}, compacted
     * @param tallFromMm height from which a wall is tall
     * @param beyondMm how far it reaches beyond the walls
     * @param looseFactor loose volume over compacted
     */
    public record GravelSpec(
            GravelBed bed, double lowMm, double tallMm, double tallFromMm, double beyondMm, double looseFactor) {}

    /**
     * A sheet in the dug bed.
     *
     * @param widthMm of a roll
     * @param lengthMm of a roll
     * @param overlapMm of strips
     * @param pinsMm between pins along edges and seams
     */
    public record MembraneSpec(double widthMm, double lengthMm, double overlapMm, double pinsMm) {}

    /**
     * Feet under planters on hard ground.
     *
     * @param lowestMm least height of one
     * @param spacingMm greatest distance between them
     */
    public record FeetSpec(double lowestMm, double spacingMm) {}

    /** Whether nothing can be dug there. */
    public boolean isHard() {
        return surface.isHard();
    }

    public DugSoil kind() {
        return dig.kind();
    }

    public GravelBed bed() {
        return gravel.bed();
    }

    /** Turf to strip, mm; 0 where there is no lawn. */
    public double turfMm() {
        return dig.turfMm();
    }

    /** Compacted depth of gravel under a wall of that height, mm; 0 where no gravel is laid. */
    public double gravelMm(double wallMm) {
        if (gravel.bed() == GravelBed.NONE) {
            return 0;
        }
        return wallMm > gravel.tallFromMm() ? gravel.tallMm() : gravel.lowMm();
    }
}

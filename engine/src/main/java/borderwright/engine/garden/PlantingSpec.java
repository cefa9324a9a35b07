package borderwright.engine.garden;

import borderwright.engine.garden.vocabulary.Crop;
import borderwright.engine.garden.vocabulary.GardenerPosture;
import borderwright.engine.measure.Angle;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What is to grow, who tends it, and where the sun comes from.
 *
 * @param crops to compare with the depth of soil
 * @param gardener how the gardener works
 * @param sun where the sun comes from; nothing where latitude or bearing is not given
 */
public record PlantingSpec(List<Crop> crops, GardenerPosture gardener, Optional<SunSpec> sun) {
    public PlantingSpec {
        crops = List.copyOf(crops);
    }

    /**
     * Where the sun comes from, and when.
     *
     * @param latitudeDeg negative in the south
     * @param bearing compass bearing from the border's first corner to its second
     * @param seasonFrom first day of the season
     * @param seasonTo last day of the season
     */
    public record SunSpec(double latitudeDeg, Angle bearing, LocalDate seasonFrom, LocalDate seasonTo) {}
}

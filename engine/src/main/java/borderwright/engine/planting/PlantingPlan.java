package borderwright.engine.planting;

import borderwright.engine.message.Message;
import java.util.List;

/**
 * What can grow where.
 *
 * @param depths crops by depth of soil, shallowest first
 * @param sun hours of sun planter by planter; empty where latitude or direction is not given
 * @param rims heights of each box as built, and how its rim suits the gardener
 * @param offRequest rims that do not come out as requested, or do not suit the gardener given
 * @param notes what else a person should know
 */
public record PlantingPlan(
        List<Depth> depths, List<Sun> sun, List<RimHeight> rims, List<Message> offRequest, List<Message> notes) {
    public PlantingPlan {
        depths = List.copyOf(depths);
        sun = List.copyOf(sun);
        rims = List.copyOf(rims);
        offRequest = List.copyOf(offRequest);
        notes = List.copyOf(notes);
    }

    /**
     * Planters with one depth of soil.
     *
     * @param planters their names
     * @param soilMm depth of soil, whole mm
     * @param crops each crop given
     */
    public record Depth(List<String> planters, double soilMm, List<CropFit> crops) {
        public Depth {
            planters = List.copyOf(planters);
            crops = List.copyOf(crops);
        }
    }

    /**
     * Hours of possible sun, clouds not counted.
     *
     * @param planter its name
     * @param meanHours a day, over the season
     * @param months month by month
     */
    public record Sun(String planter, double meanHours, List<Month> months) {
        /** Six hours and more (common practice, no source). */
        private static final double FULL = 6;

        private static final double PART = 3;

        public Sun {
            months = List.copyOf(months);
        }

        public Exposure exposure() {
            return meanHours >= FULL ? Exposure.FULL_SUN : meanHours >= PART ? Exposure.PART_SHADE : Exposure.SHADE;
        }

        /** The exposure in words. */
        public Message inWords() {
            return PlantingMessage.SUN_EXPOSURE.of(exposure());
        }
    }

    /** How a planter stands in the sun. */
    public enum Exposure {
        FULL_SUN,
        PART_SHADE,
        SHADE
    }

    /**
     * One month.
     *
     * @param month 1 for January
     * @param hours a day, mean
     */
    public record Month(int month, double hours) {}
}

package borderwright.engine.planting;

import borderwright.engine.garden.vocabulary.Crop;

/**
 * A crop in the table.
 *
 * @param zrLowMm smaller rooting depth in open ground, mm (Allen et al. 1998, FAO-56 table 22)
 * @param zrHighMm greater rooting depth there, mm
 * @param p share of the water that it takes up without stress, at 5 mm a day (the same table)
 * @param leastMm least depth of good, watered soil in a box, mm (extension guidance and common practice)
 */
public record CropTable(double zrLowMm, double zrHighMm, double p, double leastMm) {
    /** Leaves, bulbs, berries: 8 in. Most: 12 in. Deep roots and tomatoes: 18 in (extension guidance, from memory). */
    private static final double SHALLOW_MM = 200;

    private static final double MOST_MM = 300;
    private static final double DEEP_MM = 450;

    public static CropTable of(Crop crop) {
        return switch (crop) {
            case BROCCOLI, BRUSSELS_SPROUTS -> row(0.4, 0.6, 0.45, MOST_MM);
            case CABBAGE -> row(0.5, 0.8, 0.45, MOST_MM);
            case CARROTS -> row(0.5, 1.0, 0.35, MOST_MM);
            case CAULIFLOWER -> row(0.4, 0.7, 0.45, MOST_MM);
            case CELERY -> row(0.3, 0.5, 0.20, SHALLOW_MM);
            case GARLIC, LETTUCE, RADISHES -> row(0.3, 0.5, 0.30, SHALLOW_MM);
            case ONIONS, SPRING_ONIONS -> row(0.3, 0.6, 0.30, SHALLOW_MM);
            case SPINACH -> row(0.3, 0.5, 0.20, SHALLOW_MM);
            case AUBERGINE -> row(0.7, 1.2, 0.45, DEEP_MM);
            case SWEET_PEPPERS -> row(0.5, 1.0, 0.30, MOST_MM);
            case TOMATO -> row(0.7, 1.5, 0.40, DEEP_MM);
            case CUCUMBER -> row(0.7, 1.2, 0.50, MOST_MM);
            case WINTER_SQUASH -> row(1.0, 1.5, 0.35, DEEP_MM);
            case COURGETTE -> row(0.6, 1.0, 0.50, MOST_MM);
            case MELON -> row(0.8, 1.5, 0.40, DEEP_MM);
            case BEETROOT -> row(0.6, 1.0, 0.50, MOST_MM);
            case PARSNIP -> row(0.5, 1.0, 0.40, DEEP_MM);
            case POTATO -> row(0.4, 0.6, 0.35, MOST_MM);
            case SWEET_POTATO -> row(1.0, 1.5, 0.65, DEEP_MM);
            case TURNIP -> row(0.5, 1.0, 0.50, MOST_MM);
            case GREEN_BEANS, BROAD_BEANS -> row(0.5, 0.7, 0.45, MOST_MM);
            case DRY_BEANS -> row(0.6, 0.9, 0.45, MOST_MM);
            case PEAS -> row(0.6, 1.0, 0.35, MOST_MM);
            case ARTICHOKES -> row(0.6, 0.9, 0.45, DEEP_MM);
            case ASPARAGUS -> row(1.2, 1.8, 0.45, DEEP_MM);
            case MINT -> row(0.4, 0.8, 0.40, SHALLOW_MM);
            case STRAWBERRIES -> row(0.2, 0.3, 0.20, SHALLOW_MM);
            case SUNFLOWER -> row(0.8, 1.5, 0.45, DEEP_MM);
            case SWEET_CORN -> row(0.8, 1.2, 0.50, DEEP_MM);
            case BERRY_BUSHES -> row(0.6, 1.2, 0.50, DEEP_MM);
        };
    }

    private static CropTable row(double zrLowM, double zrHighM, double p, double leastMm) {
        return new CropTable(zrLowM * 1000, zrHighM * 1000, p, leastMm);
    }
}

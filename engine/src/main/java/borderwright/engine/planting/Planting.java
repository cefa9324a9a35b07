package borderwright.engine.planting;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.filling.FillPlan;
import borderwright.engine.filling.SoilVolume;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.PlantingSpec;
import borderwright.engine.garden.PlantingSpec.SunSpec;
import borderwright.engine.garden.SurveySpec.EdgeSpec;
import borderwright.engine.garden.vocabulary.GardenerPosture;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.geometry.Segment;
import borderwright.engine.ground.GroundPlan;
import borderwright.engine.message.Message;
import borderwright.engine.survey.Outline;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** From boxes as filled to what can grow in them: the one question that this stage answers. */
public final class Planting {
    private final Garden garden;
    private final PlantingSpec spec;

    private Planting(Garden garden) {
        this.garden = garden;
        this.spec = garden.planting();
    }

    /**
     * What can grow in a garden's planters.
     *
     * @param garden what was given of crops, gardener, sun and edges
     * @param outline the border as adjusted
     * @param boxes as built up
     * @param ground made ready for the same boxes
     * @param filling what fills them
     */
    public static PlantingPlan plan(
            Garden garden, Outline outline, List<Box> boxes, GroundPlan ground, FillPlan filling) {
        Planting planting = new Planting(garden);
        List<Message> notes = new ArrayList<>();
        List<PlantingPlan.Depth> depths = planting.depths(filling.planters(), notes);
        List<RimHeight> rims = planting.rims(boxes, ground, filling);
        return new PlantingPlan(
                depths, planting.sun(outline, boxes, filling, notes), rims, planting.offRequest(rims), notes);
    }

    private List<PlantingPlan.Depth> depths(List<SoilVolume> planters, List<Message> notes) {
        Map<Long, List<String>> byDepth = new TreeMap<>();
        planters.forEach(p -> byDepth.computeIfAbsent(Math.round(p.depthMm()), d -> new ArrayList<>())
                .add(p.planter()));
        List<PlantingPlan.Depth> depths = new ArrayList<>();
        byDepth.forEach((depth, names) -> {
            List<CropFit> fits =
                    spec.crops().stream().map(crop -> CropFit.of(crop, depth)).toList();
            depths.add(new PlantingPlan.Depth(names, depth, fits));
            List<Message> shallow = fits.stream()
                    .filter(f -> f.verdict() == CropFit.Verdict.TOO_SHALLOW)
                    .map(f -> PlantingMessage.CROP_NEEDS.of(f.name(), f.table().leastMm()))
                    .toList();
            if (!shallow.isEmpty()) {
                notes.add(PlantingMessage.SOIL_SHALLOW_FOR_CROPS.of(depth, shallow));
            }
        });
        return depths;
    }

    private List<RimHeight> rims(List<Box> boxes, GroundPlan ground, FillPlan filling) {
        double[] range = range(spec.gardener());
        List<RimHeight> rims = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            String name = boxes.get(i).plan().name();
            double soilMm = filling.planters().stream()
                    .filter(planter -> planter.box().equals(name))
                    .mapToDouble(SoilVolume::depthMm)
                    .max()
                    .orElse(0);
            rims.add(RimHeight.of(boxes.get(i), ground.boxes().get(i), soilMm, range[0], range[1]));
        }
        return rims;
    }

    private List<Message> offRequest(List<RimHeight> rims) {
        List<Message> off = new ArrayList<>();
        RimHeight.together(rims.stream().filter(RimHeight::isOffRequest).toList())
                .forEach(r -> off.add(PlantingMessage.RIMS_OFF_REQUEST.of(
                        r.boxes().size(), r.rim().inWords(), r.requestedMm(), r.wallMm())));
        List<RimHeight> unsuited = rims.stream().filter(r -> !r.suits()).toList();
        if (!unsuited.isEmpty() && garden.origins().isGiven("planting.gardener")) {
            off.add(unsuited(unsuited, rims.size()));
        }
        return off;
    }

    private Message unsuited(List<RimHeight> unsuited, int of) {
        double[] range = range(spec.gardener());
        double requested = unsuited.get(0).requestedMm();
        boolean asked = unsuited.stream().allMatch(r -> r.requestedMm() == requested)
                && (requested < range[0] || requested > range[1]);
        if (asked) {
            return PlantingMessage.REQUESTED_RIM_DOES_NOT_SUIT.of(requested, range[0], range[1], spec.gardener());
        }
        return unsuited.size() == of
                ? PlantingMessage.NO_RIM_SUITS.of(unsuited.size(), range[0], range[1], spec.gardener())
                : PlantingMessage.RIMS_DO_NOT_SUIT.of(unsuited.size(), of, range[0], range[1], spec.gardener());
    }

    /** Rim heights that suit, mm: 24 to 34 in seated, about 36 in standing (accessible-gardening pages); kneeling any lower. */
    private static double[] range(GardenerPosture gardener) {
        return switch (gardener) {
            case SEATED -> new double[] {610, 865};
            case STANDING -> new double[] {600, 1000};
            case KNEELING -> new double[] {0, 600};
        };
    }

    private List<PlantingPlan.Sun> sun(Outline outline, List<Box> boxes, FillPlan filling, List<Message> notes) {
        Optional<Segment> first = outline.between(
                garden.survey().corners().get(0), garden.survey().corners().get(1));
        if (spec.sun().isEmpty() || first.isEmpty()) {
            if (garden.origins().isGiven("planting")) {
                notes.add(PlantingMessage.SUN_NOT_SHOWN.of());
            }
            return List.of();
        }
        SunSpec season = spec.sun().get();
        Point along = first.get().to().minus(first.get().from());
        double north =
                StrictMath.atan2(along.yMm(), along.xMm()) + season.bearing().radians();
        SunHours sun = new SunHours(season.latitudeDeg(), north, walls(outline));
        List<SunHours.Day> days = SunHours.days(season.seasonFrom(), season.seasonTo()).stream()
                .map(sun::day)
                .toList();
        List<PlantingPlan.Sun> rows = new ArrayList<>();
        int planter = 0;
        for (Box box : boxes) {
            for (Ring inside : box.inside()) {
                SoilVolume soil = filling.planters().get(planter++);
                double level = box.plan().bedMm() + box.plan().platformMm() + soil.depthMm();
                rows.add(row(soil.planter(), sun, days, inside, level));
            }
        }
        return rows;
    }

    private static PlantingPlan.Sun row(
            String planter, SunHours sun, List<SunHours.Day> days, Ring inside, double levelMm) {
        Point middle = middle(inside);
        Map<Integer, List<Double>> byMonth = new TreeMap<>();
        double sum = 0;
        for (SunHours.Day day : days) {
            double hours = sun.hours(day, middle, levelMm);
            sum += hours;
            byMonth.computeIfAbsent(day.date().getYear() * 12 + day.date().getMonthValue() - 1, m -> new ArrayList<>())
                    .add(hours);
        }
        List<PlantingPlan.Month> months = new ArrayList<>();
        byMonth.forEach((month, hours) -> months.add(new PlantingPlan.Month(
                month % 12 + 1,
                hours.stream().mapToDouble(Double::doubleValue).average().orElse(0))));
        return new PlantingPlan.Sun(planter, sum / days.size(), months);
    }

    private static Point middle(Ring ring) {
        org.locationtech.jts.geom.Point inside = ring.toJts().getInteriorPoint();
        org.locationtech.jts.geom.Point centre = ring.toJts().getCentroid();
        Point middle = new Point(centre.getX(), centre.getY());
        return ring.contains(middle, 0) ? middle : new Point(inside.getX(), inside.getY());
    }

    /** Every edge that is higher than the ground, its foot at the ground's level at its middle. */
    private List<SunHours.Wall> walls(Outline outline) {
        List<SunHours.Wall> walls = new ArrayList<>();
        for (EdgeSpec note : garden.survey().edges()) {
            Optional<Segment> line =
                    outline.between(note.edge().first(), note.edge().last());
            double height = note.height().mm();
            if (line.isPresent() && height > 0) {
                walls.add(new SunHours.Wall(
                        line.get(), outline.ground().heightMm(line.get().middle()) + height));
            }
        }
        return walls;
    }
}

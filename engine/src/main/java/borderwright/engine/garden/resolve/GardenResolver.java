package borderwright.engine.garden.resolve;

import borderwright.engine.garden.BuildSpec;
import borderwright.engine.garden.FillingSpec;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.GroundSpec;
import borderwright.engine.garden.Measure;
import borderwright.engine.garden.NearbyThing;
import borderwright.engine.garden.RunSpec;
import borderwright.engine.garden.SoilSpec;
import borderwright.engine.garden.SurveySpec;
import borderwright.engine.garden.given.GivenBuild;
import borderwright.engine.garden.given.GivenGarden;
import borderwright.engine.garden.given.GivenMeasure;
import borderwright.engine.garden.given.GivenNearby;
import borderwright.engine.garden.given.GivenRun;
import borderwright.engine.garden.given.GivenSurvey;
import borderwright.engine.measure.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;

/** Turns what a garden document gives into the garden that every later stage takes. */
public final class GardenResolver {
    private GardenResolver() {}

    /**
     * The garden of a document.
     *
     * @param given its names found, its currency known
     */
    public static Garden resolve(GivenGarden given) {
        Ledger ledger = Ledger.empty();
        UnitSystem units = ledger.or("units", given.units(), UnitSystem.METRIC, "the SI");
        GroundSpec ground = GroundResolver.resolve(given.ground(), ledger);
        Garden.Design design = new Garden.Design(
                given.runs().stream().map(GardenResolver::runSpec).toList(),
                buildSpec(given.build()),
                each("sections", given.sections(), WoodResolver::section, ledger),
                StrengthResolver.resolve(given.strength(), ground, units, ledger),
                PlantingResolver.resolve(given.planting(), ledger));
        SoilSpec soil = SoilResolver.resolve(given.soil(), given.strength(), given.filling(), ledger);
        FillingSpec filling = FillingResolver.resolve(given.filling(), ledger);
        SurveySpec survey = surveySpec(given.survey());
        Garden.Supply supply = supply(given, ledger);
        Garden.Workshop workshop = workshop(given, ledger);
        return new Garden(
                heading(given, units),
                survey,
                design,
                supply,
                workshop,
                new Garden.Site(soil, ground, filling),
                ledger.origins());
    }

    private static Garden.Heading heading(GivenGarden given, UnitSystem units) {
        return new Garden.Heading(
                given.name(),
                Optional.ofNullable(given.about()),
                units,
                CurrencyUnit.of(given.currency()),
                Optional.ofNullable(given.budget()));
    }

    private static Garden.Supply supply(GivenGarden given, Ledger ledger) {
        return new Garden.Supply(
                each("suppliers", given.suppliers(), SupplierResolver::supplier, ledger),
                each("owned", given.owned(), SupplyResolver::owned, ledger),
                each("substitutes", given.substitutes(), SupplyResolver::substitute, ledger),
                Optional.ofNullable(given.received()).map(received -> SupplyResolver.receipt(received, ledger)));
    }

    private static Garden.Workshop workshop(GivenGarden given, Ledger ledger) {
        return new Garden.Workshop(
                each("saws", given.saws(), WoodResolver::saw, ledger),
                WoodResolver.cutting(given.cutting(), ledger),
                WorkResolver.resolve(given.days(), ledger),
                Optional.ofNullable(given.firstPlanter()).map(SupplyResolver::firstPlanter));
    }

    private static <G, R> List<R> each(
            String key, List<G> given, BiFunction<? super G, Ledger, ? extends R> resolved, Ledger ledger) {
        List<R> all = new ArrayList<>();
        for (int i = 0; i < given.size(); i++) {
            all.add(resolved.apply(given.get(i), ledger.in(key + "[" + i + "]", given.get(i))));
        }
        return all;
    }

    public static RunSpec runSpec(GivenRun g) {
        return new RunSpec(
                g.name(),
                g.along(),
                g.planters(),
                g.length(),
                g.frontToBack(),
                g.height(),
                g.join(),
                g.between(),
                g.startGap(),
                g.endGap(),
                g.backGap(),
                g.turn(),
                g.otherTurns().stream().map(GardenResolver::cornerSpec).toList(),
                g.slope(),
                g.reach(),
                g.offTheCurve(),
                g.falseFloor(),
                g.capping(),
                orNull(g.rows(), GardenResolver::rows));
    }

    static RunSpec.Rows rows(GivenRun.GivenRows g) {
        return new RunSpec.Rows(g.startsAt(), g.count(), g.paths());
    }

    static RunSpec.CornerSpec cornerSpec(GivenRun.GivenCorner g) {
        return new RunSpec.CornerSpec(g.corner(), g.turn());
    }

    public static BuildSpec buildSpec(GivenBuild g) {
        return new BuildSpec(
                g.walls(),
                g.braces(),
                g.posts(),
                g.ties(),
                g.dividers(),
                g.capping(),
                g.bearers(),
                g.slats(),
                g.cornerJoint(),
                g.braceSpacing(),
                g.tieSpacing(),
                g.slatGap(),
                g.bearerSpacing(),
                g.cappingOverhang(),
                g.faceOut(),
                orNull(g.screws(), GardenResolver::screwSize),
                g.postFooting());
    }

    static BuildSpec.ScrewSize screwSize(GivenBuild.GivenScrew g) {
        return new BuildSpec.ScrewSize(g.diameter(), g.length());
    }

    public static SurveySpec surveySpec(GivenSurvey g) {
        return new SurveySpec(
                g.corners(),
                g.goingRound(),
                g.stripWidth(),
                g.edges().stream().map(GardenResolver::edgeSpec).toList(),
                g.measures().stream().map(GardenResolver::measure).toList(),
                g.falseAlarm());
    }

    static SurveySpec.EdgeSpec edgeSpec(GivenSurvey.GivenEdge g) {
        return new SurveySpec.EdgeSpec(g.edge(), g.kind(), g.gap(), g.dampCourse(), g.height());
    }

    static Measure.TapeLength tapeLength(GivenMeasure.GivenTapeLength g) {
        return new Measure.TapeLength(g.tape(), g.reads(), g.held(), g.giveOrTake(), g.with());
    }

    static Measure.GaugeAngle gaugeAngle(GivenMeasure.GivenGaugeAngle g) {
        return new Measure.GaugeAngle(g.angle(), g.reads(), g.giveOrTake(), g.with());
    }

    static Measure.BaselineOffset baselineOffset(GivenMeasure.GivenBaselineOffset g) {
        return new Measure.BaselineOffset(
                g.offset(), g.baseline(), g.along(), g.reads(), g.side(), g.giveOrTake(), g.with());
    }

    static Measure.TapeChain tapeChain(GivenMeasure.GivenTapeChain g) {
        return new Measure.TapeChain(g.chain(), g.lengths(), g.giveOrTake(), g.straight(), g.with());
    }

    static Measure.LevelReading levelReading(GivenMeasure.GivenLevelReading g) {
        return new Measure.LevelReading(g.level(), g.reads(), g.giveOrTake(), g.with());
    }

    static Measure.Rise rise(GivenMeasure.GivenRise g) {
        return new Measure.Rise(g.rise(), g.reads(), g.giveOrTake(), g.with());
    }

    static Measure.WallLean wallLean(GivenMeasure.GivenWallLean g) {
        return new Measure.WallLean(g.lean(), g.top(), g.bottom(), g.giveOrTake(), g.with());
    }

    static Measure.ArcRise arcRise(GivenMeasure.GivenArcRise g) {
        return new Measure.ArcRise(g.arc(), g.reads(), g.bulges(), g.giveOrTake(), g.with());
    }

    public static NearbyThing nearbyThing(GivenNearby g) {
        return new NearbyThing(
                g.what(),
                g.edge(),
                g.along(),
                g.endsAt(),
                g.inFromEdge(),
                g.inAtEnd(),
                g.trunk(),
                g.girth(),
                g.depth(),
                g.bottom());
    }

    static Measure measure(GivenMeasure measure) {
        if (measure instanceof GivenMeasure.GivenTapeLength g) {
            return tapeLength(g);
        }
        if (measure instanceof GivenMeasure.GivenGaugeAngle g) {
            return gaugeAngle(g);
        }
        if (measure instanceof GivenMeasure.GivenBaselineOffset g) {
            return baselineOffset(g);
        }
        if (measure instanceof GivenMeasure.GivenTapeChain g) {
            return tapeChain(g);
        }
        if (measure instanceof GivenMeasure.GivenLevelReading g) {
            return levelReading(g);
        }
        if (measure instanceof GivenMeasure.GivenRise g) {
            return rise(g);
        }
        if (measure instanceof GivenMeasure.GivenWallLean g) {
            return wallLean(g);
        }
        if (measure instanceof GivenMeasure.GivenArcRise g) {
            return arcRise(g);
        }
        throw new IllegalArgumentException("unknown kind of measure: " + measure);
    }

    private static <G, R> @Nullable R orNull(@Nullable G given, Function<G, R> resolved) {
        return given == null ? null : resolved.apply(given);
    }
}

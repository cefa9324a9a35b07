package borderwright.engine.garden;

import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;

/** All that a person said about one garden border. */
@Described("all that a person says about one garden border")
public record Garden(
        @Described(value = "name of the garden", example = "Fence to shed")
        String name,

        @Described("a few words about it; say here when it is invented") @Nullable
        String about,

        @Described(value = "how lengths are written in the plan", otherwise = "metric") @Nullable
        UnitSystem units,

        @Described(value = "currency of all prices, by its ISO 4217 code", example = "GBP")
        String currency,

        @Described(value = "most that boards, fixings and delivery may cost", example = "420", atLeast = 0) @Nullable
        BigDecimal budget,

        @Described("what was measured on site") SurveyNotes survey,
        @Described("the planters wished for, run by run") List<RunWish> runs,
        @Described("how boxes are put together") BuildRules build,
        @Described("the board sections in question") List<SectionNote> sections,
        @Described("suppliers with their prices and terms") List<SupplierNote> suppliers,
        @Described("boards and offcuts already in the shed") List<OwnedBoard> owned,
        @Described("the saws at hand") List<SawNote> saws,
        @Described("habits at the saw") @Nullable CuttingRules cutting,

        @Described("what the planters are filled with") @Nullable
        SoilWish soil,

        @Described("what the walls must stand, and what is known of soil, ground and screws") @Nullable
        StrengthWish strength,

        @Described("what the planters stand on, and how it is made ready") @Nullable
        GroundWish ground,

        @Described("what goes into the planters under the soil, its mix, liner and finish") @Nullable
        FillingWish filling,

        @Described("what is to grow, who tends it, and where the sun comes from") @Nullable
        PlantingWish planting,

        @Described("when the work can be done, by how many, and how fast they are") @Nullable
        DaysWish days,

        @Described("what the first planter taught, once it stood") @Nullable
        FirstPlanter first,

        @Described("what has arrived and what is cut already; the plan is made again for the rest") @Nullable
        ReceivedNote received,

        @Described("sections of the same size that may be bought in place of others")
        List<Substitute> substitutes) {
    public Garden {
        runs = List.copyOf(runs);
        sections = List.copyOf(sections);
        suppliers = List.copyOf(suppliers);
        owned = List.copyOf(owned);
        saws = List.copyOf(saws);
        substitutes = List.copyOf(substitutes);
    }

    public UnitSystem unitsOrMetric() {
        return units == null ? UnitSystem.METRIC : units;
    }

    public CurrencyUnit currencyUnit() {
        return CurrencyUnit.of(currency);
    }

    public CuttingRules cuttingOrHabit() {
        return cutting == null ? CuttingRules.HABIT : cutting;
    }

    public SoilWish soilOrHabit() {
        return soil == null ? SoilWish.HABIT : soil;
    }

    public StrengthWish strengthOrHabit() {
        return strength == null ? StrengthWish.HABIT : strength;
    }

    public GroundWish groundOrHabit() {
        return ground == null ? GroundWish.HABIT : ground;
    }

    public FillingWish fillingOrHabit() {
        return filling == null ? FillingWish.HABIT : filling;
    }

    public PlantingWish plantingOrHabit() {
        return planting == null ? PlantingWish.HABIT : planting;
    }

    public DaysWish daysOrHabit() {
        return days == null ? DaysWish.HABIT : days;
    }

    /**
     * The garden with what the first planter taught in the place of what was said before: the kerf of its saws and the share
     * of boards that turn out unusable.
     */
    public Garden asMeasured() {
        FirstPlanter taught = first;
        if (taught == null) {
            return this;
        }
        List<SawNote> measured = saws.stream()
                .map(saw -> taught.measured(saw) ? saw.withKerf(taught.kerf()) : saw)
                .toList();
        CuttingRules rules = cuttingOrHabit();
        double before = rules.rejects() == null ? 0 : rules.rejects();
        return with(
                runs, measured, taught.boards() == null ? cutting : rules.withRejects(taught.rejects(before)), first);
    }

    /** The same garden with a false floor at that height in all its planters; none at 0. */
    public Garden withPlatform(Length height) {
        List<RunWish> floored =
                runs.stream().map(run -> run.withPlatform(height)).toList();
        return with(floored, saws, cutting, null);
    }

    private Garden with(
            List<RunWish> otherRuns,
            List<SawNote> otherSaws,
            @Nullable CuttingRules otherCutting,
            @Nullable FirstPlanter otherFirst) {
        return new Garden(
                name,
                about,
                units,
                currency,
                budget,
                survey,
                otherRuns,
                build,
                sections,
                suppliers,
                owned,
                otherSaws,
                otherCutting,
                soil,
                strength,
                ground,
                filling,
                planting,
                days,
                otherFirst,
                received,
                substitutes);
    }

    /** The section of that name. */
    public Optional<SectionNote> section(String sectionName) {
        return sections.stream().filter(s -> s.name().equals(sectionName)).findFirst();
    }
}

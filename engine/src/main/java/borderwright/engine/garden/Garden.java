package borderwright.engine.garden;

import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Message;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * One garden border, resolved: every default is applied, and what may be absent says so.
 *
 * @param heading its name, units and money
 * @param survey what was measured on site
 * @param design the planters and how they are built
 * @param supply where boards and goods come from
 * @param workshop saws, cutting and days of work
 * @param site soil, ground and filling
 * @param origins who sets each value, the document or a default
 */
public record Garden(
        Heading heading,
        SurveySpec survey,
        Design design,
        Supply supply,
        Workshop workshop,
        Site site,
        Origins origins) {

    /** A person's own garden, or one whose border, suppliers and prices are invented, as in an example. */
    public enum GardenKind {
        OWN,
        INVENTED
    }

    /**
     * Name, units and money.
     *
     * @param name of the garden
     * @param about a few words about it, if any are given
     * @param kind whether it is a person's own or invented
     * @param units in which lengths are written
     * @param currency of all prices
     * @param budget most that it may cost in all, if it is limited
     * @param usualPrices what goods usually cost where no supplier prices them
     */
    public record Heading(
            String name,
            Optional<String> about,
            GardenKind kind,
            UnitSystem units,
            CurrencyUnit currency,
            Optional<BigDecimal> budget,
            UsualPrices usualPrices) {}

    /** The planters, run by run, how they are built and of what, what they must stand and what grows in them. */
    public record Design(
            List<RunSpec> runs,
            BuildSpec build,
            List<SectionSpec> sections,
            StrengthSpec strength,
            PlantingSpec planting) {
        public Design {
            runs = List.copyOf(runs);
            sections = List.copyOf(sections);
        }

        /** The same with other runs. */
        public Design withRuns(List<RunSpec> other) {
            return new Design(other, build, sections, strength, planting);
        }
    }

    /** Suppliers, boards in the shed, sections that may stand in for others, and what has arrived. */
    public record Supply(
            List<SupplierSpec> suppliers,
            List<OwnedBoard> owned,
            List<Substitute> substitutes,
            Optional<Receipt> received) {
        public Supply {
            suppliers = List.copyOf(suppliers);
            owned = List.copyOf(owned);
            substitutes = List.copyOf(substitutes);
        }
    }

    /** Saws, cutting, days of work, and what the first planter taught once it stood. */
    public record Workshop(
            List<SawSpec> saws, CuttingSpec cutting, WorkSpec work, Optional<FirstPlanter> firstPlanter) {
        public Workshop {
            saws = List.copyOf(saws);
        }

        /** The same with the kerf and the share of unusable boards that the first planter showed. */
        Workshop asMeasured() {
            if (firstPlanter.isEmpty()) {
                return this;
            }
            FirstPlanter taught = firstPlanter.get();
            List<SawSpec> measured = saws.stream().map(taught::measured).toList();
            return new Workshop(measured, taught.measured(cutting), work, firstPlanter);
        }
    }

    /** What the planters are filled with and stand on. */
    public record Site(SoilSpec soil, GroundSpec ground, FillingSpec filling) {}

    /** The garden with what the first planter showed in the place of what was taken before. */
    public Garden asMeasured() {
        return workshop.firstPlanter().isEmpty() ? this : withWorkshop(workshop.asMeasured());
    }

    /** The same garden with other runs. */
    public Garden withRuns(List<RunSpec> other) {
        return new Garden(heading, survey, design.withRuns(other), supply, workshop, site, origins);
    }

    /** The same garden with another workshop. */
    public Garden withWorkshop(Workshop other) {
        return new Garden(heading, survey, design, supply, other, site, origins);
    }

    /** Who sets the weight of the soaked soil: the document, or a default with its source. */
    public Message soakedWeightOrigin() {
        double weight = site.soil().soakedKnPerM3();
        return origins.of("strength.soaked soil")
                .filter(origin -> origin.kind() == Origins.Kind.DEFAULT)
                .map(origin -> OriginMessage.SOAKED_WEIGHT_BY_DEFAULT.of(weight, origin.note()))
                .orElseGet(() -> OriginMessage.SOAKED_WEIGHT_GIVEN.of(weight));
    }

    /** The section of that name. */
    public Optional<SectionSpec> section(String sectionName) {
        return sections().stream().filter(s -> s.name().equals(sectionName)).findFirst();
    }

    public String name() {
        return heading.name();
    }

    public Optional<String> about() {
        return heading.about();
    }

    /** Whether garden, suppliers and prices are invented. */
    public boolean isInvented() {
        return heading.kind() == GardenKind.INVENTED;
    }

    public UnitSystem units() {
        return heading.units();
    }

    public CurrencyUnit currency() {
        return heading.currency();
    }

    public Optional<BigDecimal> budget() {
        return heading.budget();
    }

    public UsualPrices usualPrices() {
        return heading.usualPrices();
    }

    public List<RunSpec> runs() {
        return design.runs();
    }

    public BuildSpec build() {
        return design.build();
    }

    public List<SectionSpec> sections() {
        return design.sections();
    }

    public StrengthSpec strength() {
        return design.strength();
    }

    public PlantingSpec planting() {
        return design.planting();
    }

    public List<SupplierSpec> suppliers() {
        return supply.suppliers();
    }

    public List<OwnedBoard> owned() {
        return supply.owned();
    }

    public List<Substitute> substitutes() {
        return supply.substitutes();
    }

    public Optional<Receipt> received() {
        return supply.received();
    }

    public List<SawSpec> saws() {
        return workshop.saws();
    }

    public CuttingSpec cutting() {
        return workshop.cutting();
    }

    public WorkSpec work() {
        return workshop.work();
    }

    public Optional<FirstPlanter> firstPlanter() {
        return workshop.firstPlanter();
    }

    public SoilSpec soil() {
        return site.soil();
    }

    public GroundSpec ground() {
        return site.ground();
    }

    public FillingSpec filling() {
        return site.filling();
    }
}

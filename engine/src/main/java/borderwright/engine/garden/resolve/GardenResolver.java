package borderwright.engine.garden.resolve;

import borderwright.engine.garden.FillingSpec;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.GroundSpec;
import borderwright.engine.garden.SoilSpec;
import borderwright.engine.garden.SurveySpec;
import borderwright.engine.garden.given.GivenGarden;
import borderwright.engine.measure.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import org.joda.money.CurrencyUnit;

/**
 * Turns what a garden document gives into the garden that every later stage takes.
 *
 * <p>See docs/decisions/0070.
 */
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
                each("runs", given.runs(), RunResolver::run, ledger),
                BuildResolver.resolve(given.build(), ledger),
                each("sections", given.sections(), WoodResolver::section, ledger),
                StrengthResolver.resolve(given.strength(), ground, units, ledger),
                PlantingResolver.resolve(given.planting(), ledger));
        SoilSpec soil = SoilResolver.resolve(given.soil(), given.strength(), given.filling(), ledger);
        FillingSpec filling = FillingResolver.resolve(given.filling(), ledger);
        SurveySpec survey = SurveyResolver.survey(given.survey(), ledger);
        Garden.Supply supply = supply(given, ledger);
        Garden.Workshop workshop = workshop(given, units, ledger);
        return new Garden(
                heading(given, units, ledger),
                survey,
                design,
                supply,
                workshop,
                new Garden.Site(soil, ground, filling),
                ledger.origins());
    }

    private static Garden.Heading heading(GivenGarden given, UnitSystem units, Ledger ledger) {
        CurrencyUnit currency = CurrencyUnit.of(given.currency());
        return new Garden.Heading(
                given.name(),
                Optional.ofNullable(given.about()),
                ledger.or("invented", given.invented(), false, "a garden of your own")
                        ? Garden.GardenKind.INVENTED
                        : Garden.GardenKind.OWN,
                units,
                currency,
                Optional.ofNullable(given.budget()),
                UsualPriceResolver.resolve(given.usualPrices(), currency, ledger));
    }

    private static Garden.Supply supply(GivenGarden given, Ledger ledger) {
        return new Garden.Supply(
                each("suppliers", given.suppliers(), SupplierResolver::supplier, ledger),
                each("owned", given.owned(), SupplyResolver::owned, ledger),
                each("substitutes", given.substitutes(), SupplyResolver::substitute, ledger),
                Optional.ofNullable(given.received()).map(received -> SupplyResolver.receipt(received, ledger)));
    }

    private static Garden.Workshop workshop(GivenGarden given, UnitSystem units, Ledger ledger) {
        return new Garden.Workshop(
                each("saws", given.saws(), WoodResolver::saw, ledger),
                WoodResolver.cutting(given.cutting(), units, ledger),
                WorkResolver.resolve(given.days(), ledger),
                Optional.ofNullable(given.firstPlanter()).map(SupplyResolver::firstPlanter));
    }

    /** Each item of a list, with a ledger of its own. */
    static <G, R> List<R> each(
            String key, List<G> given, BiFunction<? super G, Ledger, ? extends R> resolved, Ledger ledger) {
        List<R> all = new ArrayList<>();
        for (int i = 0; i < given.size(); i++) {
            all.add(resolved.apply(given.get(i), ledger.in(key + "[" + i + "]", given.get(i))));
        }
        return all;
    }
}

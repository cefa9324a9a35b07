package borderwright.engine.garden.checks;

import borderwright.engine.garden.GroundSpec.MembraneSpec;
import borderwright.engine.garden.given.GivenBuild;
import borderwright.engine.garden.given.GivenFirstPlanter;
import borderwright.engine.garden.given.GivenGarden;
import borderwright.engine.garden.given.GivenGround;
import borderwright.engine.garden.given.GivenNearby;
import borderwright.engine.garden.given.GivenReceipt;
import borderwright.engine.garden.given.GivenSaw;
import borderwright.engine.garden.given.GivenSection;
import borderwright.engine.garden.given.GivenSoil;
import borderwright.engine.garden.given.GivenSubstitute;
import borderwright.engine.garden.resolve.GroundResolver;
import borderwright.engine.garden.vocabulary.NearbyKind;
import borderwright.engine.problem.Problem;
import borderwright.engine.spelling.NearestName;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.joda.money.CurrencyUnit;

/**
 * What no single record can know: names that must be found elsewhere in the document, keys that exclude or demand each
 * other, counts that must agree.
 *
 * <p>A blank name may be any name, because the reader puts it where it reports a fault of its own: nothing is said of it,
 * and names of its kind are not looked up. See {@link KnownNames}.
 */
public final class GardenChecks {
    /** More faults than these help nobody, and each unknown name is compared with all known ones. */
    static final int MOST_FAULTS = 500;

    private final GivenGarden garden;
    private final List<Problem> found = new ArrayList<>();

    private GardenChecks(GivenGarden garden) {
        this.garden = garden;
    }

    /** All faults that span records, up to 500, part by part of the document; empty when there are none. */
    public static List<Problem> check(GivenGarden garden) {
        GardenChecks checks = new GardenChecks(garden);
        checks.all();
        return List.copyOf(checks.found.subList(0, Math.min(checks.found.size(), MOST_FAULTS)));
    }

    private void all() {
        KnownNames sections = KnownNames.of(
                "section", garden.sections().stream().map(GivenSection::name).toList());
        checkCurrency();
        found.addAll(SurveyChecks.check(garden.survey()));
        found.addAll(RunChecks.check(garden));
        sections.reportTwice("sections", found);
        checkBuild(sections);
        found.addAll(SupplierChecks.check(garden, sections));
        for (int i = 0; i < garden.owned().size(); i++) {
            sections.require(garden.owned().get(i).section(), "owned[" + i + "].section", found);
        }
        checkReceived(sections);
        checkSubstitutes(sections);
        checkGround();
        found.addAll(SoilChecks.check(garden));
        checkNear();
        KnownNames saws =
                KnownNames.of("saw", garden.saws().stream().map(GivenSaw::name).toList());
        saws.reportTwice("saws", found);
        checkFirst(saws);
    }

    private void checkFirst(KnownNames saws) {
        GivenFirstPlanter first = garden.firstPlanter();
        if (first == null) {
            return;
        }
        if (first.saw() != null) {
            saws.require(first.saw(), "first planter.saw", found);
        }
        if (first.unusable() != null && (first.boards() == null || first.unusable() > first.boards())) {
            found.add(new Problem(
                    "first-boards",
                    "first planter.unusable",
                    "`unusable` is more than the boards that were looked over.",
                    "Write how many were looked over, such as `boards: 12`, and how many of these were of no use."));
        }
    }

    private void checkSubstitutes(KnownNames sections) {
        for (int i = 0; i < garden.substitutes().size() && found.size() < MOST_FAULTS; i++) {
            GivenSubstitute substitute = garden.substitutes().get(i);
            String where = "substitutes[" + i + "]";
            sections.require(substitute.section(), where + ".section", found);
            sections.require(substitute.inPlaceOf(), where + ".in place of", found);
            Optional<GivenSection> one = section(substitute.section());
            Optional<GivenSection> other = section(substitute.inPlaceOf());
            if (one.isPresent()
                    && other.isPresent()
                    && !(one.get().thickness().equals(other.get().thickness())
                            && one.get().width().equals(other.get().width()))) {
                found.add(new Problem(
                        "substitute-size",
                        where,
                        "`" + substitute.section() + "` is not as thick and wide as `" + substitute.inPlaceOf()
                                + "`, so pieces would not fit.",
                        "Name a section of the same size; for another size write a variant."));
            }
        }
    }

    private Optional<GivenSection> section(String name) {
        return garden.sections().stream().filter(s -> s.name().equals(name)).findFirst();
    }

    private void checkReceived(KnownNames sections) {
        List<GivenReceipt.GivenReceivedBoard> boards =
                garden.received() == null ? List.of() : garden.received().boards();
        for (int i = 0; i < boards.size() && found.size() < MOST_FAULTS; i++) {
            GivenReceipt.GivenReceivedBoard board = boards.get(i);
            String where = "received.boards[" + i + "]";
            sections.require(board.section(), where + ".section", found);
            int count = board.count() == null ? 1 : board.count();
            if (count > 1 && (!board.cut().isEmpty() || board.left() != null)) {
                found.add(new Problem(
                        "cut-count",
                        where + ".count",
                        "A board that is cut into is one board, here it is " + count + ".",
                        "Give each its own line."));
            }
            if (board.unusable() != null && board.unusable() > count) {
                found.add(new Problem(
                        "unusable-count",
                        where + ".unusable",
                        board.unusable() + " of " + count + " cannot be unusable.",
                        "Write how many arrived as `count`."));
            }
        }
    }

    private void checkNear() {
        BorderEdges edges = new BorderEdges(garden.survey());
        GivenGround ground = garden.ground();
        List<GivenNearby> near = ground == null ? List.of() : ground.keepClearOf();
        for (int i = 0; i < near.size() && found.size() < MOST_FAULTS; i++) {
            GivenNearby thing = near.get(i);
            String where = "ground.keep clear of[" + i + "]";
            edges.requireEdge(thing.edge(), where + ".edge", found);
            boolean needsBottom = thing.what() == NearbyKind.AIR_BRICK || thing.what() == NearbyKind.CLADDING;
            if (thing.what() == NearbyKind.TREE && (thing.trunk() == null) == (thing.girth() == null)) {
                found.add(new Problem(
                        "near-trunk",
                        where + ".trunk",
                        "How far a tree's roots reach follows from its trunk, which is "
                                + (thing.trunk() == null ? "not said." : "said twice, across and round."),
                        "Measure it 1.5 m above the ground, and write `trunk: 180 mm` across it, or `girth: 560 mm` round"
                                + " it."));
            }
            if (needsBottom && thing.bottom() == null) {
                found.add(new Problem(
                        "near-bottom",
                        where + ".bottom",
                        "Whether a planter stands in the way follows from its lower edge, which is not said.",
                        "Write its height above the datum, such as `bottom: 160 mm`."));
            }
            if (thing.endsAt() != null && thing.endsAt().compareTo(thing.along()) < 0) {
                found.add(new Problem(
                        "near-ends",
                        where + ".ends at",
                        "It ends before it begins.",
                        "Name the edge from its other corner, or exchange `along` and `ends at`."));
            }
        }
    }

    private void checkGround() {
        GivenGround ground = garden.ground();
        if (garden.build().postFooting() != null
                && ground != null
                && ground.surface() != null
                && ground.surface().isHard()) {
            found.add(new Problem(
                    "footing-in-hard-ground",
                    "build.post footing",
                    "Posts cannot be let into paving or a roof.",
                    "Leave `post footing` out, or say another `ground.surface`."));
        }
        Optional<MembraneSpec> sheet = GroundResolver.membrane(ground == null ? null : ground.membrane());
        if (sheet.isPresent()
                && 2 * sheet.get().overlapMm()
                        > Math.min(sheet.get().widthMm(), sheet.get().lengthMm())) {
            found.add(new Problem(
                    "overlap",
                    "ground.membrane.overlap",
                    "The overlap is more than half a roll's width or length.",
                    "Write an overlap such as `150 mm`, or the roll's own `width` and `length`."));
        }
    }

    private void checkCurrency() {
        if (garden.currency().isBlank()) {
            return;
        }
        List<String> codes = CurrencyUnit.registeredCurrencies().stream()
                .filter(unit -> !unit.isPseudoCurrency())
                .map(CurrencyUnit::getCode)
                .toList();
        if (!codes.contains(garden.currency())) {
            found.add(new Problem(
                    "currency",
                    "currency",
                    "`" + garden.currency() + "` is not a currency of ISO 4217.",
                    "Write its three letters, such as `GBP`, `EUR` or `USD`."
                            + NearestName.of(garden.currency(), codes)
                                    .map(near -> " Perhaps you meant `" + near + "`.")
                                    .orElse("")));
            return;
        }
        CurrencyUnit currency = CurrencyUnit.of(garden.currency());
        SupplierChecks.checkMinorUnits("budget", Optional.ofNullable(garden.budget()), currency, found);
        Optional<BigDecimal> soil = Optional.ofNullable(garden.soil()).map(GivenSoil::perCubicMetre);
        SupplierChecks.checkMinorUnits("soil.per cubic metre", soil, currency, found);
    }

    private void checkBuild(KnownNames sections) {
        GivenBuild build = garden.build();
        sections.require(build.walls(), "build.walls", found);
        Map<String, Optional<String>> others = new TreeMap<>();
        others.put("braces", Optional.ofNullable(build.braces()));
        others.put("posts", Optional.ofNullable(build.posts()));
        others.put("ties", Optional.ofNullable(build.ties()));
        others.put("dividers", Optional.ofNullable(build.dividers()));
        others.put("capping", Optional.ofNullable(build.capping()));
        others.put("bearers", Optional.ofNullable(build.bearers()));
        others.put("slats", Optional.ofNullable(build.slats()));
        others.forEach((key, name) -> name.ifPresent(n -> sections.require(n, "build." + key, found)));
    }
}

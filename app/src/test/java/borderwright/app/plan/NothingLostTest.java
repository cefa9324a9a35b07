package borderwright.app.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buying.why.Basket;
import borderwright.engine.cutting.CuttingPlan.BoardCuts;
import borderwright.engine.cutting.PlaneVerifier;
import borderwright.engine.filling.BoxWeight;
import borderwright.engine.filling.Material;
import borderwright.engine.filling.SoilVolume;
import borderwright.engine.ground.BoxGround;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Plan;
import borderwright.engine.sequence.WorkDay;
import borderwright.engine.sequence.WorkTask;
import borderwright.engine.shopping.ShoppingItem;
import borderwright.engine.stock.row.BoardInHand;
import borderwright.engine.stock.row.CuttingJob;
import borderwright.pack.language.Language;
import borderwright.pack.tables.PlanTables;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Between survey and list nothing is lost: parts add up to totals, and totals are what is bought and worked. */
class NothingLostTest {
    private static final double CUBIC_YARD_M3 = 0.764554857984;

    @ParameterizedTest
    @MethodSource("borderwright.app.plan.ExamplePlans#names")
    void fromGroundToShoppingList(String example) {
        Plan plan = ExamplePlans.of(example);
        ground(plan);
        filling(plan);
        work(plan);
        bought(plan);
        cut(plan);
        namesTellApart(plan);
        // One example stays weak on purpose, to show what is said of it.
        assertThat(plan.strengthReports()).allMatch(report -> report.holds() != example.equals("behind-the-shed"));
    }

    @Test
    void whatHasArrivedIsCutFirstAndOnlyWhatIsShortIsBought() throws IOException {
        Plan first = ExamplePlans.of("garden-bend");
        String cut = first.cutting().boards().stream()
                .filter(b -> b.section().equals("larch 25 x 150") && !b.cuts().isEmpty())
                .map(b -> b.cuts().get(0).label())
                .findFirst()
                .orElseThrow();
        String arrived = """

                received:
                  all goods: yes
                  boards:
                    - {section: larch 25 x 150, length: 3.58 m, count: 8, unusable: 1, sent by: Supplier one}
                    - {section: larch 25 x 150, length: 3.6 m, sent by: Supplier one, cut: [%s]}
                    - {section: batten 47 x 50, length: 2.99 m, count: 9}
                """.formatted(cut);
        Plan then = ExamplePlans.plan(
                (Files.readString(ExamplePlans.file("garden-bend")) + arrived).getBytes(StandardCharsets.UTF_8));
        assertThat(then.shortfalls()).noneMatch(p -> p.where().startsWith("received"));
        assertThat(then.cutting().done()).containsExactly(cut);
        assertThat(then.cutting().boards())
                .filteredOn(BoardCuts::owned)
                .extracting(b -> b.length().mm())
                .contains(3580.0, 2990.0);
        assertThat(then.basket().total()).isLessThan(first.basket().total());
        assertThat(then.basket().orders())
                .allMatch(order -> order.lines().stream().allMatch(l -> l.item().equals("larch 25 x 150")));
        cut(then);
    }

    /** A label on wood or paper is one planter's, one piece's or one board's, and a piece's can be typed back into the garden file. */
    private static void namesTellApart(Plan plan) {
        List<String> names = new ArrayList<>();
        plan.boxes().forEach(box -> names.addAll(box.plan().planters()));
        plan.boxes().stream()
                .filter(box -> box.plan().planters().size() > 1)
                .forEach(box -> names.add(box.plan().name()));
        plan.cutting().boards().forEach(board -> names.add(Integer.toString(board.number())));
        for (Box box : plan.boxes()) {
            for (Piece piece : box.pieces()) {
                assertThat(piece.label()).matches(piece.planter() + "-[a-z0-9]+(-[a-z0-9]+)?");
                names.add(piece.label());
            }
        }
        assertThat(names).doesNotHaveDuplicates();
        Set<String> planters = plan.boxes().stream()
                .flatMap(box -> box.plan().planters().stream())
                .collect(Collectors.toSet());
        for (Box box : plan.boxes()) {
            assertThat(box.pieces())
                    .extracting(piece -> piece.label().substring(piece.planter().length() + 1))
                    .noneMatch(part -> planters.contains(part.toUpperCase(Locale.ROOT)));
        }
    }

    /** Every piece, laid in its true plane on its board, lies clear of its neighbours. */
    private static void cut(Plan plan) {
        List<BoardInHand> boards = plan.cutting().boards().stream()
                .map(b ->
                        new BoardInHand(b.number(), b.section(), b.length(), b.from(), b.owned(), b.trim(), List.of()))
                .toList();
        CuttingJob job = new CuttingJob(
                boards,
                plan.boxes().stream()
                        .flatMap(b -> b.pieces().stream())
                        .filter(p -> !plan.cutting().done().contains(p.label()))
                        .toList(),
                plan.garden().sections(),
                plan.garden().saws(),
                plan.garden().cutting());
        assertThat(PlaneVerifier.faults(job, plan.cutting())).isEmpty();
    }

    private static void ground(Plan plan) {
        List<BoxGround> boxes = plan.site().ground().boxes();
        assertThat(boxes.stream().map(BoxGround::box))
                .isEqualTo(plan.boxes().stream().map(b -> b.plan().name()).toList());
        assertThat(boxes.stream().mapToDouble(BoxGround::dugM3).sum())
                .isCloseTo(plan.site().ground().spoil().dugM3(), within(1e-9));
        assertThat(boxes.stream().mapToDouble(BoxGround::turfM3).sum())
                .isCloseTo(plan.site().ground().spoil().turfM3(), within(1e-9));
        assertThat(boxes.stream().mapToDouble(BoxGround::gravelM3).sum())
                .isCloseTo(plan.site().ground().gravelM3(), within(1e-9));
    }

    private static void filling(Plan plan) {
        List<SoilVolume> planters = plan.site().filling().planters();
        assertThat(planters.stream().map(SoilVolume::planter))
                .isEqualTo(plan.boxes().stream()
                        .flatMap(b -> b.plan().planters().stream())
                        .toList());
        List<Material> materials = plan.site().filling().materials();
        assertThat(materials.stream().mapToDouble(Material::filledM3).sum())
                .isCloseTo(planters.stream().mapToDouble(SoilVolume::filledM3).sum(), within(1e-9));
        assertThat(plan.totals().soilM3()).isCloseTo(plan.site().filling().orderedM3(), within(1e-9));
        assertThat(plan.site().filling().weights().stream()
                        .mapToDouble(BoxWeight::woodKg)
                        .sum())
                .isCloseTo(plan.totals().timberKg(), within(1e-6));
        double unit = plan.garden().units() == UnitSystem.IMPERIAL ? CUBIC_YARD_M3 : 1;
        double loose = plan.site().ground().gravelLooseM3();
        for (Material material : materials) {
            if (material.bought()) {
                double needed = material.orderedM3() + (material.item().equals("gravel") ? loose : 0);
                double listed = item(plan, material.item()) * unit;
                assertThat(listed - needed).as(material.item()).isBetween(-1e-9, 0.02 * unit);
            }
        }
        if (loose > 0) {
            assertThat(item(plan, "gravel") * unit).isGreaterThanOrEqualTo(loose - 1e-9);
        }
    }

    private static double item(Plan plan, String name) {
        return plan.shopping().stream()
                .filter(i -> i.item().equals(name))
                .mapToDouble(i -> i.quantity().doubleValue())
                .sum();
    }

    private static void work(Plan plan) {
        if (plan.work().days().isEmpty()) {
            return;
        }
        double worked = plan.work().days().stream()
                .flatMap(d -> d.slots().stream())
                .mapToDouble(WorkDay.Slot::personHours)
                .sum();
        assertThat(worked).isCloseTo(plan.work().personHours(), within(1e-6));
        assertThat(plan.work().tasks().stream()
                        .mapToDouble(WorkTask::personHours)
                        .sum())
                .isCloseTo(worked, within(1e-6));
    }

    /** Everything on the list is ordered in enough, or said to be priced by nobody; the CSV says the same. */
    private static void bought(Plan plan) {
        String csv = new String(
                PlanTables.shopping(plan, Language.english().in(plan.garden().units())), StandardCharsets.UTF_8);
        for (ShoppingItem item : plan.shopping()) {
            boolean unpriced =
                    plan.basket().unpriced().stream().anyMatch(u -> u.item().equals(item.item()));
            boolean ordered = plan.basket().orders().stream()
                    .flatMap(o -> o.lines().stream())
                    .map(Basket.Line::item)
                    .anyMatch(item.item()::equals);
            assertThat(ordered ^ unpriced).as(item.item()).isTrue();
            assertThat(csv).contains(item.item()).contains(item.quantity().toPlainString());
        }
    }
}

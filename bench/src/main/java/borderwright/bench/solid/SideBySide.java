package borderwright.bench.solid;

import borderwright.app.document.DocumentAnswer;
import borderwright.app.document.GardenReader;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.effort.Budget;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.resolve.GardenResolver;
import borderwright.engine.plan.PlanAnswer;
import borderwright.engine.plan.Planner;
import borderwright.engine.strength.BoxStrength;
import borderwright.engine.strength.SideBow;
import borderwright.engine.strength.StrengthTerms;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * The plan's bulges and screw forces beside those of the same boxes as solids: {@code SideBySide [fine] GARDEN...} takes the
 * first box of each garden document. The fill for good, after creep.
 */
public final class SideBySide {
    private static final int MISSING = 3;

    /** The basket is of no interest here. */
    private static final int SEARCH_STEPS = 1000;

    private static final List<String> KINDS = List.of("WALL_TO_UPRIGHT", "TIE_TO_BRACE", "DIVIDER_TO_UPRIGHT");

    private final Box box;
    private final StrengthTerms terms;
    private final Mesh mesh;
    private final Path folder;

    private SideBySide(Box box, StrengthTerms terms, Mesh mesh, Path folder) {
        this.box = box;
        this.terms = terms;
        this.mesh = mesh;
        this.folder = folder;
    }

    /**
     * Prints the rows of a table: of each box the bulge of every side, and the most that a screw carries.
     *
     * @throws IOException where a document cannot be planned, or the package gives no answer
     */
    public static void main(String[] arguments) throws IOException {
        if (!SolidRun.isThere()) {
            System.err.println("The finite-element package is missing: install calculix-ccx of the Debian archive.");
            System.exit(MISSING);
        }
        Path folder = Files.createTempDirectory("solid");
        System.out.println("| box | what | plan | as frame | as hinges | as built |\n|---|---|---|---|---|---|");
        boolean isFine = arguments.length > 0 && arguments[0].equals("fine");
        for (String garden : List.of(arguments).subList(isFine ? 1 : 0, arguments.length)) {
            of(Path.of(garden), isFine ? Mesh.FINE : Mesh.USUAL, folder).print();
        }
    }

    private static SideBySide of(Path document, Mesh mesh, Path folder) throws IOException {
        DocumentAnswer read;
        try (InputStream in = Files.newInputStream(document)) {
            read = GardenReader.read(in);
        }
        if (!(read instanceof DocumentAnswer.Sound sound)) {
            throw new IOException(document + " has faults");
        }
        Garden garden = GardenResolver.resolve(sound.document().garden());
        if (!(Planner.plan(garden, Budget.ofSteps(SEARCH_STEPS)) instanceof PlanAnswer.Planned planned)) {
            throw new IOException(document + " cannot be planned");
        }
        StrengthTerms terms = StrengthTerms.of(
                garden.strength(), garden.soil(), garden.ground(), garden.sections(), garden.origins());
        return new SideBySide(planned.plan().boxes().get(0), terms, mesh, folder);
    }

    private void print() throws IOException {
        List<SolidAnswer> answers = new ArrayList<>();
        for (Drawing drawing : Drawing.values()) {
            answers.add(new SolidRun(new SolidBox(box, terms, mesh, drawing), folder).solve());
        }
        for (SideBow side : BoxStrength.check(box, terms).sides()) {
            row(
                    "bulge of side " + side.letter() + ", mm",
                    "%.2f",
                    side.finalMm(),
                    answers,
                    answer -> answer.bowsMm().get(side.side()));
        }
        PlanForces plan = PlanForces.of(box, terms);
        for (String kind : KINDS) {
            if (plan.screws().stream().anyMatch(screw -> screw.joint().startsWith(kind))) {
                screws(kind, "sheared, N", "%.0f", plan, answers, ScrewForce::shearN);
                screws(kind, "pulled, N", "%.0f", plan, answers, ScrewForce::pullN);
                screws(kind, "used", "%.2f", plan, answers, plan::used);
            }
        }
    }

    private void screws(
            String kind,
            String what,
            String format,
            PlanForces plan,
            List<SolidAnswer> answers,
            ToDoubleFunction<ScrewForce> figure) {
        row(
                "screw " + kind.toLowerCase(Locale.ROOT).replace('_', ' ') + ", most " + what,
                format,
                most(kind, plan.screws(), figure),
                answers,
                answer -> most(kind, answer.screws(), figure));
    }

    private static double most(String kind, List<ScrewForce> screws, ToDoubleFunction<ScrewForce> figure) {
        return screws.stream()
                .filter(screw -> screw.joint().startsWith(kind))
                .mapToDouble(figure)
                .max()
                .orElse(0);
    }

    private void row(
            String what, String format, double plan, List<SolidAnswer> answers, Function<SolidAnswer, Double> figure) {
        StringBuilder row = new StringBuilder("| " + box.plan().name() + " | " + what + " | ");
        row.append(String.format(Locale.ROOT, format, plan));
        answers.forEach(answer -> row.append(" | ").append(String.format(Locale.ROOT, format, figure.apply(answer))));
        System.out.println(row + " |");
    }
}

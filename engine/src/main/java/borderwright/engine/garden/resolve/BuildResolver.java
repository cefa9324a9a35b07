package borderwright.engine.garden.resolve;

import borderwright.engine.garden.BuildSpec;
import borderwright.engine.garden.BuildSpec.BoxPart;
import borderwright.engine.garden.BuildSpec.PartChoice;
import borderwright.engine.garden.given.GivenBuild;
import borderwright.engine.garden.vocabulary.CornerStyle;
import borderwright.engine.garden.vocabulary.FaceOut;
import borderwright.engine.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How boxes are put together. */
public final class BuildResolver {
    private final Ledger in;
    private final List<PartChoice> choices = new ArrayList<>();

    private BuildResolver(Ledger in) {
        this.in = in;
    }

    /** Building with these sections alone, all else by default. */
    public static BuildSpec of(String walls, String braces) {
        return build(GivenBuild.of(walls, braces));
    }

    /** Building alone. */
    public static BuildSpec build(GivenBuild given) {
        return resolve(given, Ledger.empty());
    }

    static BuildSpec resolve(GivenBuild g, Ledger ledger) {
        Ledger in = ledger.in("build", g);
        return new BuildSpec(
                new BuildResolver(in).parts(g),
                in.or("corner joint", g.cornerJoint(), CornerStyle.LAPPED, "where the corner allows it"),
                new BuildSpec.BracingSpec(
                        Optional.ofNullable(g.braceSpacing()),
                        Optional.ofNullable(g.tieSpacing()),
                        in.or("post footing", g.postFooting(), Length.ZERO, "uprights stand on the bed")),
                new BuildSpec.FloorSpec(
                        in.or("slat gap", g.slatGap(), Length.ofMm(12), "8 to 15 mm: " + Ledger.PRACTICE),
                        Optional.ofNullable(g.bearerSpacing())),
                in.or("capping overhang", g.cappingOverhang(), Length.ofMm(20), Ledger.PRACTICE),
                in.or(
                        "face out",
                        g.faceOut(),
                        FaceOut.HEART_OUT,
                        "its edges cup into the box as it dries: " + Ledger.PRACTICE),
                Optional.ofNullable(g.screws())
                        .map(screw -> new BuildSpec.ScrewSize(screw.diameter(), screw.length())));
    }

    private BuildSpec.PartSpec parts(GivenBuild g) {
        boolean postsDecide = g.braces() == null && g.posts() != null;
        choices.add(new PartChoice(BoxPart.WALLS, g.walls(), Optional.empty()));
        if (postsDecide) {
            part(BoxPart.POSTS, g.posts(), BoxPart.WALLS);
            part(BoxPart.BRACES, null, BoxPart.POSTS);
        } else {
            part(BoxPart.BRACES, g.braces(), BoxPart.WALLS);
            part(BoxPart.POSTS, g.posts(), BoxPart.BRACES);
        }
        part(BoxPart.TIES, g.ties(), BoxPart.WALLS);
        part(BoxPart.DIVIDERS, g.dividers(), BoxPart.WALLS);
        part(BoxPart.CAPPING, g.capping(), BoxPart.WALLS);
        part(BoxPart.BEARERS, g.bearers(), BoxPart.BRACES);
        part(BoxPart.SLATS, g.slats(), BoxPart.WALLS);
        return new BuildSpec.PartSpec(choices);
    }

    /** A part of its own section, or of that of another part, which comes before it. */
    private void part(BoxPart part, @Nullable String given, BoxPart otherwise) {
        String section = in.or(
                word(part), given, new BuildSpec.PartSpec(choices).section(otherwise), "as the " + word(otherwise));
        choices.add(new PartChoice(part, section, given == null ? Optional.of(otherwise) : Optional.empty()));
    }

    private static String word(BoxPart part) {
        return part.name().toLowerCase(Locale.ROOT);
    }
}

package borderwright.engine.layout;

import borderwright.engine.garden.RunSpec;
import borderwright.engine.garden.given.GivenRun;
import borderwright.engine.garden.resolve.RunResolver;
import borderwright.engine.garden.vocabulary.CornerTurn;
import borderwright.engine.garden.vocabulary.LengthRange;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.PlanterJoin;
import borderwright.engine.garden.vocabulary.ground.SlopeForm;
import borderwright.engine.measure.Length;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Writes a request with what matters said and the rest left to its default. */
public final class RunRequests {
    private String name = "fence run";
    private final Names along;
    private @Nullable Integer planters;
    private @Nullable LengthRange length;
    private LengthRange depth = range(600, 600);
    private LengthRange height = range(450, 450);
    private @Nullable PlanterJoin join;
    private @Nullable Length between;
    private @Nullable Length startGap;
    private @Nullable Length endGap;
    private @Nullable Length backGap;
    private @Nullable CornerTurn turn;
    private final List<GivenRun.GivenCorner> corners = new ArrayList<>();
    private @Nullable SlopeForm slope;
    private @Nullable Length reach;
    private @Nullable Length sag;
    private GivenRun.@Nullable GivenRows rows;

    private RunRequests(Names along) {
        this.along = along;
    }

    public static RunRequests along(String corners) {
        return new RunRequests(Names.of(corners.split(" ")));
    }

    public static LengthRange range(double from, double to) {
        return new LengthRange(Length.ofMm(from), Length.ofMm(to));
    }

    public RunRequests name(String said) {
        name = said;
        return this;
    }

    public RunRequests planters(int said) {
        planters = said;
        return this;
    }

    public RunRequests length(double from, double to) {
        length = range(from, to);
        return this;
    }

    public RunRequests depth(double mm) {
        depth = range(mm, mm);
        return this;
    }

    public RunRequests depth(double from, double to) {
        depth = range(from, to);
        return this;
    }

    public RunRequests height(double mm) {
        height = range(mm, mm);
        return this;
    }

    public RunRequests separate(double gapMm) {
        join = PlanterJoin.SEPARATE;
        between = Length.ofMm(gapMm);
        return this;
    }

    public RunRequests gaps(double start, double end) {
        startGap = Length.ofMm(start);
        endGap = Length.ofMm(end);
        return this;
    }

    public RunRequests backGap(double mm) {
        backGap = Length.ofMm(mm);
        return this;
    }

    public RunRequests turn(CornerTurn said) {
        turn = said;
        return this;
    }

    public RunRequests turn(String corner, CornerTurn said) {
        corners.add(new GivenRun.GivenCorner(corner, said));
        return this;
    }

    public RunRequests stepped() {
        slope = SlopeForm.STEPPED;
        return this;
    }

    public RunRequests reach(double mm) {
        reach = Length.ofMm(mm);
        return this;
    }

    public RunRequests sag(double mm) {
        sag = Length.ofMm(mm);
        return this;
    }

    public RunRequests rows(double firstMm, int count, double pathsMm) {
        rows = new GivenRun.GivenRows(Length.ofMm(firstMm), count, Length.ofMm(pathsMm));
        return this;
    }

    public RunSpec spec() {
        return RunResolver.run(GivenRun.builder(name, along, depth, height)
                .planters(planters)
                .length(length)
                .join(join)
                .between(between)
                .startGap(startGap)
                .endGap(endGap)
                .backGap(backGap)
                .turn(turn)
                .otherTurns(corners)
                .slope(slope)
                .reach(reach)
                .offTheCurve(sag)
                .rows(rows)
                .build());
    }
}

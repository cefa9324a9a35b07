package borderwright.engine.assembly;

import borderwright.engine.geometry.Ring;
import borderwright.engine.message.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What is to be told of a wall, divider or floor on the bench. */
public final class BenchWords {
    /** An upright that lies lower by less needs no packer, mm (common practice, no source). */
    private static final double LEVEL_MM = 1;

    /** A corner nearer to the hook is at it: no tape is read better, mm (common practice, no source). */
    private static final double AT_HOOK_MM = 0.5;

    private BenchWords() {}

    /** A side by its letter, a divider by its number. */
    public static Message name(WallBench wall) {
        return wall.kind() == WallBench.Kind.WALL
                ? AssemblyMessage.BENCH_SIDE.of(wall.mark())
                : AssemblyMessage.BENCH_DIVIDER.of(wall.index() + 1);
    }

    /** Which face is up, where the tape hooks, what is laid under the uprights, and where the box's corner lies. */
    public static List<Message> of(WallBench wall, Ring outline) {
        List<Message> told = new ArrayList<>();
        boolean isWall = wall.kind() == WallBench.Kind.WALL;
        told.add((isWall ? AssemblyMessage.WALL_FACE_UP : AssemblyMessage.DIVIDER_FACE_UP).of());
        told.add(AssemblyMessage.TAPE_HOOKS_ON_WALL.of(
                wall.parts().boards().get(0).label(), end(wall.hook())));
        List<Message> packs = packs(wall);
        if (!packs.isEmpty()) {
            told.add(AssemblyMessage.LAY_WALL_PACKS.of(packs));
        }
        if (isWall) {
            told.add(corner(wall, outline));
        }
        return told;
    }

    /** How far the outside corner of a box lies from the hook of a wall. */
    private static Message corner(WallBench wall, Ring outline) {
        double x = wall.face().x(outline.corner(wall.index()));
        String way = StrictMath.abs(x) < AT_HOOK_MM ? "here" : x > 0 ? "right" : "left";
        boolean isReflex = outline.insideAngle(wall.index()) > StrictMath.PI;
        return AssemblyMessage.CORNER_FROM_HOOK.of(StrictMath.abs(x), way, isReflex ? "inner" : "outer");
    }

    public static List<Message> packs(WallBench wall) {
        return wall.carried().stream()
                .filter(upright -> wall.packMm(upright) > LEVEL_MM)
                .map(upright -> AssemblyMessage.UPRIGHT_PACKED.of(upright.label(), wall.packMm(upright)))
                .toList();
    }

    private static String end(HookEnd hook) {
        return hook == HookEnd.SQUARE
                ? "square"
                : hook.name().toLowerCase(Locale.ROOT).replace("_point", "");
    }
}

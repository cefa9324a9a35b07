package borderwright.pack;

import borderwright.engine.plan.Comparison;
import borderwright.engine.plan.Plan;
import borderwright.pack.contents.SheetList;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.PaperSize;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every drawing that a pack prints. */
public final class AllDrawings {
    private AllDrawings() {}

    public static List<Drawing> of(Plan plan, PaperSize paper) {
        List<Drawing> drawings = new ArrayList<>();
        SheetList.of(plan, Comparison.NONE, paper, Optional.empty()).forEach(s -> gather(s, drawings));
        return drawings;
    }

    private static void gather(Object value, List<Drawing> drawings) {
        if (value instanceof Drawing drawing) {
            drawings.add(drawing);
        } else if (value instanceof List<?> list) {
            list.forEach(v -> gather(v, drawings));
        } else if (value instanceof Record record
                && value.getClass().getPackageName().startsWith("borderwright.pack")) {
            for (RecordComponent component : record.getClass().getRecordComponents()) {
                try {
                    component.getAccessor().setAccessible(true);
                    gather(component.getAccessor().invoke(record), drawings);
                } catch (ReflectiveOperationException e) {
                    throw new IllegalStateException(e);
                }
            }
        }
    }
}

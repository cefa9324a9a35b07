package borderwright.engine.layout.boxes;

import borderwright.engine.layout.room.Overlap;
import borderwright.engine.layout.run.Findings;
import borderwright.engine.layout.run.LaidBox;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * The last word on overlap: of two boxes that overlap, the later is left out.
 *
 * <p>Runs are laid out clear of each other, so this finds nothing unless the layout has a fault; it is kept because an
 * overlapping plan must never reach the saw.
 */
public final class OverlapCheck {
    private static final double TOUCHING_MM2 = 1;

    private final Findings findings;

    public OverlapCheck(Findings findings) {
        this.findings = findings;
    }

    public List<LaidBox> withoutOverlaps(List<LaidBox> boxes) {
        List<Polygon> polygons =
                boxes.stream().map(box -> box.plan().outline().toJts()).toList();
        STRtree tree = new STRtree();
        for (int i = 0; i < boxes.size(); i++) {
            tree.insert(polygons.get(i).getEnvelopeInternal(), i);
        }
        List<Boolean> kept = new ArrayList<>();
        List<LaidBox> apart = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            Polygon polygon = polygons.get(i);
            int other = polygon.isSimple() && polygon.isValid() ? -1 : i;
            for (Object found : tree.query(polygon.getEnvelopeInternal())) {
                int j = (Integer) found;
                boolean earlier = j < i && kept.get(j);
                if (earlier && Overlap.areaMm2(polygon, polygons.get(j)) > TOUCHING_MM2) {
                    other = j;
                }
            }
            kept.add(other < 0);
            if (other < 0) {
                apart.add(boxes.get(i));
            } else {
                findings.unmet(
                        other == i
                                ? findings.problemMaker().overlapsItself(boxes.get(i))
                                : findings.problemMaker()
                                        .overlaps(
                                                boxes.get(i),
                                                boxes.get(other).plan().name()));
            }
        }
        return apart;
    }
}

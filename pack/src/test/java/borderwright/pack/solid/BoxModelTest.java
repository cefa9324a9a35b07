package borderwright.pack.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.ScrewLine;
import borderwright.engine.filling.SoilVolume;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Prism;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.SidePlan;
import borderwright.engine.plan.Plan;
import borderwright.engine.strength.box.BowLine;
import borderwright.pack.SamplePlan;
import de.javagl.jgltf.model.AccessorModel;
import de.javagl.jgltf.model.GltfModel;
import de.javagl.jgltf.model.MeshPrimitiveModel;
import de.javagl.jgltf.model.NodeModel;
import de.javagl.jgltf.model.io.GltfModelReader;
import de.javagl.jgltf.model.v2.MaterialModelV2;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class BoxModelTest {
    private final Plan plan = SamplePlan.metric();

    private static Map<String, NodeModel> nodes(byte[] glb) throws IOException {
        GltfModel model = new GltfModelReader().readWithoutReferences(new ByteArrayInputStream(glb));
        Map<String, NodeModel> nodes = new LinkedHashMap<>();
        model.getNodeModels().forEach(n -> nodes.put(n.getName(), n));
        return nodes;
    }

    @Test
    void everyPieceIsANodeNamedByItsLabelUnderItsBox() throws IOException {
        Map<String, NodeModel> nodes = nodes(BoxModel.write(plan));

        for (Box box : plan.boxes()) {
            List<String> children = nodes.get(box.plan().name()).getChildren().stream()
                    .map(NodeModel::getName)
                    .toList();
            assertThat(children)
                    .isEqualTo(box.pieces().stream().map(Piece::label).toList());
        }
    }

    @Test
    void everyPieceReachesJustAsFarAsItsPrism() throws IOException {
        Map<String, NodeModel> nodes = nodes(BoxModel.write(plan));

        List<Piece> pieces =
                plan.boxes().stream().flatMap(box -> box.pieces().stream()).toList();
        assertThat(pieces).isNotEmpty();
        for (Piece piece : pieces) {
            AccessorModel positions = positions(nodes.get(piece.label()));
            Number[] min = positions.getMin();
            Number[] max = positions.getMax();
            List<Point> corners = piece.place().plan().corners();
            assertThat(min[0].doubleValue() * 1000)
                    .isCloseTo(corners.stream().mapToDouble(Point::xMm).min().orElseThrow(), within(0.01));
            assertThat(max[0].doubleValue() * 1000)
                    .isCloseTo(corners.stream().mapToDouble(Point::xMm).max().orElseThrow(), within(0.01));
            assertThat(min[1].doubleValue() * 1000).isCloseTo(piece.place().bottomMm(), within(0.01));
            assertThat(max[1].doubleValue() * 1000).isCloseTo(piece.place().topMm(), within(0.01));
            assertThat(-max[2].doubleValue() * 1000)
                    .isCloseTo(corners.stream().mapToDouble(Point::yMm).min().orElseThrow(), within(0.01));
        }
    }

    @Test
    void soilGroundAndEdgesAreNodesBesideTheBoxes() throws IOException {
        Map<String, NodeModel> nodes = nodes(BoxModel.write(plan));

        for (String kind : List.of("soil", "ground", "edges")) {
            assertThat(nodes).containsKey(kind);
            assertThat(nodes.get(kind).getParent()).as(kind).isNull();
            assertThat(extras(nodes.get(kind))).containsEntry("kind", kind);
        }
        assertThat(nodes.get("soil").getChildren())
                .extracting(NodeModel::getName)
                .isEqualTo(plan.site().filling().planters().stream()
                        .map(volume -> "soil " + volume.planter())
                        .toList());
        assertThat(nodes.get("edges").getChildren())
                .extracting(NodeModel::getName)
                .containsExactly("fence A B", "wall B C");
    }

    @Test
    void everyScrewIsAPinFromHeadToPoint() throws IOException {
        Map<String, NodeModel> nodes = nodes(BoxModel.write(plan));

        int screws = 0;
        for (Box box : plan.boxes()) {
            List<ScrewLine> lines = box.joints().stream()
                    .flatMap(joint -> joint.screws().stream())
                    .filter(line -> line.lengthMm() > 0)
                    .toList();
            screws += lines.size();
            assertThat(positions(nodes.get("screws " + box.plan().name())).getCount())
                    .as("six square faces of two triangles each")
                    .isEqualTo(36 * lines.size());
        }
        assertThat(screws).isGreaterThan(20);
    }

    @Test
    void aPinIsClosedAndFacesOutwards() {
        // A slanting screw 60 mm long and 6 mm wide: by Gauss, its volume from its faces is 6 x 6 x 60 mm3.
        ScrewLine screw = new ScrewLine(100, 200, 300, 0.6, 0, -0.8, 60);
        List<Float> p = TriangleMesh.pins(List.of(screw), 6).positions();
        double volume = 0;
        for (int i = 0; i < p.size(); i += 9) {
            double[][] c = new double[3][3];
            for (int k = 0; k < 9; k++) {
                c[k / 3][k % 3] = 1000.0 * p.get(i + k);
            }
            volume += (c[0][0] * (c[1][1] * c[2][2] - c[1][2] * c[2][1])
                            - c[0][1] * (c[1][0] * c[2][2] - c[1][2] * c[2][0])
                            + c[0][2] * (c[1][0] * c[2][1] - c[1][1] * c[2][0]))
                    / 6;
        }
        assertThat(volume).isCloseTo(6 * 6 * 60, within(1.0));
    }

    @Test
    void soilStandsAsHighAsItIsFilled() throws IOException {
        Map<String, NodeModel> nodes = nodes(BoxModel.write(plan));
        SoilVolume soil = plan.site().filling().planters().get(0);
        Box box = plan.boxes().get(0);
        double floorMm = box.plan().bedMm() + box.plan().platformMm();

        AccessorModel positions = positions(nodes.get("soil " + soil.planter()));

        assertThat(positions.getMin()[1].doubleValue() * 1000).isCloseTo(floorMm, within(0.01));
        assertThat(positions.getMax()[1].doubleValue() * 1000).isCloseTo(floorMm + soil.depthMm(), within(0.01));
    }

    @Test
    void theGroundCoversTheBorderAtItsLevels() {
        TriangleMesh ground = TriangleMesh.under(Ring.rectangle(0, 0, 2000, 1000), place -> place.xMm() / 10, 300);
        double areaMm2 = 0;
        List<Float> p = ground.positions();
        for (int i = 0; i < ground.size(); i += 3) {
            areaMm2 += Ring.signedAreaMm2(List.of(at(p, i), at(p, i + 1), at(p, i + 2)));
        }

        assertThat(areaMm2).as("seen from above, anticlockwise").isCloseTo(2e6, within(100.0));
        for (int i = 0; i < ground.size(); i++) {
            assertThat((double) p.get(3 * i + 1)).isCloseTo(p.get(3 * i) / 10, within(1e-6));
            // A fall of one in ten along x leans the normal back by one in the root of 101.
            assertThat((double) ground.normals().get(3 * i)).isCloseTo(-1 / Math.sqrt(101), within(1e-4));
            assertThat((double) ground.normals().get(3 * i + 1)).isCloseTo(10 / Math.sqrt(101), within(1e-4));
        }
    }

    private static Point at(List<Float> positions, int corner) {
        return new Point(1000.0 * positions.get(3 * corner), -1000.0 * positions.get(3 * corner + 2));
    }

    @Test
    void everyKindOfPieceHasAColourOfItsOwn() throws IOException {
        GltfModel model = new GltfModelReader().readWithoutReferences(new ByteArrayInputStream(BoxModel.write(plan)));

        assertThat(model.getMaterialModels())
                .extracting(material -> List.of(
                        ((MaterialModelV2) material).getBaseColorFactor()[0],
                        ((MaterialModelV2) material).getBaseColorFactor()[1],
                        ((MaterialModelV2) material).getBaseColorFactor()[2]))
                .hasSizeGreaterThan(5)
                .doesNotHaveDuplicates();
    }

    @Test
    void aPieceSaysWhatItIs() throws IOException {
        Map<String, NodeModel> nodes = nodes(BoxModel.write(plan));
        Piece piece = plan.boxes().get(0).pieces().get(0);

        assertThat(extras(nodes.get(piece.label())))
                .containsEntry("kind", "piece")
                .containsEntry("section", piece.section());
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> extras(NodeModel node) {
        return (Map<String, Object>) node.getExtras();
    }

    private static AccessorModel positions(NodeModel node) {
        MeshPrimitiveModel primitive =
                node.getMeshModels().get(0).getMeshPrimitiveModels().get(0);
        return primitive.getAttributes().get("POSITION");
    }

    @Test
    void aSideThatBowsCarriesItsBowAsAMorphTarget() throws IOException {
        Map<String, NodeModel> nodes = nodes(BoxModel.write(plan));
        Box box = plan.boxes().get(0);
        int front = frontAlongTheFirstEdge(box);
        List<Piece> boards = box.pieces().stream()
                .filter(piece -> piece.role() == Piece.Role.WALL && piece.side() == front)
                .toList();

        assertThat(boards).hasSameSizeAs(box.courses());
        for (Piece board : boards) {
            List<BowLine.At> bows = bow(front, board.course());
            double mostMm = bows.stream().mapToDouble(BowLine.At::outMm).max().orElseThrow();
            double leastMm = bows.stream().mapToDouble(BowLine.At::outMm).min().orElseThrow();
            MeshPrimitiveModel primitive = nodes.get(board.label())
                    .getMeshModels()
                    .get(0)
                    .getMeshPrimitiveModels()
                    .get(0);
            AccessorModel shift = primitive.getTargets().get(0).get("POSITION");
            assertThat(mostMm).isGreaterThan(1);
            assertThat(shift.getCount())
                    .isEqualTo(positions(nodes.get(board.label())).getCount());
            // The front looks along y, which is backwards along z; corners stand up to 50 mm beside the greatest bow.
            assertThat(-shift.getMin()[2].doubleValue() * 1000).isCloseTo(mostMm, within(0.03 * mostMm));
            assertThat(-shift.getMax()[2].doubleValue() * 1000).isGreaterThanOrEqualTo(leastMm - 0.03 * mostMm);
        }
    }

    /** The side that looks straight along y, away from the edge A-B. */
    private static int frontAlongTheFirstEdge(Box box) {
        Ring outline = box.plan().outline();
        return IntStream.range(0, outline.size())
                .filter(side -> box.plan().sides().get(side).role() == SidePlan.Role.FRONT
                        && StrictMath.abs(outline.direction(side).yMm()) < 1e-3)
                .findFirst()
                .orElseThrow();
    }

    private List<BowLine.At> bow(int side, int course) {
        return plan.strengthReports().get(0).lines().stream()
                .filter(line -> line.side() == side && line.course() == course)
                .findFirst()
                .orElseThrow()
                .points();
    }

    @Test
    void aDividedPrismHasTheVolumeOfThePrism() {
        Prism prism = new Prism(
                new Ring(List.of(new Point(0, 0), new Point(1975, 0), new Point(2000, 25), new Point(0, 25))), 0, 150);
        TriangleMesh mesh = TriangleMesh.of(prism, 100);

        assertThat(mesh.size()).isGreaterThan(TriangleMesh.of(prism).size() * 10);
        assertThat(volumeMm3(mesh)).isCloseTo(prism.volumeMm3(), within(prism.volumeMm3() * 1e-5));
    }

    /** Divergence theorem: the volume inside closed triangles that look outwards is a sum over them. */
    @Test
    void theTrianglesOfANotchedPieceCloseAndLookOutwards() {
        Ring notched = new Ring(List.of(
                new Point(0, 0),
                new Point(600, 0),
                new Point(600, 145),
                new Point(350, 145),
                new Point(350, 95),
                new Point(300, 95),
                new Point(300, 145),
                new Point(0, 145)));
        Prism prism = new Prism(notched, 100, 125);
        TriangleMesh mesh = TriangleMesh.of(prism);

        assertThat(volumeMm3(mesh)).isCloseTo(prism.volumeMm3(), within(prism.volumeMm3() * 1e-5));
    }

    private static double volumeMm3(TriangleMesh mesh) {
        double volume = 0;
        List<Float> p = mesh.positions();
        for (int i = 0; i < mesh.size(); i += 3) {
            double[] a = {p.get(3 * i), p.get(3 * i + 1), p.get(3 * i + 2)};
            double[] b = {p.get(3 * i + 3), p.get(3 * i + 4), p.get(3 * i + 5)};
            double[] c = {p.get(3 * i + 6), p.get(3 * i + 7), p.get(3 * i + 8)};
            volume += (a[0] * (b[1] * c[2] - b[2] * c[1])
                            - a[1] * (b[0] * c[2] - b[2] * c[0])
                            + a[2] * (b[0] * c[1] - b[1] * c[0]))
                    / 6;
        }
        return volume * 1e9;
    }

    @Test
    void theSamePlanGivesTheSameBytes() {
        assertThat(BoxModel.write(plan)).isEqualTo(BoxModel.write(SamplePlan.metric()));
    }
}

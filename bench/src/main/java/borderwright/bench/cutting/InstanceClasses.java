package borderwright.bench.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** The classes of the table in docs/benchmarks.md, as many instances as were published, drawn anew from seeds. */
final class InstanceClasses {
    /** Every class. */
    static final List<String> NAMES = List.of(
            "uniform",
            "triplets",
            "scholl1",
            "scholl2",
            "scholl3",
            "waescher",
            "schwerin",
            "schoenfield",
            "hard",
            "random",
            "variable",
            "seven",
            "longer",
            "augmented",
            "garden",
            "steps",
            "offcuts",
            "yard",
            "million");

    private InstanceClasses() {}

    /** The sample of a class. */
    static List<Instance> of(String name) {
        return switch (name) {
            case "uniform" ->
                grid(20, 120, 250, 500, 1000).stream()
                        .map(g -> OneLength.uniform(g[0], g[1]))
                        .toList();
            case "triplets" ->
                grid(20, 60, 120, 249, 501).stream()
                        .map(g -> OneLength.triplets(g[0], g[1]))
                        .toList();
            case "scholl1" -> schollOne();
            case "scholl2" -> schollTwo();
            case "scholl3" -> seeds(10).mapToObj(OneLength::schollThree).toList();
            case "waescher" ->
                seeds(17).mapToObj(s -> OneLength.waescher(57 + 10 * s, s)).toList();
            case "schwerin" ->
                seeds(200)
                        .mapToObj(s -> OneLength.schwerin(s % 2 == 0 ? 100 : 120, s))
                        .toList();
            case "schoenfield" ->
                seeds(60).mapToObj(InstanceClasses::schoenfield).toList();
            case "hard" ->
                seeds(10_000)
                        .mapToObj(InstanceClasses::schoenfield)
                        .filter(InstanceClasses::isTight)
                        .limit(28)
                        .toList();
            case "augmented" -> seeds(100).mapToObj(OneLength::augmented).toList();
            default -> ofSeveralLengths(name);
        };
    }

    private static List<Instance> ofSeveralLengths(String name) {
        return switch (name) {
            case "random" -> random();
            case "variable" -> variable();
            case "seven" -> sevenLengths();
            case "longer" -> longer();
            case "garden" -> seeds(200).mapToObj(SeveralLengths::garden).toList();
            case "steps" ->
                seeds(200)
                        .mapToObj(s -> SeveralLengths.gardenWithSteps(s, 8, 5))
                        .toList();
            case "offcuts" ->
                seeds(200).mapToObj(SeveralLengths::gardenWithOffcuts).toList();
            case "yard" ->
                seeds(3).mapToObj(s -> SeveralLengths.yard(10_000, 200, s)).toList();
            case "million" -> List.of(SeveralLengths.yard(1_000_000, 200, 1), SeveralLengths.yard(1_000_000, 1000, 2));
            default -> throw new IllegalArgumentException("no class " + name + "; one of " + NAMES);
        };
    }

    private static Instance schoenfield(int seed) {
        return OneLength.schoenfield(160 + 20 * (seed % 3), seed);
    }

    /**
     * Whether the longest-first rule fails and the boards that the whole length asks for leave less than three tenths of
     * one to spare: what makes the hard 28 hard, from memory.
     */
    private static boolean isTight(Instance instance) {
        PlainCase plain = PlainCase.of(instance.problem());
        long length = IntStream.range(0, plain.size().size())
                .mapToLong(i -> (long) plain.size().get(i) * plain.demand().get(i))
                .sum();
        long capacity = plain.capacity().get(0);
        long boards = (length + capacity - 1) / capacity;
        return boards * capacity - length < 3 * capacity / 10 && plain.firstFit() > boards;
    }

    private static IntStream seeds(int n) {
        return IntStream.range(0, n);
    }

    private static List<int[]> grid(int seeds, int... sizes) {
        List<int[]> grid = new ArrayList<>();
        for (int n : sizes) {
            for (int seed = 0; seed < seeds; seed++) {
                grid.add(new int[] {n, seed});
            }
        }
        return grid;
    }

    private static List<Instance> schollOne() {
        List<Instance> list = new ArrayList<>();
        for (int[] g : grid(20, 50, 100, 200, 500)) {
            for (int capacity : new int[] {100, 120, 150}) {
                for (int least : new int[] {1, 20, 30}) {
                    list.add(OneLength.schollOne(g[0], capacity, least, g[1]));
                }
            }
        }
        return list;
    }

    private static List<Instance> schollTwo() {
        List<Instance> list = new ArrayList<>();
        for (int[] g : grid(10, 50, 100, 200, 500)) {
            for (int perBoard : new int[] {3, 5, 7, 9}) {
                for (int spread : new int[] {20, 50, 90}) {
                    list.add(OneLength.schollTwo(g[0], perBoard, spread, g[1]));
                }
            }
        }
        return list;
    }

    private static List<Instance> random() {
        List<Instance> list = new ArrayList<>();
        for (int[] g : grid(10, 50, 100, 200, 300, 400, 500, 750, 1000)) {
            for (int capacity : new int[] {50, 75, 100, 120, 125, 150, 200, 300, 400, 500, 750, 1000}) {
                for (double low : new double[] {0.1, 0.2}) {
                    for (double high : new double[] {0.7, 0.8}) {
                        list.add(OneLength.delorme(g[0], capacity, low, high, list.size()));
                    }
                }
            }
        }
        return list;
    }

    private static List<Instance> variable() {
        List<Instance> list = new ArrayList<>();
        for (int[] g : grid(2, 25, 50, 100, 200, 500, 1000, 2000)) {
            for (SeveralLengths.Price price : SeveralLengths.Price.values()) {
                for (int kinds : new int[] {3, 5}) {
                    for (int least : new int[] {1, 20, 50}) {
                        list.add(SeveralLengths.variable(g[0], kinds, least, price, list.size()));
                    }
                }
            }
        }
        return list;
    }

    private static List<Instance> sevenLengths() {
        List<Instance> list = new ArrayList<>();
        for (int[] g : grid(10, 100, 200, 500, 1000, 2000)) {
            for (SeveralLengths.Price price : SeveralLengths.Price.values()) {
                list.add(SeveralLengths.sevenLengths(g[0], price, g[1]));
            }
        }
        return list;
    }

    private static List<Instance> longer() {
        List<Instance> list = new ArrayList<>();
        for (int[] g : grid(1, 25, 50, 100, 200, 500, 1000, 2000)) {
            for (double power : new double[] {1, 1.2, 0.6}) {
                for (int kinds : new int[] {3, 5, 7}) {
                    list.add(SeveralLengths.longer(g[0], kinds, power, list.size()));
                }
            }
        }
        return list;
    }
}

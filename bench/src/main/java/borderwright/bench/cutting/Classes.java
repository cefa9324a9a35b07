package borderwright.bench.cutting;

import borderwright.engine.buying.Shopper;
import borderwright.engine.buying.ShoppingAnswer;
import borderwright.engine.buying.ShoppingProblem;
import borderwright.engine.stock.Budget;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Runs classes of seeded instances and prints how many are proven in which time: {@code Classes CLASS [seconds]}. */
public final class Classes {
    private Classes() {}

    public static void main(String[] args) {
        double seconds = args.length > 1 ? Double.parseDouble(args[1]) : 10;
        for (String name : args[0].split(",", -1)) {
            run(name, instances(name), seconds, args.length > 2);
        }
    }

    /** Processor time of this thread, so that a busy computer does not count. */
    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    static List<Instance> instances(String name) {
        List<Instance> list = new ArrayList<>();
        switch (name) {
            case "u" -> {
                for (int n : new int[] {120, 250, 500, 1000}) {
                    for (int seed = 0; seed < 20; seed++) {
                        list.add(Generators.uniform(n, seed));
                    }
                }
            }
            case "t" -> {
                for (int n : new int[] {60, 120, 249, 501}) {
                    for (int seed = 0; seed < 20; seed++) {
                        list.add(Generators.triplets(n, seed));
                    }
                }
            }
            case "scholl1" -> {
                for (int n : new int[] {50, 100, 200, 500}) {
                    for (int c : new int[] {100, 120, 150}) {
                        for (int w : new int[] {1, 20, 30}) {
                            for (int seed = 0; seed < 5; seed++) {
                                list.add(Generators.schollOne(n, c, w, seed));
                            }
                        }
                    }
                }
            }
            case "scholl2" -> {
                for (int n : new int[] {50, 100, 200, 500}) {
                    for (int w : new int[] {3, 5, 7, 9}) {
                        for (int b : new int[] {20, 50, 90}) {
                            for (int seed = 0; seed < 3; seed++) {
                                list.add(Generators.schollTwo(n, w, b, seed));
                            }
                        }
                    }
                }
            }
            case "scholl3" -> {
                for (int seed = 0; seed < 10; seed++) {
                    list.add(Generators.schollThree(seed));
                }
            }
            case "wae" -> {
                for (int seed = 0; seed < 17; seed++) {
                    list.add(Generators.waescher(57 + 10 * seed, seed));
                }
            }
            case "schwerin" -> {
                for (int seed = 0; seed < 50; seed++) {
                    list.add(Generators.schwerin(seed % 2 == 0 ? 100 : 120, seed));
                }
            }
            case "hk" -> {
                for (int seed = 0; seed < 60; seed++) {
                    list.add(Generators.schoenfieldKind(160 + 20 * (seed % 3), seed));
                }
            }
            case "dim" -> {
                int[] capacities = {50, 75, 100, 120, 125, 150, 200, 300, 400, 500, 750, 1000};
                int seed = 0;
                for (int n : new int[] {50, 100, 200, 300, 400, 500, 750, 1000}) {
                    for (int c : capacities) {
                        for (double low : new double[] {0.1, 0.2}) {
                            for (double high : new double[] {0.7, 0.8}) {
                                list.add(Generators.delorme(n, c, low, high, seed++));
                            }
                        }
                    }
                }
            }
            case "vs" -> {
                int seed = 0;
                for (int n : new int[] {25, 50, 100, 200, 500, 1000, 2000}) {
                    for (double power : new double[] {1, 1.2, 0.6}) {
                        for (int kinds : new int[] {3, 5, 7}) {
                            list.add(Generators.several(n, kinds, power, seed++));
                        }
                    }
                }
            }
            case "yard" -> {
                for (int seed = 0; seed < 3; seed++) {
                    list.add(Generators.yard(10_000, 200, seed));
                }
            }
            case "million" -> {
                list.add(Generators.yard(1_000_000, 200, 1));
                list.add(Generators.yard(1_000_000, 1000, 2));
            }
            default -> throw new IllegalArgumentException("no class " + name);
        }
        return list;
    }

    private static void run(String name, List<Instance> instances, double seconds, boolean verbose) {
        double[] times = new double[instances.size()];
        int proven = 0;
        int within1 = 0;
        double worstGap = 0;
        for (int k = 0; k < times.length; k++) {
            ShoppingProblem problem = instances.get(k).problem();
            long start = cpu();
            long deadline = start + (long) (seconds * 1e9);
            ShoppingAnswer answer = Shopper.buy(problem, new Budget(Long.MAX_VALUE, () -> cpu() > deadline));
            times[k] = (cpu() - start) / 1e9;
            proven += answer.proven() ? 1 : 0;
            within1 += answer.proven() && times[k] <= 1 ? 1 : 0;
            worstGap = Math.max(worstGap, answer.gap());
            if (verbose || !answer.proven()) {
                System.out.printf(
                        Locale.ROOT,
                        "  %s cost %d bound %d %s %.3f s%n",
                        instances.get(k).name(),
                        answer.cost(),
                        answer.bound(),
                        answer.proven() ? "proven" : "OPEN",
                        times[k]);
            }
        }
        double sum = Arrays.stream(times).sum();
        Arrays.sort(times);
        System.out.printf(
                Locale.ROOT,
                "%s: %d of %d proven, %d in 1 s; median %.4f s, worst %.3f s, sum %.1f s; worst gap %.2e%n",
                name,
                proven,
                times.length,
                within1,
                times[times.length / 2],
                times[times.length - 1],
                sum,
                worstGap);
    }
}

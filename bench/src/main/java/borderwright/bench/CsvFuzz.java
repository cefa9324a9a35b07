package borderwright.bench;

import borderwright.app.Borderwright;
import borderwright.app.exit.ExitCode;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/**
 * Runs {@code cut} on lists that were damaged at random: each run must end with an answer or with sentences that a person
 * can act on, never with a fault of ours.
 *
 * <p>Case {@code n} of a seed is always the same three files and options: {@code bench/run main CsvFuzz 1 SEED n} runs one
 * alone.
 */
public final class CsvFuzz {
    private static final List<List<String>> SOUND =
            List.of(List.of("""
                    section,length_mm,quantity,label
                    larch,1500,2,side
                    larch,800.5,11,end
                    "spruce, wet",420,30,brace
                    """, """
                    supplier,section,length_mm,price,available,pack
                    Alder,larch,2400,7.50,,
                    Alder,larch,3600,11.20,40,2
                    Birch,larch,4800,15.25,,1
                    Birch,"spruce, wet",3000,4.20,,
                    """, """
                    supplier,tax_percent,delivery,free_over,minimum_order
                    Alder,20,25,150,0
                    Birch,0,35,,40
                    """), List.of("""
                    section;length_in;quantity;label
                    wall;47 15/16;4;P1
                    wall;73 1/2;2;P2
                    post;13 1/4;20;
                    """, """
                    supplier;section;length_in;price;available;pack
                    Elm;wall;96;11,48;;
                    Elm;wall;192;26,40;;
                    Fir;post;96;4,85;;5
                    """, """
                    supplier;tax_percent;delivery;free_over;minimum_order
                    Elm;8,25;79;500;
                    Fir;7,25;;;
                    """), List.of("""
                    label\tsection\tquantity\tlength_m
                    a\tx\t1\t1.2
                    b\tx\t3\t0.6
                    """, """
                    section\tlength_m\tprice
                    x\t2.4\t3
                    x\t3.6\t4.4
                    """, """
                    supplier\tdelivery
                    \t12
                    """));
    private static final List<String> AMOUNTS =
            List.of("0", "3", "3.2", "-1", "1e9", "1e999999999", "1e-999999", "x", "");

    private final Path folder;
    private final long seed;

    /**
     * Damages lists into a folder, over and over.
     *
     * @param folder an existing folder; its files P.csv, B.csv and T.csv are written anew for each case
     * @param seed decides every case
     */
    public CsvFuzz(Path folder, long seed) {
        this.folder = folder;
        this.seed = seed;
    }

    /** Writes case {@code n} and gives the arguments to run it with. */
    public String[] damaged(long n) throws IOException {
        Random random = new Random(seed + n * 0x9E3779B97F4A7C15L);
        List<String> sound = SOUND.get(random.nextInt(SOUND.size()));
        // At least one of the three files is damaged, seldom all.
        int always = random.nextInt(3);
        List<String> names = List.of("P.csv", "B.csv", "T.csv");
        for (int i = 0; i < 3; i++) {
            byte[] bytes = sound.get(i).getBytes(StandardCharsets.UTF_8);
            if (i == always || random.nextInt(4) == 0) {
                bytes = new Damage(List.of(bytes), random.nextLong()).document();
            }
            Files.write(folder.resolve(names.get(i)), bytes);
        }
        String kerf = random.nextInt(8) == 0 ? AMOUNTS.get(random.nextInt(AMOUNTS.size())) : "3";
        String trim = random.nextInt(8) == 0 ? AMOUNTS.get(random.nextInt(AMOUNTS.size())) : "0";
        return new String[] {
            "cut",
            "--pieces=" + folder.resolve("P.csv"),
            "--boards=" + folder.resolve("B.csv"),
            "--terms=" + folder.resolve("T.csv"),
            "--kerf=" + kerf,
            "--trim=" + trim,
            "--effort=100",
            random.nextBoolean() ? "--json" : "--json=false",
            random.nextInt(3) == 0 ? "--skip-bad" : "--skip-bad=false"
        };
    }

    /** What is wrong with how the arguments were answered; empty when all is well. Counts exit codes into {@code kinds}. */
    public static Optional<String> complaint(String[] arguments, Map<String, Long> kinds) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Borderwright.run(arguments, new PrintWriter(out), new PrintWriter(err));
        kinds.merge("exit " + code, 1L, Long::sum);
        String said = err.toString();
        if (code == ExitCode.OUR_FAULT || said.contains("Exception") || said.contains("borderwright.")) {
            return Optional.of("said " + said);
        }
        if (code == ExitCode.BAD_INPUT && said.isBlank()) {
            return Optional.of("refused without a word");
        }
        boolean wrote = !out.toString().isBlank();
        return (code == ExitCode.BAD_INPUT && wrote) || (code == ExitCode.DONE && !wrote)
                ? Optional.of("exit " + code + " with output '" + out + "'")
                : Optional.empty();
    }

    /** Arguments: number of cases, seed, first case; by default a million from 20260303. */
    public static void main(String[] args) throws IOException {
        Path folder = Files.createTempDirectory("csv");
        FuzzRun.run(args, 20260303, seed -> {
            CsvFuzz fuzz = new CsvFuzz(folder, seed);
            return (n, kinds) -> complaint(fuzz.damaged(n), kinds);
        });
    }
}

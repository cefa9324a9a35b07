package borderwright.app.cut;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** Runs {@code cut} on two lists in a temporary folder. */
abstract class CutRuns {
    static final String BOARDS = "supplier,section,length_mm,price,available,pack\nA,larch,2400,7.50,,\n";

    @TempDir
    Path folder = Path.of("");

    record Run(int code, String out, String err) {
        JsonNode json() throws IOException {
            return new ObjectMapper().readTree(out);
        }
    }

    Path file(String name, String text) throws IOException {
        return Files.write(folder.resolve(name), text.getBytes(StandardCharsets.UTF_8));
    }

    Run cut(String pieces, String boards, String... more) throws IOException {
        List<String> args = new ArrayList<>(List.of(
                "--pieces", file("P.csv", pieces).toString(),
                "--boards", file("B.csv", boards).toString()));
        args.addAll(Arrays.asList(more));
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = new CommandLine(new CutCommand())
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(args.toArray(new String[0]));
        return new Run(code, out.toString(), err.toString());
    }
}

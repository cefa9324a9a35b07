package borderwright.app.document;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Renews committed files that are generated, when asked to. */
final class Renewal {
    static final String HOW = "to renew it: ./test app GardenSchemaTest,GardenGuideTest -Drenew=yes";

    private Renewal() {}

    static void renew(Path file, String text) throws IOException {
        if ("yes".equals(System.getProperty("renew"))) {
            Files.writeString(file, text);
        }
    }
}

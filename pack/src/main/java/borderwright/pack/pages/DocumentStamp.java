package borderwright.pack.pages;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Optional;
import java.util.zip.CRC32;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDMetadata;

/**
 * Fixes what would make the bytes of a PDF differ from run to run: its dates and its id.
 *
 * @param date the day that the pack is dated; empty for no date at all
 * @param content what the document says: its id follows from it
 */
record DocumentStamp(Optional<LocalDate> date, String content) {
    private static final String XMP_DATES = "<xmp:(CreateDate|ModifyDate|MetadataDate)>[^<]*</xmp:\\1>";

    void on(PDDocument document) throws IOException {
        CRC32 crc = new CRC32();
        crc.update(content.getBytes(StandardCharsets.UTF_8));
        document.setDocumentId(crc.getValue());
        Calendar day = date.map(DocumentStamp::midnight).orElse(null);
        document.getDocumentInformation().setCreationDate(day);
        PDMetadata metadata = document.getDocumentCatalog().getMetadata();
        if (metadata != null) {
            String xmp = new String(metadata.toByteArray(), StandardCharsets.UTF_8);
            String dated = xmp.replaceAll(
                    XMP_DATES, date.map(d -> "<xmp:$1>" + d + "</xmp:$1>").orElse(""));
            metadata.importXMPMetadata(dated.getBytes(StandardCharsets.UTF_8));
        }
    }

    private static Calendar midnight(LocalDate day) {
        return GregorianCalendar.from(day.atStartOfDay(ZoneOffset.UTC));
    }
}

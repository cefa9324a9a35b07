package borderwright.app.plan;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;

/**
 * The text of a printed pack, read back from the PDF file in the order in which it is read aloud: headings, paragraphs and
 * table cells, as its tags tell them apart.
 */
final class PrintedBlocks {
    /** What reads as one. */
    enum Kind {
        HEADING,
        PARAGRAPH,
        CELL
    }

    /**
     * A piece of text.
     *
     * @param kind what it is tagged as
     * @param text with single spaces
     */
    record Block(Kind kind, String text) {}

    private final Map<PDPage, Map<Integer, String>> texts = new HashMap<>();
    private final List<Block> blocks = new ArrayList<>();

    private PrintedBlocks() {}

    static List<Block> of(byte[] pdf) throws IOException {
        PrintedBlocks reader = new PrintedBlocks();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (PDPage page : document.getPages()) {
                PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
                extractor.processPage(page);
                Map<Integer, String> onPage = new HashMap<>();
                extractor.getMarkedContents().forEach(content -> take(content, onPage));
                reader.texts.put(page, onPage);
            }
            reader.walk(document.getDocumentCatalog().getStructureTreeRoot());
        }
        return reader.blocks;
    }

    private static void take(PDMarkedContent content, Map<Integer, String> onPage) {
        StringBuilder text = new StringBuilder();
        for (Object item : content.getContents()) {
            if (item instanceof TextPosition position) {
                text.append(position.getUnicode());
            } else if (item instanceof PDMarkedContent inner) {
                take(inner, onPage);
            }
        }
        if (content.getMCID() >= 0) {
            onPage.merge(content.getMCID(), text.toString(), String::concat);
        }
    }

    private void walk(PDStructureNode node) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                switch (element.getStructureType()) {
                    case "H1", "H2", "H3", "H4" -> add(Kind.HEADING, element);
                    case "P" -> add(Kind.PARAGRAPH, element);
                    case "TD", "TH" -> {
                        if (hasBlocks(element)) {
                            walk(element);
                        } else {
                            add(Kind.CELL, element);
                        }
                    }
                    default -> walk(element);
                }
            }
        }
    }

    /** A cell that lays things out side by side is none. */
    private static boolean hasBlocks(PDStructureNode node) {
        return node.getKids().stream()
                .filter(PDStructureElement.class::isInstance)
                .map(PDStructureElement.class::cast)
                .anyMatch(
                        kid -> List.of("Table", "P", "H1", "H2", "H3", "Figure").contains(kid.getStructureType())
                                || hasBlocks(kid));
    }

    private void add(Kind kind, PDStructureElement element) {
        StringBuilder text = new StringBuilder();
        gather(element, element.getPage(), text);
        String plain =
                text.toString().replace('\u00a0', ' ').replaceAll("\\s+", " ").strip();
        if (!plain.isEmpty()) {
            blocks.add(new Block(kind, plain));
        }
    }

    private void gather(PDStructureElement element, PDPage above, StringBuilder text) {
        PDPage page = element.getPage() == null ? above : element.getPage();
        for (Object kid : element.getKids()) {
            if (kid instanceof PDStructureElement inner) {
                gather(inner, page, text);
            } else if (kid instanceof PDMarkedContentReference reference) {
                text.append(texts.get(reference.getPage() == null ? page : reference.getPage())
                        .getOrDefault(reference.getMCID(), ""));
            } else if (kid instanceof Integer mcid) {
                text.append(texts.get(page).getOrDefault(mcid, ""));
            }
        }
    }
}

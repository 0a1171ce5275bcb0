package cyclepacket.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;

/** Reads back what a PDF carries: its attachments and how many pages it has. */
public final class Carried {
    private Carried() {}

    /**
     * The associated files of a document, by name.
     *
     * @throws IOException when the bytes are not a PDF
     */
    public static List<Attachment> attachments(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDDocumentNameDictionary names = document.getDocumentCatalog().getNames();
            Optional<PDEmbeddedFilesNameTreeNode> tree =
                    Optional.ofNullable(names).map(PDDocumentNameDictionary::getEmbeddedFiles);
            List<Attachment> attachments = new ArrayList<>();
            if (tree.isPresent() && tree.get().getNames() != null) {
                for (Map.Entry<String, PDComplexFileSpecification> file :
                        tree.get().getNames().entrySet()) {
                    attachments.add(attachment(file.getKey(), file.getValue()));
                }
            }
            return attachments;
        }
    }

    private static Attachment attachment(String name, PDComplexFileSpecification file) throws IOException {
        String type = Optional.ofNullable(file.getEmbeddedFile().getCOSObject().getNameAsString(COSName.SUBTYPE))
                .orElse("application/octet-stream");
        String description = Optional.ofNullable(file.getFileDescription()).orElse("");
        return new Attachment(name, type, description, file.getEmbeddedFile().toByteArray());
    }

    /** @throws IOException when the bytes are not a PDF */
    public static int pages(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        }
    }
}

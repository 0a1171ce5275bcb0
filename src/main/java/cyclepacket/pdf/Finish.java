package cyclepacket.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** The last hand on a laid-out PDF: facts, colour profile, attachments and identifier, none of them from the clock. */
final class Finish {
    private static final String PROGRAM = "Cyclepacket";
    private static final DateTimeFormatter PDF_DATE =
            DateTimeFormatter.ofPattern("'D:'uuuuMMdd'000000+00''00'''", Locale.ROOT);

    private final PDDocument document;
    private final Sheet sheet;
    private final String date;

    Finish(PDDocument document, Sheet sheet) {
        this.document = document;
        this.sheet = sheet;
        this.date = PDF_DATE.format(sheet.facts().dated());
    }

    void apply(byte[] colourProfile) throws IOException {
        writeFacts();
        addOutputIntent(colourProfile);
        addAttachments();
        LinkNames.apply(document);
        document.setDocumentId(identifier(sheet.facts().fixedId()));
    }

    private void writeFacts() throws IOException {
        PDDocumentInformation information = new PDDocumentInformation();
        information.setTitle(sheet.facts().title());
        information.setSubject(sheet.facts().subject());
        information.setCreator(PROGRAM);
        information.setProducer(PROGRAM);
        information.getCOSObject().setString(COSName.CREATION_DATE, date);
        information.getCOSObject().setString(COSName.MOD_DATE, date);
        document.setDocumentInformation(information);
        PDDocumentCatalog catalog = document.getDocumentCatalog();
        catalog.setMetadata(new PDMetadata(document, new ByteArrayInputStream(Xmp.packet(sheet.facts(), PROGRAM))));
        catalog.setLanguage(sheet.facts().language());
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setDisplayDocTitle(true);
        catalog.setViewerPreferences(preferences);
    }

    /** Written by hand: the library's own way loads the computer's colour system only to count three channels. */
    private void addOutputIntent(byte[] colourProfile) throws IOException {
        PDStream profile = new PDStream(document, new ByteArrayInputStream(colourProfile), COSName.FLATE_DECODE);
        profile.getCOSObject().setInt(COSName.N, 3);
        COSDictionary intent = new COSDictionary();
        intent.setItem(COSName.TYPE, COSName.getPDFName("OutputIntent"));
        intent.setItem(COSName.S, COSName.getPDFName("GTS_PDFA1"));
        intent.setString(COSName.OUTPUT_CONDITION_IDENTIFIER, "sRGB IEC61966-2.1");
        intent.setString(COSName.INFO, "sRGB IEC61966-2.1");
        intent.setItem(COSName.DEST_OUTPUT_PROFILE, profile);
        COSArray intents = new COSArray();
        intents.add(intent);
        document.getDocumentCatalog().getCOSObject().setItem(COSName.OUTPUT_INTENTS, intents);
    }

    private void addAttachments() throws IOException {
        if (sheet.attachments().isEmpty()) {
            return;
        }
        List<Attachment> sorted = sheet.attachments().stream()
                .sorted(Comparator.comparing(Attachment::name))
                .toList();
        Map<String, PDComplexFileSpecification> files = new LinkedHashMap<>();
        COSArray associated = new COSArray();
        for (Attachment attachment : sorted) {
            PDComplexFileSpecification file = specification(attachment);
            files.put(attachment.name(), file);
            associated.add(file);
        }
        PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
        tree.setNames(files);
        PDDocumentCatalog catalog = document.getDocumentCatalog();
        PDDocumentNameDictionary names = new PDDocumentNameDictionary(catalog);
        names.setEmbeddedFiles(tree);
        catalog.setNames(names);
        catalog.getCOSObject().setItem(COSName.AF, associated);
    }

    private PDComplexFileSpecification specification(Attachment attachment) throws IOException {
        byte[] content = attachment.content();
        PDEmbeddedFile embedded = new PDEmbeddedFile(document, new ByteArrayInputStream(content), COSName.FLATE_DECODE);
        embedded.setSubtype(attachment.mediaType());
        embedded.setSize(content.length);
        COSDictionary parameters = (COSDictionary) embedded.getCOSObject().getDictionaryObject(COSName.PARAMS);
        parameters.setItem(COSName.MOD_DATE, new COSString(date));
        PDComplexFileSpecification file = new PDComplexFileSpecification();
        file.setFile(attachment.name());
        file.setFileUnicode(attachment.name());
        file.setFileDescription(attachment.description());
        file.setEmbeddedFile(embedded);
        file.setEmbeddedFileUnicode(embedded);
        file.getCOSObject().setItem(COSName.AF_RELATIONSHIP, COSName.getPDFName("Source"));
        return file;
    }

    private static long identifier(String seed) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(seed.getBytes(StandardCharsets.UTF_8));
            return java.nio.ByteBuffer.wrap(digest).getLong();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}

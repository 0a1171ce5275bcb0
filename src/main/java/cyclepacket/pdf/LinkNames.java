package cyclepacket.pdf;

import java.io.IOException;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Gives every link a name that can be read aloud (PDF/UA-1, 7.18.5): its title, or else its own words. */
final class LinkNames {
    private LinkNames() {}

    /** Before layout: the renderer takes the name from the title. */
    static void prepare(Document document) {
        for (Element element : Tree.elements(document.getDocumentElement())) {
            boolean isLink = Tree.name(element).equals("a") && element.hasAttribute("href");
            if (isLink && element.getAttribute("title").isBlank()) {
                element.setAttribute("title", element.getTextContent().strip().replaceAll("\\s+", " "));
            }
        }
    }

    /** After layout: the renderer names the words of a link, and leaves the area that is pressed without a name. */
    static void apply(PDDocument document) throws IOException {
        PDStructureTreeRoot structure = document.getDocumentCatalog().getStructureTreeRoot();
        PDNumberTreeNode parents = structure == null ? null : structure.getParentTree();
        for (PDPage page : document.getPages()) {
            for (PDAnnotation annotation : page.getAnnotations()) {
                if (annotation instanceof PDAnnotationLink && parents != null) {
                    name(annotation, parents);
                }
            }
        }
    }

    private static void name(PDAnnotation link, PDNumberTreeNode parents) throws IOException {
        Object parent = parents.getValue(link.getStructParent());
        COSDictionary words = dictionary(parent);
        if (words != null && words.getString(COSName.ALT) != null) {
            link.setContents(words.getString(COSName.ALT));
        }
    }

    private static COSDictionary dictionary(Object parent) {
        if (parent instanceof org.apache.pdfbox.pdmodel.common.COSObjectable holder) {
            Object held = holder.getCOSObject();
            Object real = held instanceof COSObject reference ? reference.getObject() : held;
            return real instanceof COSDictionary found ? found : null;
        }
        return null;
    }
}

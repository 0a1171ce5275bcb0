package cyclepacket.pdf;

import com.openhtmltopdf.pdfboxout.PageSupplier;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * Pages of one document that share the labels of what is no content. The renderer labels the ground and border of
 * every box as an artifact, drawn or not, each with a label of its own: they were more than half of a packet's objects,
 * and the library searched all of a page's labels for each new one. Two labels serve the whole document.
 */
final class SharedLabels implements PageSupplier {
    private final Labels labels = new Labels();

    @Override
    public PDPage requestPage(PDDocument document, float width, float height, int number, int shadow) {
        PDPage page = new PDPage(new PDRectangle(width, height));
        COSDictionary resources = new COSDictionary();
        resources.setItem(COSName.PROPERTIES, labels);
        page.setResources(new PDResources(resources));
        document.addPage(page);
        return page;
    }

    /** Has each label already when it is asked, under the name of its kind. */
    private static final class Labels extends COSDictionary {
        private static final COSName PAGINATION = COSName.getPDFName("Pagination");
        private static final COSName LAYOUT = COSName.getPDFName("Layout");

        Labels() {
            setItem(PAGINATION, label(PAGINATION));
            setItem(LAYOUT, label(LAYOUT));
        }

        private static COSDictionary label(COSName type) {
            COSDictionary label = new COSDictionary();
            label.setItem(COSName.TYPE, type);
            label.setDirect(true);
            return label;
        }

        @Override
        public boolean containsValue(Object label) {
            return true;
        }

        /**
         * A rule or a box around a text serves the layout, and needs no place on the page; ISO 32000-1, 14.8.2.2.2,
         * keeps the kind "background" for grounds that run over the whole width or height of a page.
         */
        @Override
        public COSName getKeyForValue(Object label) {
            return PAGINATION.equals(((COSDictionary) label).getCOSName(COSName.TYPE)) ? PAGINATION : LAYOUT;
        }
    }
}

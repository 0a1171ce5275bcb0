package cyclepacket.pdf;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/** Pages to typeset in tests. */
final class Samples {
    static final Path TEMPLATES = Path.of("templates");

    static final String STYLE = """
            @page { size: letter; margin: 18mm 16mm 20mm 16mm;
              @bottom-left { content: "Plan DEMO"; font-family: Andika; font-size: 9pt; }
              @bottom-right { content: "Page " counter(page) " of " counter(pages); font-family: Andika; font-size: 9pt; } }
            body { font-family: Andika, "Noto Sans"; font-size: 13pt; line-height: 1.4; }
            table { border-collapse: collapse; -fs-table-paginate: paginate; }
            td, th { border: 1pt solid #000; padding: 3pt; }
            h2 { page-break-before: always; }
            """;

    private Samples() {}

    static DocumentFacts facts() {
        return new DocumentFacts(
                "Packet DEMO issue 1", "Injection packet, invented", "en", LocalDate.of(2027, 3, 1), "K7Q2-DEMO");
    }

    static Sheet sheet(String xhtml) {
        return new Sheet(xhtml, facts(), List.of());
    }

    static Sheet page(String body) {
        return sheet(xhtml("", body));
    }

    static String xhtml(String moreStyle, String body) {
        return "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\"><head><style>" + STYLE + moreStyle
                + "</style></head><body>" + body + "</body></html>";
    }

    static Sheet withAttachments() {
        byte[] plan = "plan: DEMO\n".getBytes(StandardCharsets.UTF_8);
        return new Sheet(
                xhtml("", packet(3)),
                facts(),
                List.of(
                        new Attachment("plan.yaml", "text/plain", "The plan of this issue", plan),
                        new Attachment("clinic.yaml", "text/plain", "The clinic file", plan)));
    }

    /** A page with every kind of content that a packet has. */
    static String packet(int parts) {
        StringBuilder body = new StringBuilder("<h1>Start here</h1><p>Give 187.5\u00A0units at 8:00 p.m.</p>");
        for (int part = 1; part <= parts; part++) {
            body.append(part(part));
        }
        return body.toString();
    }

    private static String part(int number) {
        String rows = "<tr><td>Monday, 8 March</td><td><b>187.5\u00A0units</b></td><td>\u2610</td></tr>".repeat(14);
        return "<h2>Part " + number + "</h2><h3>Evenings</h3><ul><li>Wash your hands.</li><li>Take the pen.</li></ul>"
                + "<table><thead><tr><th scope=\"col\">Evening</th><th scope=\"col\">Give</th>"
                + "<th scope=\"col\">Done</th></tr></thead><tbody>" + rows + "</tbody></table>"
                + "<p>Name: \u0386\u03BD\u03BD\u03B1, \u00F1and\u00FA. <em>Call us</em>: 555-0100.</p>"
                + "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"120\" height=\"40\" viewBox=\"0 0 120 40\""
                + " alt=\"A window that shows EXAMPLE 25\"><rect x=\"1\" y=\"1\" width=\"118\" height=\"38\""
                + " fill=\"none\" stroke=\"#000\"/><text x=\"60\" y=\"26\" font-size=\"16\" font-weight=\"bold\""
                + " text-anchor=\"middle\">EXAMPLE 25</text></svg>";
    }
}

package cyclepacket.pdf;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Assertions;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

/**
 * Asks a validator that is not ours whether a PDF keeps the published rules.
 *
 * <p>Source: ISO 14289-1 (PDF/UA-1) and ISO 19005-3 level A (PDF/A-3a), by the profiles of veraPDF 1.30.
 */
public final class Conformity {
    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private Conformity() {}

    /** Fails with the number of every broken rule. */
    public static void assertConforms(byte[] pdf) {
        List<String> broken = brokenRules(pdf);
        Assertions.assertTrue(broken.isEmpty(), () -> "broken rules: " + broken);
    }

    /** Broken rules such as {@code PDFUA_1 7.1-11 (3 times)}; empty when the file keeps both standards. */
    public static List<String> brokenRules(byte[] pdf) {
        List<String> broken = new ArrayList<>();
        for (PDFAFlavour flavour : List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_3_A)) {
            broken.addAll(brokenRules(pdf, flavour));
        }
        return broken;
    }

    private static List<String> brokenRules(byte[] pdf, PDFAFlavour flavour) {
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
            ValidationResult result = validator.validate(parser);
            List<String> broken = new ArrayList<>();
            result.getFailedChecks()
                    .forEach((rule, times) -> broken.add(flavour.name() + " " + rule.getClause() + "-"
                            + rule.getTestNumber() + " (" + times + " times)"));
            if (!result.isCompliant() && broken.isEmpty()) {
                broken.add(flavour.name() + " not conforming, rule not told");
            }
            return broken;
        } catch (Exception e) {
            throw new AssertionError("the validator cannot read the file", e);
        }
    }
}

package cyclepacket.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseUnit;
import cyclepacket.quantity.UnitClash;
import cyclepacket.quantity.Volume;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.util.Map;
import org.fhir.ucum.Decimal;
import org.fhir.ucum.UcumEssenceService;
import org.fhir.ucum.UcumException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Our units against the Unified Code for Units of Measure (UCUM), as the open-source library org.fhir:ucum with its own
 * copy of the UCUM definitions works them out; a milligram is a thousand micrograms by definition.
 */
class UnitNamesTest {
    private static final Map<DoseUnit, String> CODES =
            Map.of(DoseUnit.UNITS, "[iU]", DoseUnit.MG, "mg", DoseUnit.MCG, "ug");
    private static UcumEssenceService ucum;

    @BeforeAll
    static void open() throws IOException, UcumException {
        try (InputStream definitions = UcumEssenceService.class.getResourceAsStream("/ucum-essence.xml")) {
            ucum = new UcumEssenceService(definitions);
        }
    }

    @Test
    void hasACodeForEveryUnit() {
        for (DoseUnit unit : DoseUnit.values()) {
            assertNull(ucum.validate(CODES.get(unit)), unit.word());
        }
        assertNull(ucum.validate("mL"));
        assertNull(ucum.validate("uL"));
    }

    @ParameterizedTest
    @CsvSource({"5 mg, MCG", "0.25 mg, MCG", "250 mcg, MG", "11.5 mcg, MG"})
    void convertsMilligramsAndMicrogramsAsTheCodeDoes(String text, DoseUnit to) throws UcumException {
        Dose dose = Dose.parse(text);
        Decimal there = ucum.convert(new Decimal(dose.number().toPlainString()), CODES.get(dose.unit()), CODES.get(to));
        if (text.equals("11.5 mcg")) {
            // 0.0115 mg has more than three decimals, so it is refused and not rounded.
            assertThrows(cyclepacket.quantity.Refusal.class, () -> dose.in(to));
            return;
        }
        assertEquals(0, new BigDecimal(there.asDecimal()).compareTo(dose.in(to).number()));
    }

    @Test
    void countsAThousandMicrolitresToTheMillilitre() throws UcumException {
        Volume volume = Volume.parse("0.75 mL");
        Decimal microlitres = ucum.convert(new Decimal("0.75"), "mL", "uL");
        assertEquals(0, new BigDecimal(microlitres.asDecimal()).compareTo(BigDecimal.valueOf(volume.microlitres())));
    }

    /** International units are arbitrary: the code converts them to no mass, and neither do we. */
    @Test
    void convertsUnitsToNoMass() throws UcumException {
        assertFalse(ucum.isComparable("[iU]", "mg"));
        assertThrows(UnitClash.class, () -> Dose.parse("5 units").in(DoseUnit.MG));
        assertTrue(ucum.isComparable("mg", "ug"));
    }

    /** The letter U alone is another unit, that of enzymes: a trap for every reader of other systems' orders. */
    @Test
    void knowsThatTheLetterUIsAnotherUnit() throws UcumException {
        assertNull(ucum.validate("U"));
        assertFalse(ucum.isComparable("U", "[iU]"));
    }
}

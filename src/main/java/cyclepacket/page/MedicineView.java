package cyclepacket.page;

import java.util.List;
import java.util.Optional;

/**
 * One medicine's page.
 *
 * @param form {@code pen} or {@code syringe}
 * @param window {@code owed}, {@code left} or {@code none}
 * @param primeEachTime true when the product is primed before every injection
 * @param hold seconds to hold
 * @param needle for example {@code 30 gauge, 8 mm}
 * @param openedDays days a cartridge may be used once opened
 * @param alcohol true when the clinic cleans the skin with alcohol swabs
 * @param exact true when it is given at an exact minute
 * @param others the names of the other filled syringes, which this one must not be taken for
 * @param avoid what the patient avoids and has to look for on the box
 */
public record MedicineView(
        String anchor,
        String name,
        String doorName,
        String purpose,
        String form,
        String window,
        boolean primeEachTime,
        String hold,
        Optional<String> needle,
        Optional<String> openedDays,
        boolean alcohol,
        boolean exact,
        List<String> others,
        List<String> avoid) {
    public MedicineView {
        others = List.copyOf(others);
        avoid = List.copyOf(avoid);
    }
}

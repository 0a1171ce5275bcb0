package cyclepacket.page;

import java.util.List;
import java.util.Optional;

/**
 * One medicine's page.
 *
 * @param form {@code pen}, {@code syringe}, {@code vial} or {@code taken}
 * @param window {@code owed}, {@code left} or {@code none}
 * @param primeEachTime true when the product is primed before every injection
 * @param hold seconds to hold
 * @param needle for example {@code 30 gauge, 8 mm}
 * @param openedDays days a cartridge may be used once opened
 * @param alcohol true when the clinic cleans the skin with alcohol swabs
 * @param exact true when it is given at an exact minute
 * @param others the names of the other filled syringes, which this one must not be taken for
 * @param avoid what the patient avoids and has to look for on the box
 * @param facts what else its form and its row say
 * @param vial what a vial's page needs
 * @param taken what the page of a medicine without a needle needs
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
        List<String> avoid,
        FormFacts facts,
        Optional<VialView> vial,
        Optional<TakenView> taken) {
    public MedicineView {
        others = List.copyOf(others);
        avoid = List.copyOf(avoid);
    }

    /**
     * What else its form and its row say.
     *
     * @param wholePen true when the pen is thrown away whole
     * @param bubble {@code leave} or {@code push-out}
     * @param keepDark true when it must be kept from light
     * @param muscle true when it goes into a muscle
     * @param waits true when its first day is told on the phone and was not yet
     * @param stopRule when the patient stops, in the clinic's own words
     */
    public record FormFacts(
            boolean wholePen,
            Optional<String> bubble,
            boolean keepDark,
            boolean muscle,
            boolean waits,
            Optional<String> stopRule) {}
}

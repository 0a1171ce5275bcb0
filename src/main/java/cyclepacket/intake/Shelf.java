package cyclepacket.intake;

import cyclepacket.plan.Medicine;
import cyclepacket.plan.Syringe;
import cyclepacket.quantity.Dose;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The medicine files that were found, by id: their units even where the rest is broken, and their records. */
final class Shelf {
    private final Map<String, Sheet> sheets = new LinkedHashMap<>();
    private final Map<String, Medicine> medicines = new LinkedHashMap<>();

    /** @param syringe the empty syringe that the sheet names, if it names one */
    void put(String id, Sheet sheet, Part<Syringe> syringe) {
        sheets.put(id, sheet);
        if (sheet.root().isPresent()) {
            new MedicineBuilder(sheet, syringe).medicine().value().ifPresent(medicine -> medicines.put(id, medicine));
        }
    }

    Map<String, Sheet> sheets() {
        return sheets;
    }

    Map<String, Medicine> medicines() {
        return medicines;
    }

    Amounts amounts(String id) {
        return new Amounts(id, Optional.ofNullable(sheets.get(id)).flatMap(MedicineBuilder::unit));
    }

    /** A size that the medicine is sold in; another one is reported with the nearest. */
    Part<Dose> size(String id, Field field) {
        Part<Dose> size = amounts(id).read(field);
        Medicine medicine = medicines.get(id);
        if (!size.isPresent()
                || medicine == null
                || medicine.sizeLabelled(size.get()).isPresent()) {
            return size;
        }
        Dose nearest = medicine.sizes().stream()
                .map(Medicine.Size::label)
                .min(Comparator.comparing(label -> label.max(size.get()).minus(label.min(size.get()))))
                .orElseThrow();
        field.stop(
                "SIZE-UNKNOWN",
                id + " is not sold in a size of " + size.get(),
                "read the box again; the nearest size is " + nearest);
        return Part.absent();
    }
}

package cyclepacket.page;

import cyclepacket.plan.Medicine;
import cyclepacket.plan.Plan;
import cyclepacket.plan.PlanFiles;
import cyclepacket.plan.Revision;
import cyclepacket.quantity.Dose;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a navigator says on the phone for the changes of one issue, amounts digit by digit. */
public final class CallWords {
    private CallWords() {}

    /** @param templates the folder with the wording; one sentence a line, in the order of the call */
    public static List<String> of(Path templates, PlanFiles files) {
        ChartWords words = new ChartWords(Wording.load(templates, ChartCopy.LANGUAGE));
        Plan plan = files.plan();
        List<String> lines = new ArrayList<>();
        lines.add("Ask for two identifiers. Do not say them first.");
        for (Revision line : plan.revised()) {
            if (line.issue() == plan.issue() && line.what() == Revision.What.DOSE) {
                String id = line.of().orElseThrow();
                Optional<Medicine> medicine = files.medicine(id);
                medicine.ifPresent(own -> lines.add("Say: " + own.name() + ", " + said(words, line, own) + ", from "
                        + day(words, line.from().orElse(line.on())) + " on."));
            }
        }
        lines.add("Have the patient cross out every evening that differs, write the new amount, and read back tonight"
                + " and tomorrow: day, amount, time.");
        lines.add("Ask for the last window number, the box in the pen, and what is left at home.");
        return lines;
    }

    private static String said(ChartWords words, Revision line, Medicine medicine) {
        String number = line.now().orElseThrow().split(" ")[0];
        Dose dose = Dose.of(number, medicine.unit());
        return words.said(dose) + " " + words.amounts().unit(dose);
    }

    private static String day(ChartWords words, LocalDate date) {
        return words.clock().day(date).full().replace(AmountWords.NO_BREAK, ' ');
    }
}

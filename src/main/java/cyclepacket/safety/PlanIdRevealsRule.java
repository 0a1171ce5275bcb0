package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Plan;
import java.text.Normalizer;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The plan's id is a file name and stands in lists: it must not say who the patient is. */
final class PlanIdRevealsRule extends Rule {
    /** Letters and digits in a row below which a likeness is chance; common practice, no published source. */
    private static final int SHORTEST_NAME_PART = 3;

    /** Digits of a number, likewise; common practice, no published source. */
    private static final int SHORTEST_NUMBER = 4;

    private static final List<String> DATE_FORMS = List.of("uuuuMMdd", "ddMMuuuu", "MMdduuuu", "yyMMdd");

    PlanIdRevealsRule() {
        super("PLAN-ID-REVEALS", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        Plan.Patient patient = plan.plan().patient();
        String id = plain(plan.plan().id());
        List<Finding> found = new ArrayList<>();
        if (hasNamePart(id, patient.name())) {
            found.add(finding(plan, "the plan id contains a part of the patient's name"));
        }
        if (patient.number().filter(number -> hasNumber(id, plain(number))).isPresent()) {
            found.add(finding(plan, "the plan id gives the patient's number away"));
        }
        if (patient.born().filter(born -> hasDate(id, born)).isPresent()) {
            found.add(finding(plan, "the plan id gives the patient's birth date away"));
        }
        return found;
    }

    private Finding finding(ComputedPlan plan, String text) {
        return stop(plan.inPlan("/plan"), text, "choose an id that says nothing of the patient, for example SM-04417");
    }

    private static boolean hasNamePart(String id, String name) {
        return Stream.of(name.split("[^\\p{L}\\p{M}]+"))
                .map(PlanIdRevealsRule::plain)
                .anyMatch(part -> part.length() >= SHORTEST_NAME_PART && id.contains(part));
    }

    private static boolean hasNumber(String id, String number) {
        return !number.isEmpty() && (id.equals(number) || (number.length() >= SHORTEST_NUMBER && id.contains(number)));
    }

    private static boolean hasDate(String id, LocalDate born) {
        return DATE_FORMS.stream()
                .map(form -> DateTimeFormatter.ofPattern(form, Locale.ROOT).format(born))
                .anyMatch(id::contains);
    }

    /** Letters and digits only, without accents, in lower case. */
    private static String plain(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("[^\\p{L}\\p{Nd}]", "")
                .toLowerCase(Locale.ROOT);
    }
}

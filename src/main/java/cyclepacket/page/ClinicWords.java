package cyclepacket.page;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import cyclepacket.plan.Clinic;
import cyclepacket.plan.ClinicTexts;
import cyclepacket.plan.HouseRules;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.Pattern;
import cyclepacket.plan.PlanFiles;
import cyclepacket.plan.Protocol;
import cyclepacket.plan.StockVial;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The texts of a clinic's own files in another language: each is looked up as it stands, so that an edited text is no
 * longer found and stays as the clinic wrote it. Names of medicines stay as they stand on the box.
 */
public final class ClinicWords {
    private final PlanFiles files;
    private final Map<String, String> texts;
    private final List<Finding> missing = new ArrayList<>();
    private final Set<String> heard = new LinkedHashSet<>();

    private ClinicWords(PlanFiles files, String language) {
        this.files = files;
        texts = files.clinic().texts().in(language);
    }

    /** The same files with these texts in the language; the very same object when the clinic wrote none for it. */
    public static PlanFiles in(PlanFiles files, String language) {
        ClinicWords words = new ClinicWords(files, language);
        return words.texts.isEmpty() ? files : words.spoken();
    }

    /** A note for each text that the patient reads and that the clinic wrote no translation of. */
    public static List<Finding> missing(PlanFiles files, String language) {
        ClinicWords words = new ClinicWords(files, language);
        words.spoken();
        return Finding.sorted(words.missing);
    }

    /** The texts that stay in the clinic's own language on pages of another, each once. */
    static List<String> untranslated(PlanFiles spoken, String language) {
        ClinicWords words = new ClinicWords(spoken, language);
        words.spoken();
        return words.heard.stream()
                .filter(text -> !text.isBlank() && !words.texts.containsValue(text))
                .toList();
    }

    private PlanFiles spoken() {
        Map<String, Medicine> medicines = new LinkedHashMap<>();
        files.medicines().forEach((id, medicine) -> medicines.put(id, medicine(medicine)));
        files.plan().avoid().forEach(thing -> say(thing, files.planFile(), "/avoid"));
        return new PlanFiles(
                files.plan(),
                clinic(files.clinic()),
                protocol(files.protocol()),
                medicines,
                files.planFile(),
                files.clinicFile(),
                files.protocolFile(),
                files.medicineFiles());
    }

    private String say(String text, String file, String pointer) {
        if (!texts.containsKey(text)) {
            heard.add(text);
            missing.add(Finding.note(
                    "CLINIC-TEXT-UNTRANSLATED",
                    Place.at(file, pointer),
                    "\"" + text + "\" stays in English on the patient's pages",
                    "write what it is called under translations of the clinic file"));
        }
        return texts.getOrDefault(text, text);
    }

    private Medicine medicine(Medicine own) {
        String file = files.medicineFiles().getOrDefault(own.id(), files.planFile());
        own.device().stockVial().ifPresent(vial -> say(vial.syringe().name(), file, "/device/syringe"));
        own.device().stockVial().flatMap(StockVial::oilName).ifPresent(oil -> say(oil, file, "/oil"));
        own.device().mixedVial().ifPresent(vial -> say(vial.syringe().name(), file, "/device/syringe"));
        return new Medicine(
                own.id(),
                own.name(),
                say(own.doorName(), file, "/door-name"),
                say(own.purpose(), file, "/purpose"),
                own.device(),
                own.unit(),
                own.route(),
                own.hold(),
                own.sizes(),
                own.daily(),
                own.exactTime(),
                own.mostHoursBetween(),
                own.store(),
                own.contains(),
                own.source());
    }

    private Protocol protocol(Protocol own) {
        List<Protocol.Row> rows = new ArrayList<>();
        for (Protocol.Row row : own.rows()) {
            String pointer = "/rows/" + rows.size() + "/stop-rule";
            Pattern pattern = row.pattern();
            rows.add(new Protocol.Row(
                    row.medicine(),
                    row.firstDay(),
                    row.lastDay(),
                    new Pattern(
                            pattern.times(),
                            pattern.everyDays(),
                            pattern.everyHours(),
                            pattern.halfFrom(),
                            pattern.hoursAfter(),
                            pattern.stopRule().map(rule -> say(rule, files.protocolFile(), pointer))),
                    row.amount()));
        }
        List<Protocol.Visit> visits = new ArrayList<>();
        for (Protocol.Visit visit : own.visits()) {
            String what = say(visit.what(), files.protocolFile(), "/visits/" + visits.size() + "/what");
            visits.add(new Protocol.Visit(visit.on(), visit.at(), visit.hoursAfter(), what));
        }
        return new Protocol(
                own.id(),
                own.title(),
                own.anchors(),
                own.triggerBefore(),
                own.stimulationDays(),
                rows,
                visits,
                own.anchoring(),
                own.aim());
    }

    private Clinic clinic(Clinic own) {
        Map<String, String> lines = new LinkedHashMap<>();
        own.texts()
                .ownLines()
                .forEach((page, line) -> lines.put(page, say(line, files.clinicFile(), "/own-lines/" + page)));
        return new Clinic(
                own.name(),
                own.zone(),
                own.currency(),
                own.country(),
                phone(own.day(), "day"),
                phone(own.night(), "night"),
                own.emergency(),
                own.closed(),
                rules(own.rules()),
                own.pharmacy(),
                own.approved(),
                own.supplies(),
                new ClinicTexts(lines, own.texts().translations()),
                own.with());
    }

    private Clinic.Phone phone(Clinic.Phone own, String which) {
        return new Clinic.Phone(own.number(), say(own.hours(), files.clinicFile(), "/phones/" + which + "/hours"));
    }

    private HouseRules rules(HouseRules own) {
        Map<String, String> missed = new LinkedHashMap<>(own.missed());
        missed.replaceAll((id, line) ->
                files.medicines().containsKey(id) ? say(line, files.clinicFile(), "/house-rules/missed/" + id) : line);
        Map<String, String> thresholds = new LinkedHashMap<>(own.callThresholds());
        thresholds.computeIfPresent(
                "weight-gain",
                (key, line) -> say(line, files.clinicFile(), "/house-rules/call-thresholds/weight-gain"));
        Optional<String> offTable = own.offTable().map(line -> say(line, files.clinicFile(), "/house-rules/off-table"));
        return new HouseRules(
                own.splitDose(),
                own.betweenMarks(),
                own.inUseDayOne(),
                own.smallRemainder(),
                own.triggerLead(),
                own.noCallBy(),
                own.triggerEvening(),
                own.chainPartUsed(),
                own.mayCallDoses(),
                own.cycleDayOneCutOff(),
                thresholds,
                own.spareNeedles(),
                own.swabSkin(),
                missed,
                offTable,
                own.firstStimulationDay(),
                own.forms());
    }
}

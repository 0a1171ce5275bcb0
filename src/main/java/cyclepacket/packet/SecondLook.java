package cyclepacket.packet;

import cyclepacket.course.Anchors;
import cyclepacket.course.Course;
import cyclepacket.plan.Anchor;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.Plan;
import cyclepacket.plan.PlanFiles;
import cyclepacket.plan.RecordLine;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.Refusal;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What the second person keys in: a comparison of values finds what a tick does not (an independent double check, as
 * medication-safety bodies describe it).
 */
final class SecondLook {
    private static final DateTimeFormatter DAY_AND_HOUR = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    private final PlanFiles files;
    private final Plan plan;
    private final Anchors anchors;
    private final Anchor first;
    private final List<Question> questions = new ArrayList<>();

    private SecondLook(PlanFiles files, Course course) {
        this.files = files;
        plan = files.plan();
        anchors = course.anchors();
        first = course.start();
    }

    /** Every question for this plan, in the order of a navigator's papers; for a cancelled cycle only when it ends. */
    static List<Question> questions(PlanFiles files, Course course) {
        SecondLook look = new SecondLook(files, course);
        look.identifier();
        look.start();
        if (course.cancelledFrom().isPresent()) {
            look.end(course.cancelledFrom().get());
            return List.copyOf(look.questions);
        }
        files.plan().doses().keySet().stream().sorted().forEach(look::doses);
        look.hours();
        look.windows();
        files.medicines().values().forEach(look::sizes);
        return List.copyOf(look.questions);
    }

    private void ask(String asks, String names, Predicate<String> matches) {
        questions.add(new Question(asks, names, answer -> matches.test(answer.strip())));
    }

    private void identifier() {
        Plan.Patient patient = plan.patient();
        ask(
                "Second identifier of the patient (number, or date of birth as year-month-day)",
                "the second identifier",
                answer -> patient.number().filter(answer::equals).isPresent()
                        || patient.born()
                                .map(LocalDate::toString)
                                .filter(answer::equals)
                                .isPresent());
    }

    private void start() {
        Optional<LocalDate> start = anchors.date(first);
        start.ifPresent(day -> ask(
                "Start date, " + first + " (year-month-day)",
                "the start date",
                answer -> answer.equals(day.toString())));
    }

    private void end(LocalDate from) {
        ask(
                "The cycle is cancelled: the first day without injections (year-month-day)",
                "the first day without injections",
                answer -> answer.equals(from.toString()));
    }

    /** The line in force on the day of preparing, and every later one. */
    private void doses(String medicine) {
        List<Plan.DoseLine> lines = plan.doses().get(medicine).stream()
                .filter(line -> anchors.date(line.from()).isPresent())
                .sorted((left, right) -> day(left).compareTo(day(right)))
                .toList();
        int inForce = 0;
        for (int line = 0; line < lines.size(); line++) {
            inForce = day(lines.get(line)).isAfter(plan.prepared().on()) ? inForce : line;
        }
        for (int line = inForce; line < lines.size(); line++) {
            Plan.DoseLine own = lines.get(line);
            String name = name(medicine);
            String which = lines.size() - inForce > 1
                    ? " (" + (line - inForce + 1) + " of " + (lines.size() - inForce) + ")"
                    : "";
            ask(
                    "Dose of " + name + which + " in the order: first day and "
                            + own.amount().unit().word() + " (year-month-day, a space, the number)",
                    "the dose line of " + name + which,
                    answer -> isDoseLine(answer, own));
        }
    }

    private LocalDate day(Plan.DoseLine line) {
        return anchors.date(line.from()).orElseThrow();
    }

    private boolean isDoseLine(String answer, Plan.DoseLine line) {
        String[] parts = answer.split("\\s+");
        return parts.length == 2 && parts[0].equals(day(line).toString()) && isAmount(parts[1], line.amount());
    }

    private static boolean isAmount(String answer, Dose amount) {
        try {
            return Dose.of(answer, amount.unit()).equals(amount);
        } catch (Refusal notAnAmount) {
            return false;
        }
    }

    private void hours() {
        anchors.retrieval()
                .ifPresent(at -> ask(
                        "Egg retrieval in the clinic's time (year-month-day hour:minute, 24-hour)",
                        "the retrieval time",
                        answer -> isHour(answer, at.toLocalDateTime())));
        anchors.calledTrigger()
                .ifPresent(at -> ask(
                        "Trigger in the patient's time, from the call note (year-month-day hour:minute, 24-hour)",
                        "the trigger time",
                        answer -> isHour(answer, at.toLocalDateTime())));
    }

    private static boolean isHour(String answer, LocalDateTime expected) {
        try {
            return LocalDateTime.parse(answer.replace('T', ' '), DAY_AND_HOUR).equals(expected);
        } catch (DateTimeParseException notAnHour) {
            return false;
        }
    }

    private void windows() {
        for (Medicine medicine : files.medicines().values()) {
            plan.record().stream()
                    .filter(line -> line.medicine().equals(medicine.id()))
                    .map(RecordLine::windows)
                    .filter(windows -> !windows.isEmpty())
                    .reduce((earlier, later) -> later)
                    .ifPresent(windows -> ask(
                            "Last number told from the window of " + medicine.name() + " (0 when it ran through)",
                            "the last window number of " + medicine.name(),
                            answer -> isAmount(answer, windows.get(windows.size() - 1))));
        }
    }

    private void sizes(Medicine medicine) {
        List<Dose> sizes = new ArrayList<>();
        for (Plan.Stock stock : plan.onHand().getOrDefault(medicine.id(), List.of())) {
            for (int each = 0; each < stock.count() && stock.discarded().isEmpty(); each++) {
                sizes.add(stock.size());
            }
        }
        if (!sizes.isEmpty()) {
            ask(
                    "Sizes of " + medicine.name()
                            + " at home, in loading order (spaces between; several alike as 5x0.25)",
                    "the sizes of " + medicine.name(),
                    answer -> numbers(answer)
                            .equals(sizes.stream()
                                    .map(Dose::number)
                                    .map(BigDecimal::toPlainString)
                                    .collect(Collectors.toList())));
        }
    }

    private static List<String> numbers(String answer) {
        List<String> numbers = new ArrayList<>();
        for (String word : answer.split("[\\s,;]+")) {
            String[] parts = word.split("[xX]");
            boolean counted = parts.length == 2 && parts[0].matches("\\d{1,3}");
            int count = counted ? Integer.parseInt(parts[0]) : 1;
            for (int each = 0; each < count; each++) {
                numbers.add(counted ? parts[1] : word);
            }
        }
        return numbers;
    }

    private String name(String medicine) {
        return files.medicine(medicine).map(Medicine::name).orElse(medicine);
    }
}

package cyclepacket.packet;

import cyclepacket.finding.Finding;
import cyclepacket.intake.PlanText;
import cyclepacket.plan.Plan.Countersigned;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One second person going over one plan. */
public final class Countersigning {
    private final Path plan;
    private final String by;
    private final Reckoning reckoning;
    private final List<Question> questions;
    private final Optional<String> refusal;

    private Countersigning(Path plan, String by, Reckoning reckoning) {
        this.plan = plan;
        this.by = by.strip();
        this.reckoning = reckoning;
        refusal = refusal(this.by, reckoning);
        questions = refusal.isEmpty() ? reckoning.questions() : List.of();
    }

    /** @throws IOException only when the plan file itself cannot be read */
    public static Countersigning of(Path plan, String by) throws IOException {
        return new Countersigning(plan, by, Reckoning.of(plan));
    }

    private static Optional<String> refusal(String by, Reckoning reckoning) {
        if (reckoning.isStopped()) {
            return Optional.of("A plan with a stop cannot be countersigned. Nothing was written.");
        }
        if (!Names.isName(by)) {
            return Optional.of("Say who countersigns, for example --by \"R. Lindqvist\".");
        }
        String preparer = reckoning.own().files().plan().prepared().by();
        return Names.areSamePerson(by, preparer)
                ? Optional.of("Who prepared a plan cannot countersign it. Ask a second person.")
                : Optional.empty();
    }

    /** Why this cannot be countersigned at all. */
    public Optional<String> refusal() {
        return refusal;
    }

    public List<Finding> findings() {
        return reckoning.findings();
    }

    /** What to key in, in order. */
    public List<Question> questions() {
        return questions;
    }

    /** The names of the values that differ from the plan's; never the values. */
    public List<String> different(List<String> answers) {
        List<String> different = new ArrayList<>();
        for (int index = 0; index < questions.size(); index++) {
            Question question = questions.get(index);
            if (index >= answers.size() || !question.matches().test(answers.get(index))) {
                different.add(question.names());
            }
        }
        return different;
    }

    /**
     * Writes the countersign into the plan, every other byte as it was.
     *
     * @return the code over everything that was compared
     * @throws ChangedMeanwhile when somebody else wrote the plan since it was read
     */
    public String write(LocalDate on) throws IOException {
        String code = Codes.countersign(reckoning.intake().sources());
        byte[] before = reckoning.intake().sources().get(0).bytes();
        byte[] after = PlanText.withCountersigned(before, new Countersigned(by, on, code));
        PlanFile.replace(plan, before, after);
        return code;
    }
}

package cyclepacket.intake;

import cyclepacket.finding.Checked;
import cyclepacket.finding.PlaceBook;
import cyclepacket.plan.PlanFiles;
import java.util.List;
import java.util.Objects;

/**
 * What reading a plan and its companions gave.
 *
 * @param files the records, absent when a finding is a stop; the findings are sorted
 * @param places line and column of every node that was read
 * @param sources the files in the order plan, clinic, protocol, medicines
 */
public record Intake(Checked<PlanFiles> files, PlaceBook places, List<SourceFile> sources) {
    public Intake {
        Objects.requireNonNull(files, "files");
        Objects.requireNonNull(places, "places");
        sources = List.copyOf(sources);
    }
}

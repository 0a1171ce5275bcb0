package cyclepacket.page;

import cyclepacket.plan.PlanFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChartLookTest {
    @Test
    void writes() throws IOException {
        Path folder = Files.createDirectories(Path.of("target", "chart"));
        for (int issue = 1; issue <= 3; issue++) {
            PlanFiles files = ChartSamples.demo(issue);
            boolean draft = issue < 3;
            ChartSource source = ChartSamples.source(
                    files,
                    draft,
                    draft ? ChartSamples.findings(files) : List.of(),
                    issue == 2 ? ChartSamples.accepted(files) : List.of());
            Files.writeString(folder.resolve("issue-" + issue + ".xhtml"), ChartSamples.xhtml(source));
            Files.write(folder.resolve("issue-" + issue + ".pdf"), ChartSamples.pdf(source));
        }
    }
}

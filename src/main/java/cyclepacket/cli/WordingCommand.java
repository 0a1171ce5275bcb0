package cyclepacket.cli;

import cyclepacket.finding.Finding;
import cyclepacket.finding.FindingText;
import cyclepacket.packet.WordingCheck;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "wording",
        description = {
            "Judges the words: error-prone forms, reading grade, long and passive sentences, hard words,",
            "doses in words, implied times, gaps, and translations that are missing or stale.",
            "Without --pdf it reads every text of the languages named, or of all."
        },
        mixinStandardHelpOptions = true)
final class WordingCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(paramLabel = "LANGUAGE", arity = "0..*", description = "Folders of wording, for example en es.")
    private List<String> languages = List.of();

    @Option(names = "--pdf", paramLabel = "FILE", arity = "1..*", description = "Finished packets to read instead.")
    private List<Path> pdfs = List.of();

    @Option(names = "--json", description = "Print the findings for another program.")
    private boolean json;

    WordingCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        WordingCheck check = new WordingCheck(terminal.home());
        List<Finding> findings = new ArrayList<>();
        for (Path pdf : pdfs) {
            findings.addAll(check.pdf(Files.readAllBytes(pdf), pdf.toString()));
        }
        if (pdfs.isEmpty()) {
            for (String language : languages.isEmpty() ? check.languages() : languages) {
                findings.addAll(check.language(language));
            }
        }
        List<Finding> sorted = Finding.sorted(findings);
        if (json) {
            terminal.out().print(WordingCheck.json(sorted));
        } else {
            terminal.out().print(FindingText.printShort(sorted));
            terminal.out().println(Report.count(sorted));
        }
        return sorted.stream().anyMatch(Finding::isStop) ? ExitCode.STOPPED : ExitCode.DONE;
    }
}

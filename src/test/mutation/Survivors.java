import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Reads what the mutation profile wrote and prints a row for each package, then every mutant that lived and has no reason
 * in survivors.txt, then every reason that no mutant needs any more.
 *
 * <pre>java src/test/mutation/Survivors.java target/mutation</pre>
 */
final class Survivors {
    private static final Pattern MUTANT = Pattern.compile("<mutation .*?</mutation>", Pattern.DOTALL);
    private static final Path REASONS = Path.of("src/test/mutation/survivors.txt");

    private final Map<String, Map<String, Integer>> counts = new TreeMap<>();
    private final Set<String> living = new TreeSet<>();

    public static void main(String[] folder) throws IOException {
        Survivors survivors = new Survivors();
        try (Stream<Path> files = Files.walk(Path.of(folder[0]))) {
            for (Path file : files.filter(each -> each.endsWith("mutations.xml")).sorted().toList()) {
                survivors.read(Files.readString(file));
            }
        }
        survivors.print(reasons());
    }

    /** The mutants that have a reason, as {@code package.Class:line method Mutator}. */
    private static Set<String> reasons() throws IOException {
        Set<String> known = new HashSet<>();
        for (String line : Files.readAllLines(REASONS)) {
            if (!line.startsWith("#") && !line.isBlank()) {
                String[] words = line.split("\\s+");
                known.add(words[0] + " " + words[1] + " " + words[2]);
            }
        }
        return known;
    }

    private void read(String report) {
        Matcher mutants = MUTANT.matcher(report);
        while (mutants.find()) {
            String mutant = mutants.group();
            String type = inside(mutant, "mutatedClass").replace("cyclepacket.", "").replaceAll("\\$.*", "");
            String status = mutant.replaceAll("(?s).*?status='([A-Z_]+)'.*", "$1");
            counts.computeIfAbsent(type.replaceAll("\\..*", ""), own -> new TreeMap<>()).merge(status, 1, Integer::sum);
            if (!status.equals("KILLED") && !status.equals("TIMED_OUT")) {
                String mutator = inside(mutant, "mutator").replaceAll(".*\\.", "").replaceAll("Mutator", "");
                living.add(type + ":" + inside(mutant, "lineNumber") + " "
                        + inside(mutant, "mutatedMethod").replaceAll("&#?\\w+;", "") + " " + mutator);
            }
        }
    }

    private static String inside(String mutant, String element) {
        return mutant.replaceAll("(?s).*<" + element + ">(.*?)</" + element + ">.*", "$1");
    }

    private void print(Set<String> reasons) {
        counts.forEach((name, own) -> {
            int all = own.values().stream().mapToInt(Integer::intValue).sum();
            int killed = own.getOrDefault("KILLED", 0) + own.getOrDefault("TIMED_OUT", 0);
            System.out.printf(
                    "| `%s` | %d | %d | %.1f %% | %d |%n",
                    name, all, killed, 100.0 * killed / all, own.getOrDefault("TIMED_OUT", 0));
        });
        living.stream()
                .filter(mutant -> !reasons.contains(mutant))
                .forEach(mutant -> System.out.println("no reason: " + mutant));
        List<String> needless = new ArrayList<>(reasons);
        needless.removeAll(living);
        needless.removeIf(reason -> !counts.containsKey(reason.replaceAll("\\..*", "")));
        needless.stream().sorted().forEach(reason -> System.out.println("not needed: " + reason));
    }
}

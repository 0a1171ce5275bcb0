package cyclepacket.safety;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The changes of one case, a line each: {@code plan} names the plan to check, {@code file} the file that the next
 * changes are in, {@code -} begins a change with the words to take out, and {@code +} lines hold what replaces them.
 */
record Edits(String plan, List<Edit> edits) {

    /** One change; the old words stand exactly once in the file. */
    record Edit(String file, String old, List<String> now) {}

    static Edits read(Path source) throws IOException {
        String plan = "";
        String file = "";
        List<Edit> edits = new ArrayList<>();
        for (String line : Files.readAllLines(source)) {
            String rest = line.substring(line.indexOf(' ') + 1);
            switch (line.substring(0, line.length() - rest.length()).strip()) {
                case "plan" -> plan = rest;
                case "file" -> file = rest;
                case "-" -> edits.add(new Edit(file, rest, new ArrayList<>()));
                case "+" -> edits.get(edits.size() - 1).now().add(rest);
                default -> throw new AssertionError("not an edit: " + line);
            }
        }
        return new Edits(plan, List.copyOf(edits));
    }

    void applyTo(Path root) throws IOException {
        for (Edit edit : edits) {
            Path file = root.resolve(edit.file());
            String text = Files.readString(file);
            int at = text.indexOf(edit.old());
            if (at < 0 || text.indexOf(edit.old(), at + 1) >= 0) {
                throw new AssertionError("does not stand exactly once in " + edit.file() + ": " + edit.old());
            }
            boolean isWholeLine = (at == 0 || text.charAt(at - 1) == '\n')
                    && text.startsWith("\n", at + edit.old().length());
            // A whole line that is taken out takes its line break with it.
            String old = edit.old() + (isWholeLine && edit.now().isEmpty() ? "\n" : "");
            Files.writeString(file, text.replace(old, String.join("\n", edit.now())));
        }
    }
}

package cyclepacket.packet;

import cyclepacket.exchange.RegisterEntry;
import cyclepacket.pdf.Typesetter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a code on a page, or a PDF, says of itself.
 *
 * @param isInForce whether this very issue is the one that counts
 * @param lines what to tell, one sentence a line
 */
public record Identifying(boolean isInForce, List<String> lines) {
    private static final Pattern IN_TEXT = Pattern.compile("code[\\s\\u00a0]+([0-9A-Z]{4}-[0-9A-Z]{4}-[0-9A-Z]{3})\\b");

    public Identifying {
        lines = List.copyOf(lines);
    }

    /**
     * @param codeOrFile a code as it is printed or read aloud, or a PDF
     * @param out the folder with the registers
     * @throws Unclear when it is neither
     */
    public static Identifying of(String codeOrFile, Path out) throws IOException {
        Path file = Path.of(codeOrFile);
        if (Files.isRegularFile(file)) {
            return ofFile(file, out);
        }
        String code = CheckedCode.plain(codeOrFile);
        if (!CheckedCode.hasRightCheck(code)) {
            throw new Unclear("\"" + codeOrFile + "\" is neither a file nor a code: its check symbol does not fit."
                    + " Read it again, symbol by symbol.");
        }
        return ofCode(CheckedCode.grouped(code), out);
    }

    private static Identifying ofFile(Path file, Path out) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        Identifying known = ofCode(codeIn(file, bytes), out);
        List<String> lines = new ArrayList<>(known.lines());
        Optional<Path> stored = stored(bytes, out);
        lines.add(
                stored.isPresent()
                        ? "Byte for byte the file " + stored.get() + "."
                        : "Not the same bytes as any stored file: it may have been changed, or printed elsewhere.");
        return new Identifying(known.isInForce(), lines);
    }

    private static String codeIn(Path file, byte[] bytes) {
        try {
            for (String page : Typesetter.pageTexts(bytes)) {
                Matcher code = IN_TEXT.matcher(page);
                if (code.find() && CheckedCode.hasRightCheck(code.group(1))) {
                    return code.group(1);
                }
            }
        } catch (UncheckedIOException notAPdf) {
            throw new Unclear(file + " is not a PDF that can be read.");
        }
        throw new Unclear(file + " shows no issue code.");
    }

    private static Optional<Path> stored(byte[] bytes, Path out) throws IOException {
        for (Register register : Register.all(out)) {
            for (RegisterEntry entry : register.entries()) {
                for (String name : List.of("packet.pdf", "chart.pdf")) {
                    Path path = new OutFolder(out, register.plan(), entry.issue())
                            .path()
                            .resolve(name);
                    if (Files.exists(path) && Arrays.equals(Files.readAllBytes(path), bytes)) {
                        return Optional.of(path);
                    }
                }
            }
        }
        return Optional.empty();
    }

    private static Identifying ofCode(String code, Path out) throws IOException {
        for (Register register : Register.all(out)) {
            List<RegisterEntry> own = register.entries().stream()
                    .filter(entry -> entry.code().equals(code))
                    .toList();
            if (!own.isEmpty()) {
                return told(register, own);
            }
        }
        return new Identifying(false, List.of("No issue in " + out + " has the code " + code + "."));
    }

    private static Identifying told(Register register, List<RegisterEntry> own) {
        RegisterEntry first = own.get(0);
        List<String> lines = new ArrayList<>();
        lines.add("Plan " + register.plan() + ", issue " + first.issue() + ", "
                + (first.isDraft() ? "a DRAFT" : "final") + ", code " + first.code() + ".");
        lines.add("Printed " + first.at() + ", prepared by " + first.by()
                + first.countersignedBy()
                        .map(name -> ", countersigned by " + name)
                        .orElse("")
                + ".");
        if (own.size() > 1) {
            lines.add("Printed again " + (own.size() - 1) + (own.size() == 2 ? " time" : " times") + ", last "
                    + own.get(own.size() - 1).at() + "; the same issue.");
        }
        Optional<String> superseded = superseded(register, first);
        superseded.ifPresent(lines::add);
        boolean isInForce = superseded.isEmpty() && !first.isDraft();
        lines.add(isInForce ? "This is the issue in force." : "Do not follow this page.");
        return new Identifying(isInForce, lines);
    }

    private static Optional<String> superseded(Register register, RegisterEntry own) {
        Optional<RegisterEntry> latest = register.latestFinal()
                .flatMap(entry -> register.lastFinal(entry.issue()))
                .filter(entry -> !entry.code().equals(own.code()));
        if (latest.isPresent() && latest.get().issue() >= own.issue()) {
            return Optional.of("SUPERSEDED by issue " + latest.get().issue() + ", code "
                    + latest.get().code() + ".");
        }
        return register.entries().stream()
                .filter(entry -> entry.issue() > own.issue()
                        || (entry.issue() == own.issue()
                                && own.isDraft()
                                && !entry.code().equals(own.code())))
                .reduce((earlier, later) -> later)
                .filter(later -> own.isDraft())
                .map(later -> "A later print is issue " + later.issue() + ", code " + later.code() + ".");
    }
}

import cyclepacket.packet.Outcome;
import cyclepacket.packet.Press;
import cyclepacket.pdf.Typesetter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** Prints one plan again and again in one process and says what a page costs once everything is warm. */
public final class WarmPages {
    public static void main(String[] args) throws Exception {
        Path home = Path.of(args[0]);
        Path plan = home.resolve("plans/patients/SM-04417.yaml");
        Path out = Files.createTempDirectory("warm-pages");
        int runs = Integer.parseInt(args[1]);
        long[] micros = new long[runs];
        int pages = 0;
        try (Press press = new Press(home)) {
            for (int run = -runs; run < runs; run++) {
                long start = System.nanoTime();
                Outcome outcome = press.print(plan, out, false, java.time.Instant.EPOCH);
                if (run >= 0) {
                    micros[run] = (System.nanoTime() - start) / 1000;
                }
                if (run == runs - 1) {
                    Path folder = outcome.written().orElseThrow().folder();
                    pages = Typesetter.pageTexts(Files.readAllBytes(folder.resolve("packet.pdf"))).size()
                            + Typesetter.pageTexts(Files.readAllBytes(folder.resolve("chart.pdf"))).size();
                }
            }
        }
        Arrays.sort(micros);
        System.out.printf(
                "warm: packet and chart copy, %d pages: median %.1f ms, best %.1f ms; %.2f ms a page (median)%n",
                pages, micros[runs / 2] / 1000.0, micros[0] / 1000.0, micros[runs / 2] / 1000.0 / pages);
    }
}

package cyclepacket.supply;

import cyclepacket.course.Course;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.ledger.LongPlan;
import cyclepacket.plan.PlanFiles;
import cyclepacket.plan.Protocol;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** How the cost of what to buy grows with the evenings and with the lengths that stimulation may still have. */
public class SupplyGrowth {
    /** A row of known length, nothing at home, three sizes to choose from. */
    @State(Scope.Benchmark)
    @BenchmarkMode(Mode.AverageTime)
    @OutputTimeUnit(TimeUnit.MICROSECONDS)
    public static class Evenings {
        @Param({"10", "25", "50", "100", "200", "400"})
        private int days;

        private PlanFiles files;
        private CycleLedger ledger;

        @Setup
        public void layThePlan() {
            files = LongPlan.withEmptyRefrigerator(days);
            ledger = CycleLedger.of(files, Course.of(files));
        }

        @Benchmark
        public SupplyPlan supply() {
            return SupplyPlan.of(files, ledger);
        }
    }

    /** Stimulation of at most 60 evenings that may still end on any of its last ones. */
    @State(Scope.Benchmark)
    @BenchmarkMode(Mode.AverageTime)
    @OutputTimeUnit(TimeUnit.MICROSECONDS)
    public static class Lengths {
        @Param({"1", "5", "10", "20", "40"})
        private int lengths;

        private PlanFiles files;
        private CycleLedger ledger;

        @Setup
        public void layThePlan() {
            SupplySketch sketch =
                    new SupplySketch().size("300", "315").size("600", "625").size("900", "930");
            sketch.plan.days = MOST_EVENINGS;
            sketch.plan.step = "12.5";
            sketch.plan.dose(1, "187.5");
            files = atLeast(sketch.files(), MOST_EVENINGS + 1 - lengths);
            ledger = CycleLedger.of(files, Course.of(files));
        }

        @Benchmark
        public SupplyPlan supply() {
            return SupplyPlan.of(files, ledger);
        }
    }

    private static final int MOST_EVENINGS = 60;

    private static PlanFiles atLeast(PlanFiles files, int least) {
        Protocol own = files.protocol();
        Protocol.StimulationDays days = new Protocol.StimulationDays(least, least, MOST_EVENINGS);
        return new PlanFiles(
                files.plan(),
                files.clinic(),
                new Protocol(
                        own.id(),
                        own.title(),
                        own.anchors(),
                        own.triggerBefore(),
                        Optional.of(days),
                        own.rows(),
                        own.visits(),
                        own.anchoring(),
                        own.aim()),
                files.medicines(),
                files.planFile(),
                files.clinicFile(),
                files.protocolFile(),
                files.medicineFiles());
    }
}

package cyclepacket.ledger;

import cyclepacket.course.Course;
import cyclepacket.plan.PlanFiles;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** How the cost of course and ledger grows with the evenings. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class LedgerGrowth {
    @Param({"10", "25", "50", "100", "200", "400"})
    private int days;

    @Param
    private LongPlan.Knowledge knowledge;

    private PlanFiles files;
    private Course course;

    @Setup
    public void layThePlan() {
        files = LongPlan.files(days, knowledge);
        course = Course.of(files);
    }

    @Benchmark
    public CycleLedger ledger() {
        return CycleLedger.of(files, course);
    }
}

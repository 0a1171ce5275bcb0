package cyclepacket.supply;

import cyclepacket.course.Course;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.plan.PlanFiles;
import java.util.Arrays;

/**
 * Times the supply of 2,000 units over 14 evenings, warm: the median of 200 runs after 2,000. Run it as a program; it is no
 * test, because a busy machine is no fault.
 */
final class SupplyTiming {
    private static final int WARM_UP = 2_000;
    private static final int RUNS = 200;

    private SupplyTiming() {}

    public static void main(String[] arguments) {
        SupplySketch sketch =
                new SupplySketch().size("300", "315").size("600", "625").size("900", "930");
        sketch.plan.days = 14;
        sketch.plan.step = "12.5";
        sketch.plan.dose(1, "150").dose(11, "125");
        PlanFiles files = sketch.files();
        CycleLedger ledger = CycleLedger.of(files, Course.of(files));
        long bought = 0;
        for (int run = 0; run < WARM_UP; run++) {
            bought += SupplyPlan.of(files, ledger).lines().size();
        }
        long[] nanoseconds = new long[RUNS];
        for (int run = 0; run < RUNS; run++) {
            long start = System.nanoTime();
            bought += SupplyPlan.of(files, ledger).lines().size();
            nanoseconds[run] = System.nanoTime() - start;
        }
        Arrays.sort(nanoseconds);
        System.out.println(SupplyPlan.of(files, ledger).lines().get(0).needed() + ", " + bought + " lines: median "
                + nanoseconds[RUNS / 2] / 1_000 + " microseconds, most " + nanoseconds[RUNS - 1] / 1_000);
    }
}

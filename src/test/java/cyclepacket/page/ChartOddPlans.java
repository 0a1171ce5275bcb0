package cyclepacket.page;

import cyclepacket.PlanSketch;
import cyclepacket.plan.Device;
import cyclepacket.plan.HouseRules;
import cyclepacket.plan.Plan;
import cyclepacket.plan.PlanFiles;
import cyclepacket.plan.RecordLine;
import cyclepacket.plan.RecordLine.Given;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** Plans that stretch the trail, each by the case it stands for; invented. */
final class ChartOddPlans {
    private ChartOddPlans() {}

    static Map<String, PlanFiles> all() {
        Map<String, PlanFiles> plans = new LinkedHashMap<>();
        plans.put("split dose", split().files());
        plans.put("split dose, full dial first", fullDialFirst().files());
        plans.put("pen that shows what is left", left().files());
        plans.put("pen that shows what is left, read", leftRead().files());
        plans.put("in-use limit", inUse(List.of("900"), "900", "900").files());
        plans.put(
                "in-use limit, several openings",
                inUse(List.of("300", "900", "900"), "900", "1035").files());
        plans.put("unknown injection", unknown().files());
        plans.put("unknown, then read", unknownThenRead().files());
        plans.put("number that nobody confirmed", unconfirmed().files());
        plans.put("ran through in the doubtful range", gap().files());
        plans.put("missed evening and a loss", missed().files());
        plans.put("three ends in one evening", tiny().files());
        plans.put("part given, nobody looked", partGiven().files());
        plans.put("the last one, given in full", lastInFull().files());
        plans.put(
                "two unknown injections",
                unknown()
                        .happened(2, "150", "0")
                        .happened(5, new Given.Unknown())
                        .files());
        plans.put("opened before the plan", openedBefore().files());
        plans.put(
                "nothing at home",
                new PlanSketch().size("600", "600", "720").dose(1, "150").files());
        for (int seed = 1; seed <= 6; seed++) {
            plans.put("seed " + seed, random(new Random(seed)).files());
        }
        return plans;
    }

    private static PlanSketch split() {
        return new PlanSketch()
                .size("900", "900", "1125")
                .home("900", "900", "900", "900", "900", "900", "900")
                .dose(1, "525");
    }

    private static PlanSketch fullDialFirst() {
        PlanSketch sketch = split();
        sketch.split = HouseRules.SplitDose.FULL_DIAL_FIRST;
        return sketch;
    }

    private static PlanSketch left() {
        PlanSketch sketch = new PlanSketch()
                .size("300", "305", "347.5")
                .home("300", "300", "300", "300")
                .dose(1, "225");
        sketch.window = Device.Window.LEFT;
        sketch.least = "12.5";
        sketch.step = "12.5";
        return sketch;
    }

    private static PlanSketch leftRead() {
        PlanSketch sketch = left();
        for (int night = 1; night <= 2; night++) {
            RecordLine line = sketch.line(night, new Given.Amount(PlanSketch.units("225")));
            Optional<cyclepacket.quantity.Dose> dialled = Optional.of(PlanSketch.units("225"));
            List<cyclepacket.quantity.Dose> windows = night == 2 ? List.of(PlanSketch.units("100")) : List.of();
            sketch.record.add(with(line, dialled, windows, true));
        }
        sketch.issue = 2;
        sketch.prepared = sketch.night(3);
        return sketch;
    }

    private static PlanSketch inUse(List<String> home, String least, String most) {
        PlanSketch sketch = new PlanSketch()
                .size("300", "300", "360")
                .size("900", least, most)
                .home(home.toArray(String[]::new));
        sketch.start = LocalDate.of(2026, 11, 26);
        sketch.days = 60;
        sketch.openedDays = 21;
        return sketch.dose(1, "25");
    }

    private static PlanSketch unknown() {
        return new PlanSketch()
                .size("600", "600", "720")
                .home("600", "600", "600")
                .dose(1, "150")
                .happened(1, new Given.Unknown());
    }

    private static PlanSketch unknownThenRead() {
        PlanSketch sketch = unknown();
        for (int night = 2; night <= 4; night++) {
            sketch.happened(night, "150", "0");
        }
        return sketch.happened(5, "150", "50");
    }

    private static PlanSketch unconfirmed() {
        PlanSketch sketch = new PlanSketch()
                .size("600", "600", "720")
                .home("600", "600", "600")
                .dose(1, "175");
        for (int night = 1; night <= 3; night++) {
            sketch.happened(night, "175", "0");
        }
        RecordLine line = sketch.line(4, new Given.Amount(PlanSketch.units("175")), "50");
        sketch.record.add(with(line, Optional.empty(), line.windows(), false));
        sketch.prepared = sketch.night(5);
        return sketch;
    }

    private static PlanSketch gap() {
        PlanSketch sketch = new PlanSketch()
                .size("300", "300", "600")
                .home("300", "300", "300")
                .dose(1, "100");
        for (int night = 1; night <= 3; night++) {
            sketch.happened(night, "100", "0");
        }
        return sketch.happened(4, "100").happened(5, "100", "0");
    }

    private static PlanSketch missed() {
        PlanSketch sketch =
                new PlanSketch().size("600", "600", "720").home("600", "600").dose(1, "150");
        sketch.happened(1, "150", "0").happened(2, new Given.Missed());
        RecordLine lost = sketch.line(3, new Given.NotWritten());
        sketch.record.add(new RecordLine(
                lost.date(),
                lost.medicine(),
                1,
                Optional.empty(),
                lost.given(),
                List.of(),
                Optional.empty(),
                false,
                Optional.of(PlanSketch.units("30")),
                false,
                Optional.empty(),
                Optional.empty()));
        return sketch.happened(3, "150", "0");
    }

    private static PlanSketch partGiven() {
        PlanSketch sketch = new PlanSketch()
                .size("300", "300", "420")
                .home("300", "300", "300")
                .dose(1, "150");
        return sketch.happened(1, "150", "0").happened(2, "150", "0").happened(3, "100");
    }

    private static PlanSketch lastInFull() {
        PlanSketch sketch =
                new PlanSketch().size("600", "600", "720").home("600").dose(1, "150");
        return sketch.happened(1, "150")
                .happened(2, "150")
                .happened(3, "150")
                .happened(4, "150")
                .happened(5, "100");
    }

    private static PlanSketch tiny() {
        return new PlanSketch()
                .size("75", "75", "85")
                .home("75", "75", "75", "75", "75", "75", "75", "75")
                .dose(1, "225");
    }

    private static PlanSketch openedBefore() {
        PlanSketch sketch = new PlanSketch().size("600", "600", "720").dose(1, "25");
        sketch.stock.add(new Plan.Stock(
                PlanSketch.units("600"),
                1,
                Optional.empty(),
                Optional.empty(),
                Optional.of(sketch.start.minusDays(20)),
                Optional.of(PlanSketch.units("300"))));
        return sketch.home("600");
    }

    private static PlanSketch random(Random random) {
        String[] labels = {"300", "600", "900"};
        PlanSketch sketch = new PlanSketch();
        for (String label : labels) {
            int least = Integer.parseInt(label) - random.nextInt(3);
            sketch.size(label, "" + least, "" + (least + random.nextInt(200)));
        }
        for (int box = 2 + random.nextInt(4); box > 0; box--) {
            sketch.home(labels[random.nextInt(labels.length)]);
        }
        sketch.window = random.nextInt(3) == 0 ? Device.Window.LEFT : Device.Window.OWED;
        sketch.openedDays = 3 + random.nextInt(26);
        sketch.dayOne = HouseRules.InUseDayOne.values()[random.nextInt(2)];
        sketch.split = HouseRules.SplitDose.values()[random.nextInt(2)];
        sketch.between = HouseRules.BetweenMarks.values()[random.nextInt(3)];
        sketch.days = 8 + random.nextInt(12);
        sketch.dose(1, "" + 25 * (2 + random.nextInt(24)));
        return sketch.dose(4, "" + 25 * (2 + random.nextInt(12)));
    }

    static RecordLine with(
            RecordLine line,
            Optional<cyclepacket.quantity.Dose> dialled,
            List<cyclepacket.quantity.Dose> windows,
            boolean readBack) {
        return new RecordLine(
                line.date(),
                line.medicine(),
                line.setting(),
                dialled,
                line.given(),
                windows,
                line.plunger(),
                readBack,
                line.lost(),
                line.inQuestion(),
                line.reason(),
                line.by());
    }
}

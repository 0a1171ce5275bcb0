package cyclepacket.page;

import cyclepacket.page.EveningCardsView.Stage;
import java.util.ArrayList;
import java.util.List;

/**
 * Which pictures show the steps of one injection, in the order in which the medicine's page tells them. What follows a
 * full stop in a name changes the words, not the drawing.
 */
final class StepPictures {
    private StepPictures() {}

    /**
     * @param first true for the first thing of the evening, which begins with clean hands
     * @param isNew true when a cartridge is used for the first time
     * @param loads true when the old cartridge is left and the next one is loaded first
     */
    static List<String> of(MedicineView medicine, boolean first, boolean isNew, boolean loads) {
        List<String> steps = new ArrayList<>();
        if (first) {
            steps.add("wash");
        }
        switch (medicine.form()) {
            case "pen" -> steps.addAll(pen(medicine, isNew, loads));
            case "vial" -> steps.addAll(vial(medicine));
            case "syringe" ->
                steps.addAll(List.of("cap-off", skin(medicine), "pinch-syringe", "hold-syringe", "sharps-syringe"));
            default -> steps.addAll(List.of());
        }
        return steps;
    }

    private static String skin(MedicineView medicine) {
        return medicine.alcohol() ? "wipe-skin" : "wipe-skin.soap";
    }

    private static List<String> pen(MedicineView medicine, boolean isNew, boolean loads) {
        List<String> steps = new ArrayList<>();
        if (loads) {
            steps.addAll(medicine.facts().wholePen() ? List.of("next-pen") : List.of("cartridge-out", "cartridge-in"));
        }
        if (medicine.alcohol()) {
            steps.add("wipe-pen");
        }
        steps.addAll(List.of("needle", "caps"));
        if (isNew || loads || medicine.primeEachTime()) {
            steps.add("prime");
        }
        steps.addAll(List.of("dial", skin(medicine), "pinch-pen", "hold", "zero", "needle-off"));
        return steps;
    }

    private static List<String> vial(MedicineView medicine) {
        List<String> steps = new ArrayList<>();
        if (medicine.alcohol()) {
            steps.add("wipe-stopper");
        }
        if (medicine.vial().orElseThrow().kind().equals("mixed")) {
            steps.add("mix");
        }
        steps.addAll(List.of("draw", skin(medicine), medicine.facts().muscle() ? "muscle" : "pinch-syringe"));
        steps.addAll(List.of("hold-syringe", "sharps-syringe"));
        return steps;
    }

    /** Whether it leads through the new-cartridge card. */
    static boolean isInMidDose(ChangeView change) {
        return change.kind().equals("expect") || change.kind().equals("maybe");
    }

    /** The stages of the new-cartridge card; a pen that is thrown away whole has no cartridge to take out. */
    static List<Stage> change(MedicineView medicine, boolean hasTable) {
        boolean isOwed = medicine.window().equals("owed");
        List<String> load = new ArrayList<>(List.of("needle-off"));
        load.addAll(
                medicine.facts().wholePen()
                        ? List.of("next-pen")
                        : List.of("dial.zero", "cartridge-out", "cartridge-in"));
        load.addAll(List.of("needle", "prime"));
        List<String> gate = List.of(hasTable ? "table" : "call");
        List<Stage> stages = new ArrayList<>();
        stages.add(new Stage(
                "card.stop",
                isOwed ? List.of("hold", "no-turn", "window", "write") : List.of("no-turn.left", "window", "write")));
        stages.add(isOwed ? new Stage("card.check", List.of("ended")) : new Stage("card.gate", gate));
        stages.add(isOwed ? new Stage("card.gate", gate) : new Stage("card.left.give", List.of("hold")));
        stages.add(new Stage("card.load", load));
        stages.add(new Stage("card.finish", List.of(isOwed ? "dial.rest" : "dial.left", "pinch-pen", "hold", "zero")));
        return stages;
    }
}

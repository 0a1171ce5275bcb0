package cyclepacket.page;

import cyclepacket.quantity.Dose;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Hand-filled views of three issues of an invented course, so that pages can be looked at without any computation. */
final class SamplePackets {
    static final Path TEMPLATES = Path.of("templates");
    private static final Wording WORDING = Wording.load(TEMPLATES, "en");
    private static final ClockWords CLOCK = new ClockWords(WORDING);
    private static final AmountWords AMOUNTS = new AmountWords(WORDING);
    private static final String EVENING = CLOCK.time(LocalTime.of(20, 30));
    private static final String NO_CALL_BY = CLOCK.time(LocalTime.of(18, 0));

    private static final CartridgesView.CardFacts CARD =
            new CartridgesView.CardFacts("units", "10", "25", "up", "12.5\u00a0units", "call");

    private SamplePackets() {}

    static PacketView first(String paper, String textSize, boolean draft) {
        List<DoorView.Row> door = new ArrayList<>();
        List<DaysView.Row> days = new ArrayList<>();
        List<CartridgesView.Cell> strip = new ArrayList<>();
        for (int day = 5; day <= 17; day++) {
            boolean waits = day >= 9;
            Optional<DoorView.Change> change = day == 8
                    ? Optional.of(new DoorView.Change(true, Optional.of("2")))
                    : day == 13 || day == 14 ? Optional.of(new DoorView.Change(false, Optional.empty())) : Optional.empty();
            door.add(doorRow(day, waits, "187.5", day >= 10, change));
            days.add(dayRow(day, waits ? "wait" : "planned", waits ? Optional.empty() : Optional.of("187.5"), day >= 10, change));
            strip.add(new CartridgesView.Cell(
                    march(day),
                    day < 8 ? List.of("1") : day == 8 ? List.of("1", "2") : day < 13 ? List.of("2") : day == 13 ? List.of("2", "?") : List.of("?"),
                    day == 8 ? "expect" : day == 13 || day == 14 ? "maybe" : "none"));
        }
        List<CartridgesView.Ending> endings = List.of(
                new CartridgesView.Ending("1", List.of(march(8)), true, Optional.of("2"), Optional.of("37.5 to 150 units".replace(' ', '\u00a0')), false, false),
                new CartridgesView.Ending("2", List.of(march(13), march(14)), false, Optional.empty(), Optional.empty(), false, true));
        List<CartridgesView.Box> boxes = List.of(
                new CartridgesView.Box("1", units("600"), Optional.of("FA-2231"), Optional.empty(), Optional.of(CLOCK.day(LocalDate.of(2027, 4, 1)))),
                new CartridgesView.Box("2", units("900"), Optional.of("FA-2307"), Optional.empty(), Optional.of(CLOCK.day(LocalDate.of(2027, 4, 4)))));
        List<LookUpView.Row> readings = IntStream.rangeClosed(3, 12)
                .mapToObj(step -> {
                    String reading = units(java.math.BigDecimal.valueOf(step * 125L, 1).stripTrailingZeros().toPlainString());
                    return new LookUpView.Row(reading, reading, step <= 7 ? List.of(march(13), march(14)) : List.of(march(13)));
                })
                .toList();
        return packet("1", "7QMX-4TRW", draft, paper, textSize, Optional.empty(), march(5), false,
                new DoorView(Optional.of(EVENING), columns(true), door, Optional.of(NO_CALL_BY), Optional.of(march(18)), List.of()),
                new DaysView(Optional.of(EVENING), days, Optional.of(march(18)), Optional.of(NO_CALL_BY)),
                new CartridgesView("follitropin", "evening pen", "owed", "28", CARD, strip, endings, boxes,
                        Optional.of(new LookUpView(units("187.5"), "1", List.of(new LookUpView.Evening(march(8), readings))))),
                Optional.empty(), march(12), new SupplyView.CallBy(march(11), CLOCK.time(LocalTime.of(14, 0)), false));
    }

    static PacketView second(String paper, String textSize, boolean draft) {
        List<DoorView.Row> door = new ArrayList<>();
        List<DaysView.Row> days = new ArrayList<>();
        List<CartridgesView.Cell> strip = new ArrayList<>();
        for (int day = 5; day <= 12; day++) {
            boolean past = day < 9;
            boolean waits = day == 12;
            Optional<DoorView.Change> change =
                    day == 12 ? Optional.of(new DoorView.Change(false, Optional.empty())) : Optional.empty();
            if (!past) {
                door.add(doorRow(day, waits, "212.5", day >= 10, change));
            }
            days.add(dayRow(day, past ? "done" : waits ? "wait" : "planned",
                    waits ? Optional.empty() : Optional.of(past ? "187.5" : "212.5"), day >= 10, change));
            strip.add(new CartridgesView.Cell(march(day), day < 8 ? List.of("1") : day == 8 ? List.of("1", "2") : day < 12 ? List.of("2") : List.of("2", "?"),
                    past ? "past" : day == 12 ? "maybe" : "none"));
        }
        List<CartridgesView.Ending> endings = List.of(new CartridgesView.Ending(
                "2", List.of(march(12)), false, Optional.empty(), Optional.of("12.5 to 37.5 units".replace(' ', '\u00a0')), false, true));
        List<CartridgesView.Box> boxes = List.of(new CartridgesView.Box(
                "2", units("900"), Optional.of("FA-2307"), Optional.of(march(8)), Optional.of(CLOCK.day(LocalDate.of(2027, 4, 4)))));
        return packet("2", "K3VD-90HN", draft, paper, textSize, Optional.of(new IssueView.Replaced("1", Optional.of("3\u00a0March"))), march(9), false,
                new DoorView(Optional.of(EVENING), columns(true), door, Optional.of(NO_CALL_BY), Optional.of(march(13)), List.of()),
                new DaysView(Optional.of(EVENING), days, Optional.of(march(13)), Optional.of(NO_CALL_BY)),
                new CartridgesView("follitropin", "evening pen", "owed", "28", CARD, strip, endings, boxes, Optional.empty()),
                Optional.empty(), march(11), new SupplyView.CallBy(march(10), CLOCK.time(LocalTime.of(14, 0)), false));
    }

    static PacketView third(String paper, String textSize, boolean draft) {
        List<DoorView.Row> door = new ArrayList<>();
        List<DaysView.Row> days = new ArrayList<>();
        List<CartridgesView.Cell> strip = new ArrayList<>();
        for (int day = 5; day <= 12; day++) {
            boolean past = day < 12;
            Optional<DoorView.Change> change =
                    day == 12 ? Optional.of(new DoorView.Change(false, Optional.of("3"))) : Optional.empty();
            if (!past) {
                door.add(doorRow(day, false, "212.5", day >= 10, change));
            }
            days.add(dayRow(day, past ? "done" : "planned", Optional.of(day < 9 ? "187.5" : "212.5"), day >= 10, change));
            strip.add(new CartridgesView.Cell(march(day), day < 8 ? List.of("1") : day == 8 ? List.of("1", "2") : day < 12 ? List.of("2") : List.of("2", "3"),
                    past ? "past" : "maybe"));
        }
        String exact = CLOCK.time(LocalTime.of(19, 30));
        BoxedAmount once = new BoxedAmount(Optional.of(AMOUNTS.amount(Dose.parse("250 mcg"))), "micrograms");
        days.add(new DaysView.Row(march(13), "planned", List.of(new DaysView.Dose("choriogonadotropin alfa", List.of(once), Optional.of(exact))), List.of(), Optional.empty()));
        List<CartridgesView.Ending> endings = List.of(new CartridgesView.Ending(
                "2", List.of(march(12)), false, Optional.of("3"), Optional.of("12.5 to 37.5 units".replace(' ', '\u00a0')), false, false));
        List<CartridgesView.Box> boxes = List.of(
                new CartridgesView.Box("2", units("900"), Optional.of("FA-2307"), Optional.of(march(8)), Optional.of(CLOCK.day(LocalDate.of(2027, 4, 4)))),
                new CartridgesView.Box("3", units("300"), Optional.of("FA-2388"), Optional.empty(), Optional.of(CLOCK.day(LocalDate.of(2027, 4, 8)))));
        TriggerView.Called called = new TriggerView.Called(march(13), exact, CLOCK.zone(java.time.ZoneId.of("America/New_York")), once,
                CLOCK.time(LocalTime.of(19, 0)), Optional.empty(), Optional.empty(), new TriggerView.Retrieval(march(15), CLOCK.time(LocalTime.of(8, 30))));
        return packet("3", "W8FP-2XJC", draft, paper, textSize, Optional.of(new IssueView.Replaced("2", Optional.of("9\u00a0March"))), march(12), false,
                new DoorView(Optional.of(EVENING), columns(true), door, Optional.empty(), Optional.empty(),
                        List.of(new DoorView.Exact(march(13), "one-time syringe", once, exact, List.of()))),
                new DaysView(Optional.of(EVENING), days, Optional.empty(), Optional.empty()),
                new CartridgesView("follitropin", "evening pen", "owed", "28", CARD, strip, endings, boxes, Optional.empty()),
                Optional.of(called), march(12), null);
    }

    private static PacketView packet(
            String number, String code, boolean draft, String paper, String textSize, Optional<IssueView.Replaced> replaced,
            DayName tonight, boolean callFirst, DoorView door, DaysView days, CartridgesView cartridges,
            Optional<TriggerView.Called> called, DayName surelyUntil, SupplyView.CallBy callBy) {
        List<SupplyView.Item> items = List.of(
                new SupplyView.Item("follitropin", List.of("box 1 (600\u00a0units)", "box 2 (900\u00a0units)"), Optional.of(surelyUntil), Optional.ofNullable(callBy), callBy == null),
                new SupplyView.Item("ganirelix", List.of("5 syringes"), Optional.of(march(14)), Optional.empty(), true),
                new SupplyView.Item("choriogonadotropin alfa", List.of("1 syringe"), Optional.empty(), Optional.empty(), true));
        return new PacketView(
                new IssueView("SM-04417", number, code, draft, true, "Saltmarsh Fertility Clinic (invented)", "3\u00a0March\u00a02027", replaced),
                new PersonView("Wren Hollis", "WH", List.of("Wren Hollis", "born 17\u00a0April\u00a01990")),
                new PhonesView("+1\u00a0207\u00a0555\u00a00142", "weekdays 08:00-16:30", "+1\u00a0207\u00a0555\u00a00177", "every night and weekend", "911"),
                new LayoutView("en", paper, textSize),
                new StartView(Optional.of(new StartView.Tonight(tonight, EVENING, List.of("evening pen"), callFirst)),
                        List.of("door", "days", "supply", "cartridges", "card", "medicines", "trigger", "calls", "trouble", "keeping", "log").stream().map(key -> new StartView.Part(key, key.equals("medicines") ? "how-fsh-pen" : key)).toList()),
                door, days, List.of(cartridges),
                List.of(
                        medicine("fsh-pen", "follitropin", "evening pen", "helps several eggs grow at the same time", "pen", false),
                        medicine("antagonist-syringe", "ganirelix", "small syringe", "keeps the eggs from being released too early", "syringe", false),
                        medicine("trigger-syringe", "choriogonadotropin alfa", "one-time syringe", "makes the eggs ready for retrieval", "syringe", true)),
                Optional.of(new TriggerView("choriogonadotropin alfa", "one-time syringe", called,
                        List.of(new TriggerView.Stop("follitropin", called.map(c -> march(12))), new TriggerView.Stop("ganirelix", called.map(c -> march(12)))))),
                new SupplyView(items, List.of(new SupplyView.Other("needles", "17"), new SupplyView.Other("swabs", "46"), new SupplyView.Other("sharps", "1"))),
                new TroubleView(List.of(
                        new TroubleView.Missed("follitropin", "evening pen", "Call the clinic before you take it. Never take two doses at once."),
                        new TroubleView.Missed("ganirelix", "small syringe", "Call at once, day or night."),
                        new TroubleView.Missed("choriogonadotropin alfa", "one-time syringe", "Call at once, day or night.")),
                        "2\u00a0pounds in 24\u00a0hours", "100.4\u00a0°F (38\u00a0°C)", true, true),
                new StorageView(List.of(
                        new StorageView.Row("follitropin", "36 to 46\u00a0°F (2 to 8\u00a0°C)", true, Optional.of("36 to 77\u00a0°F (2 to 25\u00a0°C)"), Optional.of("28")),
                        new StorageView.Row("ganirelix", "36 to 77\u00a0°F (2 to 25\u00a0°C)", false, Optional.empty(), Optional.empty()),
                        new StorageView.Row("choriogonadotropin alfa", "36 to 46\u00a0°F (2 to 8\u00a0°C)", true, Optional.empty(), Optional.empty()))),
                new LogView(IntStream.rangeClosed(1, 48).mapToObj(Integer::toString).toList()));
    }

    private static MedicineView medicine(String id, String name, String doorName, String purpose, String form, boolean exact) {
        boolean pen = form.equals("pen");
        return new MedicineView("how-" + id, name, doorName, purpose, form, pen ? "owed" : "none", false, pen ? "10" : "5",
                pen ? Optional.of("30 gauge, 8\u00a0mm") : Optional.empty(), pen ? Optional.of("28") : Optional.empty(), true, exact, List.of());
    }

    private static List<DoorView.Column> columns(boolean syringe) {
        return syringe
                ? List.of(new DoorView.Column("evening pen", true), new DoorView.Column("small syringe", false))
                : List.of(new DoorView.Column("evening pen", true));
    }

    private static DoorView.Row doorRow(int day, boolean waits, String amount, boolean syringe, Optional<DoorView.Change> change) {
        BoxedAmount pen = new BoxedAmount(waits ? Optional.empty() : Optional.of(units(amount)), "units");
        BoxedAmount small = new BoxedAmount(waits ? Optional.empty() : Optional.of("0.25\u00a0mg"), "mg");
        int needles = syringe ? 2 : 1;
        return new DoorView.Row(march(day), waits,
                List.of(Optional.of(new DoorView.Cell(List.of(pen), Optional.empty())),
                        syringe ? Optional.of(new DoorView.Cell(List.of(small), Optional.empty())) : Optional.empty()),
                change, Integer.toString(needles), Integer.toString(needles + 1));
    }

    private static DaysView.Row dayRow(int day, String state, Optional<String> amount, boolean syringe, Optional<DoorView.Change> change) {
        List<DaysView.Dose> doses = new ArrayList<>();
        doses.add(new DaysView.Dose("follitropin", List.of(new BoxedAmount(amount.map(SamplePackets::units), "units")), Optional.empty()));
        if (syringe) {
            doses.add(new DaysView.Dose("ganirelix", List.of(new BoxedAmount(amount.map(known -> "0.25\u00a0mg"), "mg")), Optional.empty()));
        }
        List<DaysView.Visit> visits = day == 9 || day == 12
                ? List.of(new DaysView.Visit(CLOCK.time(LocalTime.of(7, 30)), "ultrasound and blood test"))
                : List.of();
        return new DaysView.Row(march(day), state, doses, visits, change);
    }

    private static String units(String number) {
        return AMOUNTS.amount(Dose.ofUnits(number));
    }

    private static DayName march(int day) {
        return CLOCK.day(LocalDate.of(2027, 3, day));
    }
}

package cyclepacket.plan;

import cyclepacket.quantity.Dose;
import cyclepacket.quantity.Refusal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * One patient's course: the only file that is edited from day to day. Lists keep the order of the file, so that the
 * n-th dose line of a medicine is the node {@code /doses/<medicine>/<n>}.
 *
 * @param issue from 1 to 999
 * @param replaces the issue this one retires
 * @param avoid things the patient avoids, for example {@code latex}
 * @param anchors planned days; a plan, not an instruction
 * @param called what was told to the patient on the phone, oldest first
 * @param times the clock time of each named time, in the patient's zone
 * @param revised what every issue after the first changed, oldest first
 * @param with parts printed on request; empty where the plan leaves it to the clinic, an empty set where it wants none
 */
public record Plan(
        String id,
        int issue,
        Optional<Integer> replaces,
        Patient patient,
        String language,
        Paper paper,
        TextSize textSize,
        List<String> avoid,
        Order order,
        String protocol,
        Map<Anchor, Moment> anchors,
        List<Call> called,
        Map<String, LocalTime> times,
        Map<String, List<DoseLine>> doses,
        Map<String, List<Stock>> onHand,
        List<RecordLine> record,
        List<Override> overrides,
        Prepared prepared,
        Optional<Countersigned> countersigned,
        List<Revision> revised,
        Optional<Set<ExtraPart>> with) {
    public Plan {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(replaces, "replaces");
        Objects.requireNonNull(patient, "patient");
        Objects.requireNonNull(language, "language");
        Objects.requireNonNull(paper, "paper");
        Objects.requireNonNull(textSize, "textSize");
        avoid = List.copyOf(avoid);
        Objects.requireNonNull(order, "order");
        Objects.requireNonNull(protocol, "protocol");
        anchors = InFileOrder.copyOf(anchors);
        called = List.copyOf(called);
        times = InFileOrder.copyOf(times);
        doses = InFileOrder.copyOf(doses);
        onHand = InFileOrder.copyOf(onHand);
        record = List.copyOf(record);
        overrides = List.copyOf(overrides);
        Objects.requireNonNull(prepared, "prepared");
        Objects.requireNonNull(countersigned, "countersigned");
        revised = List.copyOf(revised);
        with = with.map(ExtraPart::copyOf);
        if (issue < 1 || issue > 999) {
            throw new Refusal("an issue is from 1 to 999", "count the issues of this plan from 1");
        }
        if (replaces.isPresent() && replaces.get() >= issue) {
            throw new Refusal("an issue replaces an earlier one", "write the number of the issue on the door now");
        }
        if (!id.matches("[A-Za-z0-9][A-Za-z0-9-]{0,39}")) {
            throw new Refusal("a plan id is letters, digits and hyphens, at most 40", "write for example SM-04417");
        }
    }

    /** The same plan with this anchor on this day, whatever the file says of it. */
    public Plan withAnchor(Anchor anchor, Moment day) {
        Map<Anchor, Moment> dated = new LinkedHashMap<>(anchors);
        dated.put(anchor, day);
        return replanned(dated, called);
    }

    /** The same plan as if nobody had planned these anchors or told them to the patient. */
    public Plan withoutAnchors(Set<Anchor> unknown) {
        Map<Anchor, Moment> known = new LinkedHashMap<>(anchors);
        known.keySet().removeAll(unknown);
        return replanned(
                known,
                called.stream().filter(call -> !unknown.contains(call.anchor())).toList());
    }

    private Plan replanned(Map<Anchor, Moment> otherAnchors, List<Call> otherCalls) {
        return new Plan(
                id,
                issue,
                replaces,
                patient,
                language,
                paper,
                textSize,
                avoid,
                order,
                protocol,
                otherAnchors,
                otherCalls,
                times,
                doses,
                onHand,
                record,
                overrides,
                prepared,
                countersigned,
                revised,
                with);
    }

    /** A plan that no later issue changed and that asks for no part itself. */
    public Plan(
            String id,
            int issue,
            Optional<Integer> replaces,
            Patient patient,
            String language,
            Paper paper,
            TextSize textSize,
            List<String> avoid,
            Order order,
            String protocol,
            Map<Anchor, Moment> anchors,
            List<Call> called,
            Map<String, LocalTime> times,
            Map<String, List<DoseLine>> doses,
            Map<String, List<Stock>> onHand,
            List<RecordLine> record,
            List<Override> overrides,
            Prepared prepared,
            Optional<Countersigned> countersigned) {
        this(
                id,
                issue,
                replaces,
                patient,
                language,
                paper,
                textSize,
                avoid,
                order,
                protocol,
                anchors,
                called,
                times,
                doses,
                onHand,
                record,
                overrides,
                prepared,
                countersigned,
                List.of(),
                Optional.empty());
    }

    /** Paper the packet is printed on. */
    public enum Paper {
        LETTER,
        A4
    }

    /** How large the packet's text is. */
    public enum TextSize {
        STANDARD,
        LARGE
    }

    /** Who it is for. Two identifiers are needed; which of them are there is a check of its own. */
    public record Patient(String name, Optional<LocalDate> born, Optional<String> number, ZoneId zone) {
        public Patient {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(born, "born");
            Objects.requireNonNull(number, "number");
            Objects.requireNonNull(zone, "zone");
        }
    }

    /** The prescriber's order that this plan puts into practice. */
    public record Order(String by, Optional<String> reference, LocalDate date) {
        public Order {
            Objects.requireNonNull(by, "by");
            Objects.requireNonNull(reference, "reference");
            Objects.requireNonNull(date, "date");
        }
    }

    /** A day, or a day with a clock time, with an offset only where the file gives one. */
    public record Moment(LocalDate date, Optional<LocalTime> time, Optional<ZoneOffset> offset) {
        public Moment {
            Objects.requireNonNull(date, "date");
            Objects.requireNonNull(time, "time");
            Objects.requireNonNull(offset, "offset");
            if (offset.isPresent() && time.isEmpty()) {
                throw new Refusal(
                        "an offset without a time says nothing", "write date and time, for example 2027-03-15T08:30");
            }
        }

        /** The date and time as written; empty for a bare date. */
        public Optional<LocalDateTime> local() {
            return time.map(date::atTime);
        }
    }

    /** One phone call that made an anchor an instruction. */
    public record Call(
            Anchor anchor, Moment at, Optional<String> order, String by, String to, LocalDate on, boolean readBack) {
        public Call {
            Objects.requireNonNull(anchor, "anchor");
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(order, "order");
            Objects.requireNonNull(by, "by");
            Objects.requireNonNull(to, "to");
            Objects.requireNonNull(on, "on");
        }
    }

    /** From which day a medicine is given in which amount a day, until the next line. */
    public record DoseLine(DayMark from, Dose amount, Optional<String> order) {
        public DoseLine {
            Objects.requireNonNull(from, "from");
            Objects.requireNonNull(amount, "amount");
            Objects.requireNonNull(order, "order");
        }
    }

    /**
     * Containers at home, in the order they will be loaded.
     *
     * @param count how many alike, 1 to 200
     * @param opened when it was opened, for a container in use before this plan
     * @param used how much was taken from it before this plan
     * @param received the day it came, for one that came after the first issue
     * @param discarded the day it was thrown away; it keeps its number, and nothing is taken from it any more
     * @param reason why it was thrown away
     */
    public record Stock(
            Dose size,
            int count,
            Optional<String> lot,
            Optional<LocalDate> expires,
            Optional<LocalDate> opened,
            Optional<Dose> used,
            Optional<LocalDate> received,
            Optional<LocalDate> discarded,
            Optional<String> reason) {
        public Stock {
            Objects.requireNonNull(size, "size");
            Objects.requireNonNull(lot, "lot");
            Objects.requireNonNull(expires, "expires");
            Objects.requireNonNull(opened, "opened");
            Objects.requireNonNull(used, "used");
            Objects.requireNonNull(received, "received");
            Objects.requireNonNull(discarded, "discarded");
            Objects.requireNonNull(reason, "reason");
            if (discarded.isPresent() && reason.isEmpty()) {
                throw new Refusal("a container was thrown away and nobody says why", "write reason: beside it");
            }
            if (count < 1 || count > 200) {
                throw new Refusal("a count is from 1 to 200", "leave the line out when there is none");
            }
        }

        /** Containers that were there at the first issue and still are. */
        public Stock(
                Dose size,
                int count,
                Optional<String> lot,
                Optional<LocalDate> expires,
                Optional<LocalDate> opened,
                Optional<Dose> used) {
            this(size, count, lot, expires, opened, used, Optional.empty(), Optional.empty(), Optional.empty());
        }
    }

    /** A warning that somebody looked at and accepted. */
    public record Override(String code, String place, String reason, String by) {
        public Override {
            Objects.requireNonNull(code, "code");
            Objects.requireNonNull(place, "place");
            Objects.requireNonNull(reason, "reason");
            Objects.requireNonNull(by, "by");
        }
    }

    /** Who prepared this issue and on which day; the day is "today" of the whole computation. */
    public record Prepared(String by, LocalDate on) {
        public Prepared {
            Objects.requireNonNull(by, "by");
            Objects.requireNonNull(on, "on");
        }
    }

    /** Who keyed the values in a second time, when, and the code over what was compared. */
    public record Countersigned(String by, LocalDate on, String code) {
        public Countersigned {
            Objects.requireNonNull(by, "by");
            Objects.requireNonNull(on, "on");
            Objects.requireNonNull(code, "code");
        }
    }
}

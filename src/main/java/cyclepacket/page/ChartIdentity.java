package cyclepacket.page;

import cyclepacket.course.Anchors;
import cyclepacket.course.Trigger;
import cyclepacket.plan.Anchor;
import cyclepacket.plan.Clinic;
import cyclepacket.plan.Plan;
import cyclepacket.wording.Pack;
import java.time.Duration;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Section 1 of the chart copy: who it is for, whose order it follows, which days are planned and called. */
final class ChartIdentity {
    private final ChartSource source;
    private final ChartWords words;
    private final Plan plan;
    private final Clinic clinic;

    ChartIdentity(ChartSource source, ChartWords words) {
        this.source = source;
        this.words = words;
        plan = source.files().plan();
        clinic = source.files().clinic();
    }

    List<ChartFacts> groups() {
        return List.of(document(), person(), order(), checked());
    }

    private ChartFacts document() {
        return ChartFacts.of(words.wording(), "document")
                .add("plan", plan.id())
                .add("issue", Integer.toString(plan.issue()))
                .add("code", source.code())
                .add(
                        "replaces",
                        plan.replaces()
                                .map(issue -> words.fill("document.issue-number", "issue", "" + issue))
                                .orElse(words.text("none")))
                .add("state", words.text(source.draft() ? "document.draft" : "document.final"))
                .add("program", source.programVersion())
                .paired()
                .build();
    }

    private ChartFacts person() {
        Plan.Patient patient = plan.patient();
        return ChartFacts.of(words.wording(), "person")
                .add("name", patient.name())
                .add("born", patient.born().map(words::fullDate).orElse(words.text("not-told")))
                .add("number", patient.number().orElse(words.text("not-told")))
                .add("zone", words.clock().zone(patient.zone()))
                .add("clinic-zone", words.clock().zone(clinic.zone()))
                .add("avoids", words.list(plan.avoid()))
                .paired()
                .build();
    }

    private ChartFacts order() {
        Plan.Order order = plan.order();
        return ChartFacts.of(words.wording(), "order")
                .add("by", order.by())
                .add("reference", order.reference().orElse(words.text("not-told")))
                .add("date", words.fullDate(order.date()))
                .add("protocol", source.files().protocol().title() + " (" + plan.protocol() + ")")
                .build();
    }

    private ChartFacts checked() {
        return ChartFacts.of(words.wording(), "checked")
                .add(
                        "prepared",
                        words.fill(
                                "checked.by-on",
                                "by",
                                plan.prepared().by(),
                                "on",
                                words.fullDate(plan.prepared().on())))
                .add(
                        "countersigned",
                        plan.countersigned().map(this::countersigned).orElse(words.text("checked.none")))
                .add(
                        "approval",
                        words.fill(
                                "checked.approved",
                                "by",
                                words.list(clinic.approved().by()),
                                "until",
                                words.fullDate(clinic.approved().lastDay())))
                .add("wording", source.packs().stream().map(this::wording).collect(Collectors.joining("\n")))
                .build();
    }

    /** Who let the words of one language be printed, and what is locked in them. */
    private String wording(Pack pack) {
        String until = words.fullDate(pack.lastDay());
        String approved = pack.approved()
                .map(approval -> words.fill(
                        "checked.wording.of",
                        "name",
                        pack.name(),
                        "version",
                        pack.version(),
                        "by",
                        approval.by(),
                        "on",
                        words.fullDate(approval.on()),
                        "until",
                        until))
                .orElseGet(() -> words.fill(
                        "checked.wording.none", "name", pack.name(), "version", pack.version(), "until", until));
        String read = pack.source().isEmpty()
                ? ""
                : " "
                        + words.fill(
                                "checked.wording.translated",
                                "translator",
                                pack.translator(),
                                "reviewer",
                                pack.reviewer().orElse(words.text("checked.wording.nobody")));
        return approved
                + read
                + pack.lockedCode()
                        .map(code -> " " + words.fill("checked.wording.locked", "code", code))
                        .orElse("");
    }

    private String countersigned(Plan.Countersigned sign) {
        return words.fill("checked.by-on-code", "by", sign.by(), "on", words.fullDate(sign.on()), "code", sign.code());
    }

    ChartTable anchors() {
        ChartTable.Builder table = ChartTable.of(words.wording(), "anchors", "anchor", "planned", "called");
        for (Anchor anchor : ordered()) {
            String meaning = source.files().protocol().anchors().getOrDefault(anchor, "");
            table.row(anchor.code() + (meaning.isEmpty() ? "" : "\n" + meaning), planned(anchor), called(anchor));
        }
        return table.build();
    }

    private Set<Anchor> ordered() {
        Set<Anchor> ordered = new LinkedHashSet<>(List.of(Anchor.S1, Anchor.T, Anchor.R));
        Set<String> others = new TreeSet<>();
        plan.anchors().keySet().forEach(anchor -> others.add(anchor.code()));
        plan.called().forEach(call -> others.add(call.anchor().code()));
        others.forEach(code -> ordered.add(new Anchor(code)));
        return ordered;
    }

    private String planned(Anchor anchor) {
        Anchors anchors = source.course().anchors();
        if (anchor.equals(Anchor.T)) {
            return anchors.trigger().map(this::trigger).orElse(words.text("anchors.not-planned"));
        }
        if (anchor.equals(Anchor.R) && anchors.retrieval().isPresent()) {
            return both(anchors.retrieval().get(), clinic.zone(), plan.patient().zone());
        }
        return anchors.date(anchor).map(words::fullDay).orElse(words.text("anchors.not-planned"));
    }

    private String trigger(Trigger trigger) {
        String instant = both(trigger.at(), plan.patient().zone(), clinic.zone());
        Optional<Duration> lead =
                Optional.ofNullable(source.files().protocol().triggerBefore().get(Anchor.R));
        return source.course().anchors().retrieval().isPresent() && lead.isPresent()
                ? instant + "\n" + words.fill("anchors.lead", "hours", hours(lead.get()))
                : instant;
    }

    private String hours(Duration lead) {
        return ChartRules.hours(lead);
    }

    private String both(ZonedDateTime at, ZoneId first, ZoneId second) {
        return words.instant(at, List.of(first, second));
    }

    private String called(Anchor anchor) {
        List<String> lines = new ArrayList<>();
        for (Plan.Call call : plan.called()) {
            if (call.anchor().equals(anchor)) {
                lines.add(call(call));
            }
        }
        return lines.isEmpty() ? words.text("anchors.not-called") : String.join("\n", lines);
    }

    private String call(Plan.Call call) {
        String at = words.fullDay(call.at().date())
                + call.at().time().map(time -> ", " + words.time(time)).orElse("");
        return words.fill(
                call.readBack() ? "anchors.call" : "anchors.call.unread",
                "at",
                at,
                "by",
                call.by(),
                "to",
                call.to(),
                "on",
                words.fullDate(call.on()),
                "order",
                call.order().orElse(words.text("not-told")));
    }
}

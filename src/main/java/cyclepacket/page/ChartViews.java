package cyclepacket.page;

import cyclepacket.course.DatedVisit;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.plan.Plan;
import cyclepacket.quantity.Dose;
import cyclepacket.supply.SupplyLine;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Makes the view of the chart copy from the computed plan. */
final class ChartViews {
    private final ChartSource source;
    private final ChartWords words;
    private final Plan plan;

    private ChartViews(ChartSource source, Wording wording) {
        this.source = source;
        words = new ChartWords(wording);
        plan = source.files().plan();
    }

    static ChartView of(ChartSource source, Wording wording) {
        return new ChartViews(source, wording).build();
    }

    private ChartView build() {
        ChartIdentity identity = new ChartIdentity(source, words);
        ChartReview review = new ChartReview(source, words);
        List<ChartView.Trail> trails = new ArrayList<>();
        List<ChartView.Calls> calls = new ArrayList<>();
        for (MedicineLedger ledger : source.ledger().medicines()) {
            ledger.medicine().device().pen().ifPresent(pen -> {
                trails.add(new ChartTrails(source, words, ledger, pen).view());
                new ChartCalls(source, words, ledger, pen).view().ifPresent(calls::add);
            });
        }
        return new ChartView(
                issue(),
                person(),
                new LayoutView(
                        ChartCopy.LANGUAGE, false, false, plan.paper().name().toLowerCase(Locale.ROOT), "standard"),
                identity.groups(),
                identity.anchors(),
                new ChartInputs(source, words).tables(),
                new ChartRules(source, words).groups(),
                trails,
                supply(),
                review.findings(),
                review.accepted(),
                calls,
                phone(),
                teaching(),
                signatures(),
                new ChartOrders(source, words).view());
    }

    private IssueView issue() {
        return new IssueView(
                plan.id(),
                Integer.toString(plan.issue()),
                source.code(),
                source.draft(),
                source.course().isStartCalled(),
                source.files().clinic().name(),
                words.fullDate(plan.prepared().on()),
                plan.replaces().map(issue -> new IssueView.Replaced(Integer.toString(issue), Optional.empty())));
    }

    private PersonView person() {
        Plan.Patient patient = plan.patient();
        List<String> identifiers = new ArrayList<>(List.of(patient.name()));
        patient.born().ifPresent(day -> identifiers.add(words.fill("born", "date", words.fullDate(day))));
        patient.number().ifPresent(number -> identifiers.add(words.fill("number", "number", number)));
        String initials = Arrays.stream(patient.name().strip().split("\\s+"))
                .map(name -> name.substring(0, 1))
                .collect(Collectors.joining());
        return new PersonView(patient.name(), initials, identifiers);
    }

    private ChartTable supply() {
        ChartTable.Builder table =
                ChartTable.of(words.wording(), "supply", "medicine", "surely", "possibly", "short", "#most", "order");
        for (SupplyLine line : source.supply().lines()) {
            boolean isShort = line.isShort();
            boolean isDated = source.ledger()
                    .of(line.medicine())
                    .filter(ledger -> !ledger.draws().isEmpty())
                    .isPresent();
            String notCovered = isDated ? "none" : "supply.undated";
            table.row(
                    ChartInputs.name(source, line.medicine()),
                    words.date(line.covered().surelyUntil(), notCovered),
                    words.date(line.covered().possiblyUntil(), notCovered),
                    words.date(line.covered().firstShort(), "supply.never"),
                    words.amount(line.covered().shortAtMost()),
                    line.lastOrder()
                            .map(at -> words.day(at.toLocalDate()) + "\n" + words.time(at.toLocalTime()))
                            .orElse(words.text(isShort ? "supply.too-late" : "supply.no-order")));
        }
        return table.build();
    }

    private ChartView.Phone phone() {
        Optional<String> visit = source.course().nextVisit().map(this::visit);
        return new ChartView.Phone(
                words.list(source.files().clinic().rules().mayCallDoses()),
                example().map(dose -> new ChartView.Spoken(words.amount(dose), words.said(dose))),
                visit,
                words.time(source.files().clinic().rules().noCallBy()),
                unit());
    }

    private String visit(DatedVisit visit) {
        return words.fullDay(visit.date()) + ", " + words.time(visit.at().toLocalTime());
    }

    private Optional<MedicineLedger> firstPen() {
        return source.ledger().medicines().stream()
                .filter(ledger -> ledger.medicine().device().pen().isPresent())
                .findFirst();
    }

    private Optional<Dose> example() {
        return firstPen().flatMap(ChartExample::of);
    }

    private String unit() {
        return firstPen()
                .map(pen -> words.amounts().unit(pen.medicine().unit()))
                .orElse("");
    }

    private ChartView.Teaching teaching() {
        return new ChartView.Teaching(
                example().map(words::amount), words.list(plan.avoid()), unit(), ChangedView.swaps(source.files()));
    }

    private ChartView.Signatures signatures() {
        return new ChartView.Signatures(
                plan.prepared().by(),
                words.fullDate(plan.prepared().on()),
                plan.countersigned().map(Plan.Countersigned::by).orElse(""),
                plan.countersigned().map(sign -> words.fullDate(sign.on())).orElse(""),
                plan.replaces().map(issue -> Integer.toString(issue)));
    }
}

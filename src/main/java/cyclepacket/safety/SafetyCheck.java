package cyclepacket.safety;

import cyclepacket.course.Course;
import cyclepacket.finding.Finding;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.plan.PlanFiles;
import cyclepacket.supply.SupplyPlan;
import java.util.List;
import java.util.stream.Stream;

/** Every rule over the whole computed plan. */
public final class SafetyCheck {
    private static final List<Rule> RULES = List.of(
            new DoseOffDialRule(),
            new DoseBelowDialRule(),
            new DoseAboveDialRule(),
            new DosePartBelowDialRule(),
            new DoseTooManySettingsRule(),
            new DoseNotASizeRule(),
            new SyringeOtherSizeRule(),
            new DoseBetweenMarksRule(),
            new DoseNotFittingRule(),
            new VialsTooManyRule(),
            new VialRuleAbsentRule(),
            new DilutionDiffersRule(),
            new DosePiecesRule(),
            new DoseWholeContainerRule(),
            new HalfInexactRule(),
            new StopRuleAbsentRule(),
            new LutealStartUnusualRule(),
            new AntagonistStartUnusualRule(),
            new DailyHighRule(),
            new DailyCeilingRule(),
            new DoseLinesSameDateRule(),
            new DoseLineBeforeRowRule(),
            new DoseLineUnusedRule(),
            new DoseLineLeftBehindRule(),
            new DoseAbsentRule(),
            new RowEmptyRule(),
            new RowTooLongRule(),
            new RowsOverlapRule(),
            new AnchorUndatedRule(),
            new HourAbsentRule(),
            new TimeRemovedRule(),
            new TimeRepeatedRule(),
            new OffsetWrongRule(),
            new ExactWithoutTriggerRule(),
            new ClockChangeRule(),
            new StartNotCalledRule(),
            new CallNotReadBackRule(),
            new RevisedNotReadBackRule(),
            new CallInFutureRule(),
            new CallOutOfOrderRule(),
            new CallOrderAbsentRule(),
            new CalledDateDiffersRule(),
            new TriggerOffRetrievalRule(),
            new TriggerWithoutRetrievalRule(),
            new TriggerPlanDiffersRule(),
            new TriggerLeadUnusualRule(),
            new TriggerLeadLimitRule(),
            new TriggerDayUnusualRule(),
            new TriggerBeforeStartRule(),
            new TriggerEveningRule(),
            new NoCallByLateRule(),
            new DoseGapRule(),
            new DoseGapMissedRule(),
            new RecordGapRule(),
            new RecordTwiceRule(),
            new RecordOutOfOrderRule(),
            new RecordInFutureRule(),
            new RecordOffCourseRule(),
            new RecordIncompleteRule(),
            new RecordImpossibleRule(),
            new RecordWindowOffDialRule(),
            new RecordLossUnclearRule(),
            new RecordPlungerRule(),
            new RecordFillRule(),
            new RecordReadingUnclearRule(),
            new RecordNoEndRule(),
            new RecordNoContainerRule(),
            new RecordPastInUseRule(),
            new RecordNotConfirmedRule(),
            new RecordInQuestionRule(),
            new RecordLateTimeRule(),
            new WindowsOpposedRule(),
            new SmallRemainderAbsentRule(),
            new SmallRemainderHighRule(),
            new SupplyShortRule(),
            new SupplyOrderTooLateRule(),
            new SupplyOrderBeforeVisitRule(),
            new SupplyPriceMissingRule(),
            new SupplyNoSetRule(),
            new SupplyOddsOutsideRule(),
            new PharmacyNeverShipsRule(),
            new LoadingOrderRule(),
            new MedicineNotAtHomeRule(),
            new StockExpiresRule(),
            new StockExpiryUnknownRule(),
            new StockPastInUseRule(),
            new StockOpenedUnknownRule(),
            new StockOpenedInFutureRule(),
            new StockUsedUpRule(),
            new PartUsedChainedRule(),
            new InUseLossRule(),
            new ApprovalEndedRule(),
            new ApprovalEndsInCourseRule(),
            new ClinicClosedRule(),
            new AvoidSwabRule(),
            new AvoidContainsRule(),
            new MissedLineAbsentRule(),
            new DoorNameTwiceRule(),
            new DoorNameRevealsRule(),
            new IdentifiersRule(),
            new PlanIdRevealsRule(),
            new OrderReferenceAbsentRule(),
            new OrderDateLateRule(),
            new ReplacesAbsentRule(),
            new CountersignedByPreparerRule());

    private SafetyCheck() {}

    /** The findings of all rules, in the order of the rules; {@link Verdict} says what follows from them. */
    public static List<Finding> of(PlanFiles files, Course course, CycleLedger ledger, SupplyPlan supply) {
        ComputedPlan plan = new ComputedPlan(files, course, ledger, supply);
        return RULES.stream().flatMap(rule -> rule.findings(plan).stream()).toList();
    }

    /**
     * Whether a stop with this code makes the figures of ledger and supplies wrong or doubtful. A code that no rule here
     * has counts as one that does.
     */
    public static boolean touchesSums(String code) {
        return rules().filter(rule -> rule.code().equals(code))
                .findFirst()
                .map(Rule::touchesSums)
                .orElse(true);
    }

    static Stream<Rule> rules() {
        return RULES.stream();
    }
}

package cyclepacket.page;

/**
 * The one page that ends a cycle.
 *
 * @param firstDay the first day without any injection
 * @param until how long its warning signs stay on the door
 */
public record StopView(
        IssueView issue,
        PersonView person,
        PhonesView phones,
        LayoutView layout,
        TroubleView trouble,
        DayName firstDay,
        DayName until) {}

package cyclepacket.page;

/** The sheet before one packet of a print run: for whom it is and how many pages follow. */
public record SeparatorView(IssueView issue, PersonView person, LayoutView layout, String pages) {}

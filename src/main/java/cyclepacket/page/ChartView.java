package cyclepacket.page;

import java.util.List;
import java.util.Optional;

/**
 * Everything that the chart copy prints, as texts that are ready to read.
 *
 * @param identity who and what, in groups
 * @param anchors the named days, planned and called
 * @param inputs doses, stock and the record as they were told
 * @param rules the pens' and the clinic's own rules, in groups
 * @param trails the trail of the computation, one for each pen
 * @param supply how far the stock reaches
 * @param findings what the checks found and nobody accepted; empty when there is nothing
 * @param accepted warnings that were accepted; empty when there are none
 * @param calls the on-call tables, one for each pen that has evenings to come
 * @param orders the order sheet
 */
public record ChartView(
        IssueView issue,
        PersonView person,
        LayoutView layout,
        List<ChartFacts> identity,
        ChartTable anchors,
        List<ChartTable> inputs,
        List<ChartFacts> rules,
        List<Trail> trails,
        ChartTable supply,
        Optional<ChartTable> findings,
        Optional<ChartTable> accepted,
        List<Calls> calls,
        Phone phone,
        Teaching teaching,
        Signatures signatures,
        Orders orders) {
    public ChartView {
        identity = List.copyOf(identity);
        inputs = List.copyOf(inputs);
        rules = List.copyOf(rules);
        trails = List.copyOf(trails);
        calls = List.copyOf(calls);
    }

    /**
     * How the new-cartridge evenings of one pen were worked out.
     *
     * @param how sentences with which anyone can work them out again
     * @param changes every evening on which a cartridge may end; empty when none can
     * @param marks sentences on how exact ranges became printed numbers
     */
    public record Trail(
            String medicine,
            ChartTable containers,
            ChartTable injections,
            List<String> how,
            Optional<ChartTable> changes,
            List<String> marks) {
        public Trail {
            how = List.copyOf(how);
            marks = List.copyOf(marks);
        }
    }

    /**
     * What a caller on duty looks up for one pen.
     *
     * @param evenings which numbers fit each evening to come
     * @param nextEnds the end after the coming one, by number; empty when no end is to come
     */
    public record Calls(
            String medicine,
            List<String> notes,
            ChartTable evenings,
            List<String> nextNotes,
            Optional<ChartTable> nextEnds) {
        public Calls {
            notes = List.copyOf(notes);
            nextNotes = List.copyOf(nextNotes);
        }
    }

    /**
     * What the sheet for a dose call is filled with.
     *
     * @param callers who may tell a dose on the phone in this clinic
     * @param example an amount that is not in this plan, with its digits in words
     */
    public record Phone(
            String callers, Optional<Spoken> example, Optional<String> nextVisit, String callBy, String unit) {}

    /** An amount and how it is said. */
    public record Spoken(String amount, String said) {}

    /**
     * What the teach-back record is filled with: a number to act with, and what the patient avoids.
     *
     * @param swaps products that this issue puts in place of others, whose teach-back is void
     */
    public record Teaching(Optional<String> example, String avoid, String unit, List<ChangedView.Swap> swaps) {
        public Teaching {
            swaps = List.copyOf(swaps);
        }
    }

    /** Names that are already known for the signatures, and the issues that this one retires. */
    public record Signatures(
            String prepared, String preparedOn, String checked, String checkedOn, Optional<String> retired) {}

    /**
     * The order sheet.
     *
     * @param sums need and stock of every medicine; empty when something has to be bought
     * @param buy what covers the whole need; empty when nothing has to be bought
     * @param steps the way to buy that costs least on average; empty when the length is known
     * @param lengths how far the stock reaches by length; empty when the length is known
     * @param ways each way to buy with what it leaves over, a table for each medicine
     * @param items everything besides medicine; empty when nothing is left to give
     */
    public record Orders(
            Optional<ChartTable> sums,
            Optional<ChartTable> buy,
            Optional<ChartTable> steps,
            Optional<ChartTable> lengths,
            List<ChartTable> ways,
            Optional<ChartTable> items) {
        public Orders {
            ways = List.copyOf(ways);
        }
    }
}

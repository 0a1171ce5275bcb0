package cyclepacket.page;

import java.util.List;
import java.util.Optional;

/**
 * Everything that the evening cards print: one card for each row of the door page and for each exact minute.
 *
 * @param door the door page, whose rows the cards show one by one
 * @param wholePens true when every pen is thrown away whole
 */
public record EveningCardsView(
        IssueView issue,
        PersonView person,
        PhonesView phones,
        LayoutView layout,
        DoorView door,
        boolean wholePens,
        List<Card> cards) {
    public EveningCardsView {
        cards = List.copyOf(cards);
    }

    /**
     * One evening.
     *
     * @param at the time that everything on the card shares; empty where each has its own
     * @param row the door page's row; empty on a card for an exact minute
     * @param exact the door page's exact minute; empty on a card for an ordinary evening
     * @param shots what is given, in the order of the door page
     * @param changes what to do when a cartridge ends, one for each pen whose cartridge may
     */
    public record Card(
            DayName day,
            Optional<AtTime> at,
            Optional<DoorView.Row> row,
            Optional<DoorView.Exact> exact,
            List<Shot> shots,
            List<Change> changes) {
        public Card {
            shots = List.copyOf(shots);
            changes = List.copyOf(changes);
        }
    }

    /**
     * One medicine of that evening.
     *
     * @param window what the pen's number shows: {@code owed} or {@code left}; {@code none} without a pen
     * @param cell the door page's cell: its amounts, marks and times
     * @param at one time for each amount or one for all; empty where the card has the time
     * @param pictures the names of the pictures in the order of the steps
     */
    public record Shot(
            String name,
            String doorName,
            String window,
            String hold,
            DoorView.Cell cell,
            List<AtTime> at,
            List<String> pictures) {
        public Shot {
            at = List.copyOf(at);
            pictures = List.copyOf(pictures);
        }

        /** The same on a card that says the time once for all. */
        Shot atTheCardsTime() {
            return new Shot(name, doorName, window, hold, cell, List.of(), pictures);
        }
    }

    /**
     * A time in words and as the hands of a clock.
     *
     * @param hourTurn how far the short hand is turned from 12, in degrees
     * @param minuteTurn how far the long hand is turned from 12, in degrees
     */
    public record AtTime(String time, String hourTurn, String minuteTurn) {}

    /**
     * The way through the new-cartridge card in pictures.
     *
     * @param doorName which pen
     * @param window {@code owed} or {@code left}
     * @param box the box to have ready; empty when there is none at home
     * @param hasTable whether the packet has a table for the coming end
     * @param offTable the clinic's own line for a number that is not listed
     * @param stages the stages of the card, in their order
     */
    public record Change(
            String doorName,
            String window,
            String hold,
            Optional<String> box,
            boolean hasTable,
            Optional<String> offTable,
            List<Stage> stages) {
        public Change {
            stages = List.copyOf(stages);
        }
    }

    /** One stage of the new-cartridge card: its key in the wording, and its pictures. */
    public record Stage(String key, List<String> pictures) {
        public Stage {
            pictures = List.copyOf(pictures);
        }
    }
}

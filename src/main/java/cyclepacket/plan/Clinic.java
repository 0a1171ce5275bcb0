package cyclepacket.plan;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * One clinic's own facts and rules.
 *
 * @param country two letters; chooses date style and paper
 * @param emergency the emergency number
 * @param closed days without clinic hours besides Saturdays and Sundays
 * @param supplies what it says about odds, boxes and containers
 * @param texts what it adds to the packet's words
 * @param with parts printed on request, for every plan that does not choose itself
 */
public record Clinic(
        String name,
        ZoneId zone,
        String currency,
        String country,
        Phone day,
        Phone night,
        String emergency,
        Set<LocalDate> closed,
        HouseRules rules,
        Pharmacy pharmacy,
        Approval approved,
        SupplyRules supplies,
        ClinicTexts texts,
        Set<ExtraPart> with) {
    public Clinic {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(currency, "currency");
        Objects.requireNonNull(country, "country");
        Objects.requireNonNull(day, "day");
        Objects.requireNonNull(night, "night");
        Objects.requireNonNull(emergency, "emergency");
        closed = Set.copyOf(closed);
        Objects.requireNonNull(rules, "rules");
        Objects.requireNonNull(pharmacy, "pharmacy");
        Objects.requireNonNull(approved, "approved");
        Objects.requireNonNull(supplies, "supplies");
        Objects.requireNonNull(texts, "texts");
        with = ExtraPart.copyOf(with);
    }

    /** A clinic that adds nothing to the packet. */
    public Clinic(
            String name,
            ZoneId zone,
            String currency,
            String country,
            Phone day,
            Phone night,
            String emergency,
            Set<LocalDate> closed,
            HouseRules rules,
            Pharmacy pharmacy,
            Approval approved,
            SupplyRules supplies) {
        this(
                name,
                zone,
                currency,
                country,
                day,
                night,
                emergency,
                closed,
                rules,
                pharmacy,
                approved,
                supplies,
                ClinicTexts.NONE,
                Set.of());
    }

    /** A clinic that writes nothing about its supplies. */
    public Clinic(
            String name,
            ZoneId zone,
            String currency,
            String country,
            Phone day,
            Phone night,
            String emergency,
            Set<LocalDate> closed,
            HouseRules rules,
            Pharmacy pharmacy,
            Approval approved) {
        this(name, zone, currency, country, day, night, emergency, closed, rules, pharmacy, approved, SupplyRules.NONE);
    }

    /** A number to call and when somebody answers it. */
    public record Phone(String number, String hours) {
        public Phone {
            Objects.requireNonNull(number, "number");
            Objects.requireNonNull(hours, "hours");
        }
    }

    /** Who approved these rules and the last day they may be printed. */
    public record Approval(List<String> by, LocalDate lastDay) {
        public Approval {
            by = List.copyOf(by);
            Objects.requireNonNull(lastDay, "lastDay");
        }
    }
}

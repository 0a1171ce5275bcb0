package cyclepacket.intake;

import cyclepacket.plan.Clinic;
import cyclepacket.plan.ClinicTexts;
import cyclepacket.plan.ExtraPart;
import cyclepacket.plan.HouseRules;
import cyclepacket.plan.Pharmacy;
import cyclepacket.plan.SupplyRules;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Builds the record of the clinic file. */
final class ClinicBuilder {
    private static final List<String> DAYS = List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");

    private final Field top;

    ClinicBuilder(Sheet sheet) {
        this.top = sheet.top();
    }

    Part<Clinic> clinic() {
        Part<String> name = top.at("clinic").text();
        Part<ZoneId> zone = Calendar.zone(top.at("zone"));
        Part<String> currency = top.at("currency").text();
        Part<String> country = top.at("country").text();
        Part<Clinic.Phone> day = phone(top.at("phones").at("day"));
        Part<Clinic.Phone> night = phone(top.at("phones").at("night"));
        Part<String> emergency = top.at("emergency").text();
        Part<Set<LocalDate>> closed = dates(top.at("closed"));
        Part<HouseRules> rules = new HouseRulesBuilder(top.at("house-rules")).rules();
        Part<Pharmacy> pharmacy = pharmacy(top.at("pharmacy"));
        Part<Clinic.Approval> approved = approval(top.at("approved"));
        Part<SupplyRules> supplies = new SupplyRulesBuilder(top.at("supplies")).rules();
        Part<ClinicTexts> texts = new ClinicTextsBuilder(top).texts();
        Part<Optional<Set<ExtraPart>>> with = ExtraParts.read(top.at("with"));
        return Part.whole(
                top,
                () -> new Clinic(
                        name.get(),
                        zone.get(),
                        currency.get(),
                        country.get(),
                        day.get(),
                        night.get(),
                        emergency.get(),
                        closed.get(),
                        rules.get(),
                        pharmacy.get(),
                        approved.get(),
                        supplies.get(),
                        texts.get(),
                        with.get().orElse(Set.of())));
    }

    private static Part<Clinic.Phone> phone(Field phone) {
        Part<String> number = phone.at("number").text();
        Part<String> hours = phone.at("hours").text();
        return Part.whole(phone, () -> new Clinic.Phone(number.get(), hours.get()));
    }

    private static Part<Set<LocalDate>> dates(Field list) {
        return new Part<>(list.each(Calendar::date).value().map(HashSet::new));
    }

    private static Part<Pharmacy> pharmacy(Field pharmacy) {
        Part<String> name = pharmacy.at("name").text();
        Part<LocalTime> orderBy = Calendar.time(pharmacy.at("order-by"));
        Part<List<DayOfWeek>> ships = pharmacy.at("ships").each(ClinicBuilder::day);
        Part<Integer> arrives = pharmacy.at("arrives-after-working-days").count();
        Part<Integer> authorisation = pharmacy.at("authorisation-working-days").count();
        Part<Set<LocalDate>> closed = dates(pharmacy.at("closed"));
        Part<Optional<LocalTime>> sameDay = pharmacy.at("same-day-arrival-from").ifWritten(Calendar::time);
        return Part.whole(
                pharmacy,
                () -> new Pharmacy(
                        name.get(),
                        orderBy.get(),
                        new HashSet<>(ships.get()),
                        arrives.get(),
                        authorisation.get(),
                        closed.get(),
                        sameDay.get()));
    }

    private static Part<DayOfWeek> day(Field field) {
        return new Part<>(field.text().value().map(word -> DayOfWeek.of(DAYS.indexOf(word) + 1)));
    }

    private static Part<Clinic.Approval> approval(Field approved) {
        Part<List<String>> by = approved.at("by").each(Field::text);
        Part<LocalDate> until = Calendar.date(approved.at("until"));
        return Part.whole(approved, () -> new Clinic.Approval(by.get(), until.get()));
    }
}

package cyclepacket.intake;

import cyclepacket.finding.Place;
import cyclepacket.finding.PlaceBook;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;

/** The places of every node of every file that was read, with the patient's name masked. */
final class Places implements PlaceBook {
    private final Map<String, Sheet> sheets = new LinkedHashMap<>();
    private final PatientMask name;

    Places(Collection<Sheet> read, PatientMask name) {
        read.forEach(sheet -> sheets.put(sheet.shownPath(), sheet));
        this.name = name;
    }

    @Override
    public Place locate(Place place) {
        Sheet sheet = sheets.get(place.file());
        if (sheet == null) {
            return place;
        }
        Place found = sheet.place(place.pointer());
        return name.masked(new Place(place.file(), place.pointer(), found.line(), found.column(), found.sourceLine()));
    }
}

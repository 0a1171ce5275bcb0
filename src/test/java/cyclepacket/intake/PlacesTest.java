package cyclepacket.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cyclepacket.finding.Place;
import cyclepacket.finding.PlaceBook;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class PlacesTest {
    private static final String PLAN = "plans/patients/SM-04417-issue-2.yaml";
    private PlaceBook places;

    @BeforeEach
    void readTheDemo() throws IOException {
        places = PlanReader.read(Path.of(PLAN)).places();
    }

    @Test
    void locatesAValue() {
        Place place = places.locate(Place.at(PLAN, "/doses/fsh-pen/1/amount"));
        assertEquals(21, place.line());
        assertEquals(34, place.column());
        assertEquals("    - {from: 2027-03-09, amount: 212.5, order: ORD-1192}", place.sourceLine());
        assertEquals("/doses/fsh-pen/1/amount", place.pointer());
    }

    @Test
    void locatesTheNearestParentOfAValueThatIsNotThere() {
        Place place = places.locate(Place.at(PLAN, "/record/3/given-by"));
        assertEquals(30, place.line());
        assertEquals(5, place.column());
        assertEquals("/record/3/given-by", place.pointer());
    }

    @Test
    void locatesInEveryFile() {
        assertEquals(
                11,
                places.locate(Place.at("plans/medicines/fsh-pen.yaml", "/dial/most"))
                        .line());
        assertEquals(
                14,
                places.locate(Place.at("plans/clinic.yaml", "/house-rules/between-marks"))
                        .line());
    }

    @Test
    void givesAPlaceInAnUnknownFileBack() {
        Place unknown = Place.at("plans/medicines/other.yaml", "/dial");
        assertEquals(unknown, places.locate(unknown));
    }

    @Test
    void keepsThePatientsNameOutOfTheLine() {
        assertEquals(
                "patient: {name: ***********, born: ****-**-**, number: \"*******\", zone: America/New_York}",
                places.locate(Place.at(PLAN, "/patient/zone")).sourceLine());
    }
}

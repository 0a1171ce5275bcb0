package cyclepacket.page;

import java.util.List;

/**
 * What the page for a journey adds to what other pages know.
 *
 * @param clocks the times to inject on both clocks; empty where the patient's clock is the clinic's, so that a journey to
 *     another zone is filled in by hand
 */
public record TravelView(List<Clock> clocks) {
    public TravelView {
        clocks = List.copyOf(clocks);
    }

    /**
     * One time on both clocks.
     *
     * @param day the first day that has it
     * @param once true for an injection at an exact minute, which has no other day
     * @param yours the time on the patient's clock
     * @param clinicDay the day it is then at the clinic
     * @param clinics the time on the clinic's clock
     */
    public record Clock(DayName day, boolean once, String yours, DayName clinicDay, String clinics) {}
}

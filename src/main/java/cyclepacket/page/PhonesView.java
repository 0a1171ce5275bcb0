package cyclepacket.page;

/** Numbers to call, kept on one line each, and when somebody answers. */
public record PhonesView(String day, String dayHours, String night, String nightHours, String emergency) {}

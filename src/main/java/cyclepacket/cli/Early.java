package cyclepacket.cli;

/** A command that can begin what takes long, on other threads, before its command line is read to the end. */
interface Early {
    void begin();
}

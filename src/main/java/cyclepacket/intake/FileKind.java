package cyclepacket.intake;

/** The five kinds of file. */
enum FileKind {
    PLAN("plan"),
    CLINIC("clinic"),
    PROTOCOL("protocol"),
    MEDICINE("medicine"),
    SYRINGE("syringe");

    private final String word;

    FileKind(String word) {
        this.word = word;
    }

    String word() {
        return word;
    }

    String schemaFile() {
        return word + ".schema.json";
    }
}

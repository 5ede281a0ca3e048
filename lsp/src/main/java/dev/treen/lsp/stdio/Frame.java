package dev.treen.lsp.stdio;

/** What was cut out of the stream. */
sealed interface Frame {

    /** The body of a message, with the outline of a JSON object. */
    record Body(String text) implements Frame {}

    /**
     * Something that is not passed on.
     *
     * @param reason why
     * @param beginning as much of it as was kept, to find out who has to be told
     */
    record Refused(Reason reason, String beginning) implements Frame {}

    /** The stream has ended. */
    record End() implements Frame {}

    /** Why a message was refused. */
    enum Reason {
        TOO_LONG("is longer than this server accepts"),
        TOO_DEEP("is nested deeper than this server accepts"),
        NO_JSON(
                "is not a JSON object");

        private final String words;

        Reason(String words) {
            this.words = words;
        }

        /** Completes a sentence that begins with the message. */
        String words() {
            return words;
        }
    }
}

package batchwright.report.export;

/** A name among other words, kept apart where it is written from right to left: otherwise it would turn their order around. */
final class Isolated {
    /** First strong isolate, pop directional isolate (Unicode Standard Annex 9). */
    private static final char FROM = '\u2068';

    private static final char TO = '\u2069';

    private Isolated() {}

    static String name(String name) {
        return name.codePoints().anyMatch(Isolated::turns) ? FROM + name + TO : name;
    }

    private static boolean turns(int character) {
        return switch (Character.getDirectionality(character)) {
            case Character.DIRECTIONALITY_RIGHT_TO_LEFT,
                    Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC,
                    Character.DIRECTIONALITY_ARABIC_NUMBER,
                    Character.DIRECTIONALITY_RIGHT_TO_LEFT_OVERRIDE,
                    Character.DIRECTIONALITY_RIGHT_TO_LEFT_EMBEDDING,
                    Character.DIRECTIONALITY_RIGHT_TO_LEFT_ISOLATE -> true;
            default -> false;
        };
    }
}

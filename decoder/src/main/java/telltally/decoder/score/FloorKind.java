package telltally.decoder.score;

/** What a floor holds a decoder to. */
enum FloorKind {
    LISTS_RIGHT("lists_right", 1) {
        @Override
        double of(Floors floors) {
            return floors.listsRight();
        }
    },
    CODES_RIGHT("codes_right", 1) {
        @Override
        double of(Floors floors) {
            return floors.codesRight();
        }
    },
    /** The only one that lets more pass the greater its number is. */
    INVENTED_CODES("invented_codes", 1_000_000) {
        @Override
        double of(Floors floors) {
            return floors.inventedCodes();
        }

        @Override
        boolean asksLess(double one, double other) {
            return one > other;
        }
    };

    private final String key;
    private final int most;

    FloorKind(String key, int most) {
        this.key = key;
        this.most = most;
    }

    /** As files name it. */
    String key() {
        return key;
    }

    /** The greatest number that may stand in a file. */
    int most() {
        return most;
    }

    abstract double of(Floors floors);

    /** Whether a floor of one number is lower than one of the other. */
    boolean asksLess(double one, double other) {
        return one < other;
    }
}

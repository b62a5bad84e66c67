package telltally.decoder.card.run;

/** Times that no clock had a part in, for tests of what shows them. */
public final class KnownTimes {
    private KnownTimes() {}

    /** One session each. */
    public static ReadingTimes of(long... nanos) {
        ReadingTimes times = new ReadingTimes();
        for (long each : nanos) {
            times.add(each);
        }
        return times;
    }
}

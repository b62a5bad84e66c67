package telltally.simulator.scenario;

/** How the learner perceives the flashes of a lesson, unless they choose otherwise. */
public enum Display {
    LAMP("lamp"),
    /** A light-emitting diode: at once at full light. */
    LED("led"),
    SOUNDER("sounder"),
    LAMP_AND_SOUNDER("lamp-and-sounder"),
    /** A lamp from battery positive to the self-test output, where the dash lamp does not work. */
    TEST_LIGHT("test-light"),
    /** An analogue voltmeter in the same place: its needle sweeps. */
    METER("meter");

    private final String key;

    Display(String key) {
        this.key = key;
    }

    /** As files write it. */
    public String key() {
        return key;
    }
}

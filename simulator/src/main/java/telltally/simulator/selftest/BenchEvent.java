package telltally.simulator.selftest;

/** Something that happened on the bench and can be noticed, or is worth knowing afterwards. */
public record BenchEvent(long atNanos, Kind kind, String detail) {
    /** What it was; the detail says of which code, circuit or cylinder. */
    public enum Kind {
        KEY_ON("key-on"),
        KEY_OFF("key-off"),
        JUMPER_IN("jumper-in"),
        JUMPER_OUT("jumper-out"),
        BULB_CHECK("bulb-check"),
        BATTERY_OFF("battery-off"),
        NO_SUPPLY("no-supply"),
        TEST_BEGINS("test-begins"),
        SOLENOID_CLICKS("solenoid-clicks"),
        SOLENOID_DROPS("solenoid-drops"),
        CODES_BEGIN("codes-begin"),
        CODES_OUT("codes-out"),
        CODE_STORED("code-stored"),
        STORED_ERASED("stored-erased"),
        OUTPUTS_ON("outputs-on"),
        OUTPUTS_OFF("outputs-off"),
        STARTER_ON("starter-on"),
        STARTER_BLOCKED("starter-blocked"),
        STARTER_GRINDS("starter-grinds"),
        DOES_NOT_START("does-not-start"),
        ENGINE_STARTS("engine-starts"),
        ENGINE_STALLS("engine-stalls"),
        PROMPT("prompt"),
        PROMPT_ANSWERED("prompt-answered"),
        BALANCE_BEGINS("balance-begins"),
        BALANCE_ENDS("balance-ends"),
        BALANCE_SPOILED("balance-spoiled");

        private final String key;

        Kind(String key) {
            this.key = key;
        }

        /** As files write it. */
        public String key() {
            return key;
        }
    }
}

package telltally.simulator.trace;

import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;

/** A signal as a value change dump writes it: what it is at 0, and its changes after that. */
sealed interface VcdSignal {
    String name();

    /** The identifier under which its changes stand. */
    String code();

    /** Its type and width. */
    String kind();

    String atStart();

    int changes();

    long atNanos(int change);

    String value(int change);

    record Level(String name, String code, PulseTrain train) implements VcdSignal {
        @Override
        public String kind() {
            return "wire 1";
        }

        @Override
        public String atStart() {
            return (train.litAtStart() ? "1" : "0") + code;
        }

        @Override
        public int changes() {
            return train.edgeCount();
        }

        @Override
        public long atNanos(int change) {
            return train.edgeNanos(change);
        }

        @Override
        public String value(int change) {
            return (train.litAtStart() ^ (change % 2 == 0) ? "1" : "0") + code;
        }
    }

    record Real(String name, String code, SampledSignal signal, int decimals) implements VcdSignal {
        @Override
        public String kind() {
            return "real 64";
        }

        @Override
        public String atStart() {
            return sample(0);
        }

        @Override
        public int changes() {
            return signal.size() - first();
        }

        @Override
        public long atNanos(int change) {
            return signal.atNanos(change + first());
        }

        @Override
        public String value(int change) {
            return sample(change + first());
        }

        /** A sample at 0 is what the signal is at the start, not a change. */
        private int first() {
            return signal.atNanos(0) == 0 ? 1 : 0;
        }

        private String sample(int index) {
            return "r" + SampleCsv.decimal(signal.value(index), decimals) + " " + code;
        }
    }
}

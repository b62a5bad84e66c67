package telltally.simulator.scenario;

import java.util.List;
import telltally.simulator.format.Message;
import telltally.simulator.selftest.BenchSetup;
import telltally.simulator.selftest.OperatorAct;

/** What a lesson sends: codes as they are given, or whatever comes of a vehicle and what is done to it. */
public sealed interface Content {
    /** For pure counting: the codes are given outright. */
    record Outright(Message message) implements Content {}

    /**
     * The codes follow from causes.
     *
     * @param acts in the order of time; the recording ends with the last
     */
    record Caused(BenchSetup setup, List<OperatorAct> acts) implements Content {
        public Caused {
            acts = List.copyOf(acts);
        }
    }
}

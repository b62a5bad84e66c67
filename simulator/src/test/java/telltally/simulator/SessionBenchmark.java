package telltally.simulator;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import telltally.simulator.chance.Chance;
import telltally.simulator.channel.ClockScale;
import telltally.simulator.channel.ContactBounce;
import telltally.simulator.channel.ImpairmentChain;
import telltally.simulator.channel.Jitter;
import telltally.simulator.channel.MissedFlashes;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.recording.Recording;
import telltally.simulator.scenario.ScenarioReader;
import telltally.simulator.signal.PulseTrain;

/** What one session costs when thousands of them are scored: another seed each time, the scenario read once. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class SessionBenchmark {
    private static final String HEAD = """
            {"schema": "telltally/scenario/1", "id": "bench", "title": "Bench", "briefing": ["None."], "task": "None.",
             "format": "pair-even", "code_list": "plank",
            """;

    private static final String KEY_ON = HEAD + """
             "vehicle": {"cylinders": 4, "transmission": "manual"},
             "faults": [{"circuit": "coolant", "fault": "open"},
              {"circuit": "air", "fault": "open", "when": "remembered"}],
             "acts": [{"at_s": 1, "act": "jumper-in"}, {"at_s": 3, "act": "key-on"}, {"at_s": 120, "act": "key-off"},
              {"at_s": 121, "act": "wait"}]}
            """;

    private static final String BALANCE = HEAD + """
             "vehicle": {"cylinders": 8, "transmission": "manual"},
             "acts": [{"at_s": 1, "act": "jumper-in"}, {"at_s": 2, "act": "crank"},
              {"at_s": 140, "act": "throttle", "to": "half"}, {"at_s": 141, "act": "throttle", "to": "closed"},
              {"at_s": 470, "act": "wait"}]}
            """;

    private final ImpairmentChain channel = ImpairmentChain.of(
            new ClockScale(1.02), new Jitter(0.05), new ContactBounce(8_000_000, 3), new MissedFlashes(0.02));
    private final Simulation keyOn = simulation(KEY_ON);
    private final Simulation balance = simulation(BALANCE);
    private long seed;

    private static Simulation simulation(String text) {
        try {
            return new Simulation(ScenarioReader.shipped().read(new TextFile("bench.json", text), Optional.empty()));
        } catch (ProblemException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Engine off, codes present and stored, then what an observer gets of it. */
    @Benchmark
    public PulseTrain engineOffSessionThroughAChannel() {
        Recording recording = keyOn.run(++seed);
        return channel.applyTo(recording.lamp(), Chance.of(seed).stream("channel"));
    }

    /** Running test and cylinder balance of eight: nearly eight simulated minutes. */
    @Benchmark
    public Recording eightCylinderBalance() {
        return balance.run(++seed);
    }
}

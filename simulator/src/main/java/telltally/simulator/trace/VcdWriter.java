package telltally.simulator.trace;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;

/**
 * Gathers signals and writes them as a value change dump (IEEE 1364-2005, clause 18): one change a line, since some
 * readers lose all but the first of a line, and last of all the time of the end. The same signals give
 * the same bytes. Not for sharing between threads.
 */
public final class VcdWriter {
    private static final long MICROSECOND = 1000;

    private final String scope;
    private final List<VcdSignal> signals = new ArrayList<>();
    private long endNanos;

    /** @param scope the name under which the signals stand, printable ASCII without blanks */
    public VcdWriter(String scope) {
        this.scope = checkedName(scope);
    }

    /**
     * Adds a one-bit wire, 1 where it is lit. After its own end a train that is shorter than others keeps its level.
     *
     * @throws IllegalArgumentException if the name is not printable ASCII without blanks, or is taken
     */
    public VcdWriter wire(String name, PulseTrain train) {
        add(new VcdSignal.Level(unused(name), code(), train), train.endNanos());
        return this;
    }

    /**
     * Adds a real value that changes with each sample; before the first sample it has that sample's value.
     *
     * @param decimals how many digits each value has after the point
     * @throws IllegalArgumentException if the name is as above, there is no sample or one lies before 0
     */
    public VcdWriter real(String name, SampledSignal signal, int decimals) {
        if (signal.size() == 0 || signal.atNanos(0) < 0) {
            throw new IllegalArgumentException("a dump holds samples from 0 on, and at least one");
        }
        add(new VcdSignal.Real(unused(name), code(), signal, decimals), signal.atNanos(signal.size() - 1));
        return this;
    }

    /** @throws IllegalStateException if there is nothing to write */
    public String text() {
        if (endNanos == 0) {
            throw new IllegalStateException("a dump needs a signal with a length");
        }
        boolean micros = endNanos % MICROSECOND == 0 && signals.stream().allMatch(VcdWriter::isInMicros);
        StringBuilder text = new StringBuilder();
        header(text, micros ? "1 us" : "1 ns");
        changes(text, micros ? MICROSECOND : 1);
        return text.toString();
    }

    public void write(Appendable out) throws IOException {
        out.append(text());
    }

    private void header(StringBuilder text, String timescale) {
        text.append("$date none: the same signals give the same file $end\n")
                .append("$version Telltally $end\n")
                .append("$timescale ")
                .append(timescale)
                .append(" $end\n$scope module ")
                .append(scope)
                .append(" $end\n");
        for (VcdSignal signal : signals) {
            text.append("$var ").append(signal.kind()).append(' ').append(signal.code());
            text.append(' ').append(signal.name()).append(" $end\n");
        }
        text.append("$upscope $end\n$enddefinitions $end\n#0\n$dumpvars\n");
        for (VcdSignal signal : signals) {
            text.append(signal.atStart()).append('\n');
        }
        text.append("$end\n");
    }

    private void changes(StringBuilder text, long nanosPerUnit) {
        int[] next = new int[signals.size()];
        long written = 0;
        for (long now = nextNanos(next); now < Long.MAX_VALUE; now = nextNanos(next)) {
            text.append('#').append(now / nanosPerUnit).append('\n');
            for (int i = 0; i < next.length; i++) {
                VcdSignal signal = signals.get(i);
                if (next[i] < signal.changes() && signal.atNanos(next[i]) == now) {
                    text.append(signal.value(next[i]++)).append('\n');
                }
            }
            written = now;
        }
        if (written < endNanos) {
            text.append('#').append(endNanos / nanosPerUnit).append('\n');
        }
    }

    /** The earliest change that was not written; the largest of all numbers where all were. */
    private long nextNanos(int[] next) {
        long earliest = Long.MAX_VALUE;
        for (int i = 0; i < next.length; i++) {
            if (next[i] < signals.get(i).changes()) {
                earliest = Math.min(earliest, signals.get(i).atNanos(next[i]));
            }
        }
        return earliest;
    }

    private static boolean isInMicros(VcdSignal signal) {
        for (int i = 0; i < signal.changes(); i++) {
            if (signal.atNanos(i) % MICROSECOND != 0) {
                return false;
            }
        }
        return true;
    }

    private void add(VcdSignal signal, long signalEndNanos) {
        signals.add(signal);
        endNanos = Math.max(endNanos, signalEndNanos);
    }

    private String unused(String name) {
        if (signals.stream().anyMatch(signal -> signal.name().equals(name))) {
            throw new IllegalArgumentException("two signals are called " + name);
        }
        return checkedName(name);
    }

    /** Letters, then pairs of letters: signs such as # are allowed too, but some readers take them for a time. */
    private String code() {
        StringBuilder code = new StringBuilder();
        for (int rest = signals.size(); rest >= 0; rest = rest / 26 - 1) {
            code.insert(0, (char) ('a' + rest % 26));
        }
        return code.toString();
    }

    private static String checkedName(String name) {
        if (name.isEmpty() || name.equals("$end") || !name.chars().allMatch(letter -> letter > ' ' && letter <= '~')) {
            throw new IllegalArgumentException("a name is printable and without blanks, not \"" + name + "\"");
        }
        return name;
    }
}

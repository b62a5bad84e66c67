package telltally.trainer.command;

import java.util.concurrent.locks.LockSupport;
import telltally.simulator.signal.PulseTrain;

/** A lamp in one line of a terminal. Its level is asked of the train at each look at one clock, so it cannot drift. */
final class TerminalLamp {
    private static final long LOOK_EVERY_NANOS = 10_000_000L;
    private static final String DARK = "\r   ( )  ";
    private static final String LIT = "\r   (*)  ";

    private final Streams streams;

    TerminalLamp(Streams streams) {
        this.streams = streams;
    }

    void play(PulseTrain pulses) {
        long startNanos = System.nanoTime();
        boolean shown = !pulses.litAtStart();
        long nowNanos = 0;
        while (nowNanos < pulses.endNanos() && !Thread.currentThread().isInterrupted()) {
            boolean lit = pulses.litAt(nowNanos);
            if (lit != shown) {
                streams.out().print(lit ? LIT : DARK);
                streams.out().flush();
                shown = lit;
            }
            LockSupport.parkNanos(LOOK_EVERY_NANOS);
            nowNanos = System.nanoTime() - startNanos;
        }
        streams.line(DARK);
    }
}

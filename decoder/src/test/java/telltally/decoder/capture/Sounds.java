package telltally.decoder.capture;

import telltally.simulator.chance.Chance;
import telltally.simulator.channel.Sounder;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.SampledSignal;
import telltally.simulator.trace.Sound;

/** Sounds of trains, and what spoils them. */
final class Sounds {
    private Sounds() {}

    static Sound of(Sounder sounder, PulseTrain train, int rateHz, Trains.Change spoilt) {
        SampledSignal clean = sounder.sound(train, rateHz);
        float[] samples = new float[clean.size()];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = (float) spoilt.of(clean.atNanos(i) / 1e9, clean.value(i));
        }
        return Sound.of(rateHz, samples);
    }

    static Trains.Change noiseAndHum(long seed, double noise, double hum) {
        Chance chance = Chance.of(seed);
        return (second, value) -> value + noise * chance.nextNormal() + hum * Math.sin(2 * Math.PI * 50 * second);
    }

    /** Half of full scale while lit, behind a high-pass of one condenser; no end to its time lets all through. */
    static Sound voltage(PulseTrain train, int rateHz, double fadeSeconds, Trains.Change spoilt) {
        int size = (int) (train.endNanos() * (long) rateHz / 1_000_000_000L);
        float[] samples = new float[size];
        double keep = Math.exp(-1 / (fadeSeconds * rateHz));
        double before = train.litAtStart() ? 0.5 : 0;
        double passed = 0;
        for (int i = 0; i < size; i++) {
            double second = (double) i / rateHz;
            double now = train.litAt((long) (second * 1e9)) ? 0.5 : 0;
            passed = keep * (passed + now - before);
            before = now;
            samples[i] = (float) spoilt.of(second, passed);
        }
        return Sound.of(rateHz, samples);
    }
}

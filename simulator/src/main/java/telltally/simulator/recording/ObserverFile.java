package telltally.simulator.recording;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import telltally.simulator.chance.Chance;
import telltally.simulator.channel.Bulb;
import telltally.simulator.channel.FilamentLamp;
import telltally.simulator.channel.MeterNeedle;
import telltally.simulator.channel.SteadySupply;
import telltally.simulator.channel.Tone;
import telltally.simulator.channel.Wire;
import telltally.simulator.signal.SampledSignal;
import telltally.simulator.trace.SampleCsv;
import telltally.simulator.trace.Sound;
import telltally.simulator.trace.Wav;

/** What instruments would have recorded of a recording, each as a file of its own. */
public enum ObserverFile {
    /** Light of a filament bulb behind the lens, 100 samples a second, 1 at its rated voltage. */
    LIGHT("light", "light.csv") {
        @Override
        void write(Recording recording, Path file) throws IOException {
            FilamentLamp lamp = FilamentLamp.of(Bulb.panel(), Math.max(LEAST_LAMP_VOLTS, recording.batteryVolts()));
            samples(lamp.light(recording.lamp(), SAMPLES_PER_SECOND), file);
        }
    },
    /** Deflection of a meter between battery positive and the output, 100 samples a second, 1 at full voltage. */
    NEEDLE("needle", "needle.csv") {
        @Override
        void write(Recording recording, Path file) throws IOException {
            samples(MeterNeedle.standard().deflection(recording.pin(), SAMPLES_PER_SECOND), file);
        }
    },
    /** A sounder at the output: a tone while the lamp would be lit, 8 kHz, 16 bit. */
    SOUNDER("sounder", "sounder.wav") {
        @Override
        void write(Recording recording, Path file) throws IOException {
            Tone tone = new Tone(TONE_HERTZ, TONE_AMPLITUDE);
            sound(tone.sound(recording.lamp(), SOUND_HERTZ), 1, file);
        }
    },
    /** The output's voltage as a sound card would take it down, 8 kHz, 16 bit, full scale 16 V. */
    WIRE("wire", "wire.wav") {
        @Override
        void write(Recording recording, Path file) throws IOException {
            Wire wire = new Wire(new SteadySupply(recording.batteryVolts()), SATURATION_VOLTS, RISE_NANOS, NOISE_VOLTS);
            Chance noise = Chance.of(recording.seed()).stream("observer/wire");
            sound(wire.volts(recording.pin(), SOUND_HERTZ, noise), FULL_SCALE_VOLTS, file);
        }
    };

    private static final double SAMPLES_PER_SECOND = 100;
    private static final int SAMPLE_PLACES = 5;
    private static final int SOUND_HERTZ = 8000;
    private static final double FULL_SCALE_VOLTS = 16;
    private static final double TONE_HERTZ = 880;
    private static final double TONE_AMPLITUDE = 0.5;

    /** A bulb is not computed for less; it gives no light long before. */
    private static final double LEAST_LAMP_VOLTS = 1;

    /** A usual open-collector output. Common practice, no source. */
    private static final double SATURATION_VOLTS = 0.4;

    private static final long RISE_NANOS = 50_000;
    private static final double NOISE_VOLTS = 0.05;

    private final String word;
    private final String fileName;

    ObserverFile(String word, String fileName) {
        this.word = word;
        this.fileName = fileName;
    }

    /** By which a command asks for it. */
    public String word() {
        return word;
    }

    public String fileName() {
        return fileName;
    }

    abstract void write(Recording recording, Path file) throws IOException;

    private static void samples(SampledSignal signal, Path file) throws IOException {
        try (Writer out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
            SampleCsv.write(signal, SAMPLE_PLACES, out);
        }
    }

    private static void sound(SampledSignal signal, double fullScale, Path file) throws IOException {
        float[] samples = new float[signal.size()];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = (float) (signal.value(i) / fullScale);
        }
        Files.write(file, Wav.bytes(Sound.of(SOUND_HERTZ, samples), 16));
    }
}

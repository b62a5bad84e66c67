package telltally.trainer.playback;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.ShortBuffer;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import javax.sound.sampled.LineUnavailableException;
import org.junit.jupiter.api.Test;
import telltally.simulator.signal.PulseTrain;

class SounderTest {
    private static final long MILLISECOND = 1_000_000L;

    private final PulseTrain pulses = FlashRateTest.even(1000, 3);

    /** What a line would have played of the whole train, if its clock ran fast by this factor. */
    private short[] heard(double cardSpeed) {
        SoundFeed feed = new SoundFeed(pulses, Voice.usual());
        int chunks = (int) (pulses.endNanos() / (10 * MILLISECOND));
        ByteBuffer all =
                ByteBuffer.allocate(chunks * 2 * SoundFeed.CHUNK_SAMPLES).order(ByteOrder.LITTLE_ENDIAN);
        for (int chunk = 0; chunk < chunks; chunk++) {
            all.put(feed.next((long) (10 * MILLISECOND * chunk / cardSpeed), 0));
        }
        ShortBuffer samples = all.flip().asShortBuffer();
        short[] heard = new short[samples.remaining()];
        samples.get(heard);
        return heard;
    }

    @Test
    void it_sounds_while_the_train_is_lit_and_only_then() {
        short[] heard = heard(1);
        int sounding = 0;
        for (int i = 0; i < heard.length; i++) {
            boolean near = isLit(i, -6) || isLit(i, 0);
            if (heard[i] != 0) {
                sounding++;
                assertThat(near).as("sample " + i).isTrue();
            }
        }
        // A tone crosses zero 1320 times a second; nearly every other sample of 1.5 s is heard.
        assertThat((double) sounding / Tone.SAMPLE_RATE).isCloseTo(1.5, within(0.05));
    }

    /** The fade after a flash lasts 5 ms. */
    private boolean isLit(int sample, int millis) {
        return pulses.litAt(sample * 1_000_000_000L / Tone.SAMPLE_RATE + millis * MILLISECOND);
    }

    @Test
    void the_tone_has_the_frequency_it_should_have() {
        short[] heard = heard(1);
        int from = Tone.SAMPLE_RATE / 2;
        int crossings = 0;
        for (int i = from + 1; i < from + Tone.SAMPLE_RATE / 4; i++) {
            crossings += heard[i - 1] < 0 && heard[i] >= 0 ? 1 : 0;
        }
        // A quarter of a second of whole periods; a period may be cut at either end.
        assertThat(crossings)
                .isBetween(Voice.usual().hertz() / 4 - 1, Voice.usual().hertz() / 4 + 1);
    }

    @Test
    void nothing_clicks() {
        short[] heard = heard(1);
        int steepest = 0;
        for (int i = 1; i < heard.length; i++) {
            steepest = Math.max(steepest, Math.abs(heard[i] - heard[i - 1]));
        }
        // The steepest step of a full sine of this frequency and loudness, and the swell of one sample.
        double full = 0.4 * Short.MAX_VALUE;
        double sine = full * 2 * Math.PI * Voice.usual().hertz() / Tone.SAMPLE_RATE;
        assertThat(steepest).isLessThanOrEqualTo((int) (sine + full / 220 + 2));
    }

    @Test
    void a_sound_card_with_another_clock_is_mended_in_silence() {
        // Half a percent off is far more than any real card; over 3 s it would add up to 17 ms.
        SoundFeed feed = new SoundFeed(pulses, Voice.usual());
        for (int chunk = 0; chunk < 340; chunk++) {
            feed.next((long) (10 * MILLISECOND * chunk * 1.005), 0);
        }
        assertThat(feed.worstOffNanos()).isZero();
    }

    @Test
    void a_stall_while_it_sounds_is_noted() {
        SoundFeed feed = new SoundFeed(pulses, Voice.usual());
        for (int chunk = 0; chunk < 60; chunk++) {
            feed.next(10 * MILLISECOND * chunk, 0);
        }
        feed.next(700 * MILLISECOND, 0);

        assertThat(feed.worstOffNanos()).isBetween(90 * MILLISECOND, 110 * MILLISECOND);
    }

    @Test
    void without_a_device_it_says_so_and_nothing_breaks() throws InterruptedException {
        CountDownLatch asked = new CountDownLatch(1);
        for (SoundLine.Opener opener : List.<SoundLine.Opener>of(
                () -> {
                    asked.countDown();
                    throw new IllegalArgumentException("No line matching interface SourceDataLine");
                },
                () -> {
                    throw new LineUnavailableException("busy");
                })) {
            try (Sounder sounder = new Sounder(opener)) {
                sounder.play(pulses, Voice.usual(), () -> 0);
                sounder.awaitEnd();
                assertThat(sounder.trouble()).isPresent();
            }
        }
        assertThat(asked.await(5, TimeUnit.SECONDS)).isTrue();
    }

    @Test
    void the_line_runs_on_silence_before_the_first_beep() throws InterruptedException {
        LinkedBlockingQueue<byte[]> written = new LinkedBlockingQueue<>(1);
        SoundLine line = new SoundLine() {
            @Override
            public void write(byte[] chunk) {
                try {
                    written.put(chunk);
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                }
            }

            @Override
            public int queuedSamples() {
                return 0;
            }

            @Override
            public void close() {}
        };
        try (Sounder sounder = new Sounder(() -> line)) {
            byte[] first = written.poll(5, TimeUnit.SECONDS);
            assertThat(first).containsOnly(0);

            sounder.play(pulses, Voice.usual(), () -> 500 * MILLISECOND);
            boolean heard = false;
            for (int chunk = 0; chunk < 20 && !heard; chunk++) {
                byte[] next = written.poll(5, TimeUnit.SECONDS);
                heard = next != null && ByteBuffer.wrap(next).getInt(next.length - 4) != 0;
            }
            assertThat(heard).isTrue();
            assertThat(sounder.trouble()).isEmpty();
        }
    }
}

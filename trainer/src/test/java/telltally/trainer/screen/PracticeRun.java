package telltally.trainer.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongSupplier;
import telltally.decoder.plain.PlainDecoder;
import telltally.simulator.scenario.Display;
import telltally.simulator.scenario.Scenario;
import telltally.simulator.signal.PulseTrain;
import telltally.trainer.lesson.LessonShelf;
import telltally.trainer.lesson.LessonShelf.Entry;
import telltally.trainer.lesson.SampleLessons;
import telltally.trainer.playback.Sound;
import telltally.trainer.playback.Voice;
import telltally.trainer.settings.Settings;
import telltally.trainer.settings.SettingsStore;

/** A trainer without a window: frames come when the test says so, sound goes to a list. */
final class PracticeRun {
    static final long FRAME_NANOS = 16_000_000L;

    final AtomicLong clockNanos = new AtomicLong(5_000_000_000L);
    final ListeningSound sound = new ListeningSound();
    final SampleRecords records = new SampleRecords();
    final Trainer trainer;
    private int soundsOpened;
    private long seeds;

    PracticeRun(LessonShelf shelf, Optional<String> startLesson) {
        Trainer.Surroundings surroundings = new Trainer.Surroundings(
                clockNanos::get,
                () -> ++seeds,
                () -> {
                    soundsOpened++;
                    return sound;
                },
                SettingsStore.forgetful(Settings.usual().withLanguage(Optional.of(Locale.ENGLISH))),
                new PlainDecoder(),
                records.records());
        trainer = new Trainer(() -> shelf, surroundings, startLesson);
    }

    static PracticeRun usual() {
        return new PracticeRun(SampleLessons.shelf(), Optional.empty());
    }

    static PracticeRun of(Scenario scenario) {
        return new PracticeRun(new LessonShelf(List.of(new Entry.Ready("sample.json", scenario))), Optional.empty());
    }

    <T extends Screen> T at(Class<T> expected) {
        return expected.cast(trainer.screen());
    }

    /** As far as the lamp of the first lesson. */
    PlayScreen playing(Display display) {
        NoticeScreen notice = at(NoticeScreen.class);
        notice.choiceProperty().set(display);
        notice.goOn();
        lessons().open(0);
        at(BriefingScreen.class).start();
        return at(PlayScreen.class);
    }

    /** As a guest, from the question who is practising. */
    LessonsScreen lessons() {
        at(LearnersScreen.class).goOnAsGuest();
        at(HomeScreen.class).lessons();
        return at(LessonsScreen.class);
    }

    void pass(double seconds) {
        trainer.advanceTo(clockNanos.get());
        long endNanos = clockNanos.get() + (long) (seconds * 1e9);
        while (clockNanos.get() < endNanos) {
            trainer.advanceTo(clockNanos.addAndGet(FRAME_NANOS));
        }
    }

    void stall(double seconds) {
        trainer.advanceTo(clockNanos.addAndGet((long) (seconds * 1e9)));
    }

    int soundsOpened() {
        return soundsOpened;
    }

    /** What was asked of the sound. */
    static final class ListeningSound implements Sound {
        final List<String> calls = new ArrayList<>();
        Optional<Trouble> trouble = Optional.empty();
        long worstOffNanos;
        LongSupplier positionNanos = () -> -1;

        @Override
        public void play(PulseTrain pulses, Voice voice, LongSupplier position) {
            calls.add("play");
            positionNanos = position;
        }

        @Override
        public void stop() {
            calls.add("stop");
        }

        @Override
        public Optional<Trouble> trouble() {
            return trouble;
        }

        @Override
        public long worstOffNanos() {
            return worstOffNanos;
        }

        @Override
        public void close() {
            calls.add("close");
        }
    }
}

package telltally.decoder.capture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import telltally.decoder.capture.CaptureResult.NoPulses;
import telltally.decoder.capture.CaptureResult.Pulses;
import telltally.decoder.capture.CaptureResult.Reason;
import telltally.simulator.signal.PulseTrain;

/** Clips written by a program of another project (FFmpeg), coded as phones code them. */
class OutsideClipTest {
    private static final PulseTrain TRAIN = Trains.code34(1);
    private static final int FRAMES_A_SECOND = 25;

    @TempDir
    Path folder;

    @BeforeEach
    void needs_the_program() {
        boolean there = List.of(System.getenv("PATH").split(File.pathSeparator, -1)).stream()
                .anyMatch(path -> Files.isExecutable(Path.of(path, "ffmpeg")));
        if (!there && "no".equals(System.getenv("TELLTALLY_MAY_SKIP"))) {
            Assertions.fail("ffmpeg is not installed (Debian package ffmpeg)");
        }
        Assumptions.assumeTrue(there, "ffmpeg is not installed (Debian package ffmpeg)");
    }

    @Test
    void high_profile_with_frames_predicted_from_later_ones_and_a_sound_track() throws Exception {
        Pulses pulses = (Pulses)
                ClipCapture.of(clip("phone.mp4", "-c:v", "libx264", "-profile:v", "high", "-bf", "3", "-c:a", "aac"));
        assertThat(Trains.worstSeconds(TRAIN, pulses.train())).isLessThan(2.0 / FRAMES_A_SECOND);
    }

    @Test
    void a_quicktime_file_that_is_to_be_turned_upright() throws Exception {
        Pulses pulses = (Pulses)
                ClipCapture.of(clip("phone.mov", "-c:v", "libx264", "-bf", "2", "-an", "-metadata:s:v", "rotate=90"));
        assertThat(Trains.worstSeconds(TRAIN, pulses.train())).isLessThan(2.0 / FRAMES_A_SECOND);
    }

    @Test
    void a_clip_whose_index_comes_first() throws Exception {
        Pulses pulses = (Pulses) ClipCapture.of(
                clip("web.mp4", "-c:v", "libx264", "-profile:v", "baseline", "-an", "-movflags", "+faststart"));
        assertThat(Trains.worstSeconds(TRAIN, pulses.train())).isLessThan(2.0 / FRAMES_A_SECOND);
    }

    @Test
    void other_codings_are_named() throws Exception {
        NoPulses matroska = (NoPulses) ClipCapture.of(clip("other.mkv", "-c:v", "mpeg4", "-an"));
        assertThat(matroska.reason()).isEqualTo(Reason.NO_CLIP);
        assertThat(matroska.text()).startsWith("the clip is WebM or Matroska; ");
        NoPulses older = (NoPulses) ClipCapture.of(clip("older.mp4", "-c:v", "mpeg4", "-an"));
        assertThat(older.reason()).isEqualTo(Reason.UNREADABLE_CODING);
        assertThat(older.text()).startsWith("the clip is MPEG-4 part 2 or H.263; ");
    }

    /** A grey dash with noise and a lamp of 12 pixels. */
    private byte[] clip(String name, String... coding) throws Exception {
        String lit = TRAIN.intervals().stream()
                .filter(interval -> interval.lit())
                .map(interval -> "between(t," + interval.startNanos() / 1e9 + "," + interval.endNanos() / 1e9 + ")")
                .collect(Collectors.joining("+"));
        String seconds = String.valueOf(TRAIN.endNanos() / 1e9);
        String scene = "color=c=0x404040:s=320x192:r=" + FRAMES_A_SECOND + ":d=" + seconds
                + ",noise=alls=8:allf=t:all_seed=5,drawbox=x=200:y=90:w=12:h=12:color=0xffe0a0:t=fill:enable='" + lit
                + "'";
        List<String> command = new ArrayList<>(List.of("ffmpeg", "-loglevel", "error", "-f", "lavfi", "-i", scene));
        command.addAll(List.of("-f", "lavfi", "-i", "anullsrc=d=" + seconds, "-pix_fmt", "yuv420p"));
        command.addAll(List.of(coding));
        command.add(name);
        Path printed = folder.resolve("printed.txt");
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(printed.toFile())
                .start();
        process.getOutputStream().close();
        boolean ended = process.waitFor(2, TimeUnit.MINUTES);
        process.destroyForcibly();
        assertThat(ended).as("ffmpeg ended").isTrue();
        assertThat(process.exitValue()).as(Files.readString(printed)).isZero();
        return Files.readAllBytes(folder.resolve(name));
    }
}

package telltally.simulator.channel;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import telltally.simulator.chance.Chance;
import telltally.simulator.signal.PulseTrain;

@Domain(Trains.class)
@Domain(DomainContext.Global.class)
class CameraFramesProperties {
    @Property
    void looking_only_near_edges_gives_what_looking_at_every_frame_gives(
            @ForAll PulseTrain train,
            @ForAll @DoubleRange(min = 1, max = 60) double rate,
            @ForAll @DoubleRange(min = 0.01, max = 1) double shutter,
            @ForAll @DoubleRange(min = 0.1, max = 1) double litShare,
            @ForAll long seed) {
        CameraFrames camera = new CameraFrames(rate, (long) (shutter * 1e9 / rate), litShare);

        assertThat(camera.applyTo(train, Chance.of(seed)))
                .isEqualTo(frameByFrame(camera, train, Chance.of(seed).nextUnit()));
    }

    private static PulseTrain frameByFrame(CameraFrames camera, PulseTrain train, double phase) {
        PulseTrain.Builder film = PulseTrain.builder();
        double period = 1e9 / camera.framesPerSecond();
        boolean shown = false;
        for (int frame = 0; phase * period + frame * period + camera.exposureNanos() <= train.endNanos(); frame++) {
            long start = (long) (phase * period + frame * period);
            long lit = train.litNanosBetween(start, start + camera.exposureNanos());
            boolean now = lit >= camera.litShare() * camera.exposureNanos();
            film.stay(frame == 0 ? now : shown, start - film.nowNanos());
            shown = now;
        }
        return film.stay(shown, train.endNanos() - film.nowNanos()).build();
    }
}

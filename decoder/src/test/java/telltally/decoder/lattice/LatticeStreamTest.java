package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import telltally.decoder.reading.Reading.Group;
import telltally.simulator.format.Encoder;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Message;
import telltally.simulator.format.Pacing;
import telltally.simulator.signal.PulseTrain;

class LatticeStreamTest {
    private final FlashFormat format = FormatCatalog.shipped().find("pair-even").orElseThrow();
    private final LatticeStream stream = new LatticeStream(new LatticeDecoder(), List.of(format), 0.95);

    @Test
    void a_code_is_told_as_soon_as_the_next_one_begins_and_only_once() {
        Message message = new Message.KeyOn(List.of("34", "42"), List.of("11"));
        PulseTrain lamp = new Encoder(format).encode(message, Pacing.usual()).lamp();
        List<Group> told = feed(lamp);
        told.addAll(stream.quiet(lamp.endNanos()));
        assertThat(told.stream()
                        .filter(group -> group.kind() == GroupKind.CODE)
                        .map(Group::digits)
                        .toList())
                .containsExactly("34", "42", "34", "42", "11", "11");
        assertThat(told.get(0).startNanos()).isEqualTo(lamp.edgeNanos(0));
        // Told for good when the gap after it was over, not at the end of the recording.
        LatticeStream second = new LatticeStream(new LatticeDecoder(), List.of(format), 0.95);
        second.edge(0, false);
        List<Group> early = new ArrayList<>();
        for (int i = 0; i < 15; i++) {
            early.addAll(second.edge(lamp.edgeNanos(i), i % 2 == 0));
        }
        assertThat(early).extracting(Group::digits).containsExactly("34");
    }

    @Test
    void a_million_edges_leave_the_memory_as_it_was() {
        stream.edge(0, false);
        for (long i = 1; i <= 1_000_000; i++) {
            assertThat(stream.edge(i * 1000, i % 2 == 1)).isEmpty();
        }
        assertThat(stream.reading(2_000_000_000L).codes()).isEmpty();
    }

    @Test
    void edges_that_go_back_in_time_or_change_nothing_are_passed_over() {
        stream.edge(0, false);
        stream.edge(1_000_000_000L, true);
        assertThat(stream.edge(1_000_000_000L, false)).isEmpty();
        assertThat(stream.edge(500_000_000L, false)).isEmpty();
        assertThat(stream.edge(1_500_000_000L, true)).isEmpty();
        assertThat(stream.reading(2_000_000_000L).groups()).hasSizeLessThanOrEqualTo(1);
    }

    private List<Group> feed(PulseTrain train) {
        List<Group> told = new ArrayList<>(stream.edge(0, train.litAtStart()));
        for (int i = 0; i < train.edgeCount(); i++) {
            told.addAll(stream.edge(train.edgeNanos(i), train.litAtStart() ^ (i % 2 == 0)));
        }
        return told;
    }
}

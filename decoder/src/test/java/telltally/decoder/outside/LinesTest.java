package telltally.decoder.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import telltally.decoder.score.Outcome.Failed;
import telltally.decoder.score.Outcome.Failure;

/** What a program writes, as it arrives: lines of at most ten bytes, and no more than thirty that nobody took. */
@Timeout(20)
class LinesTest {
    private static final Limits SMALL = new Limits(Duration.ofSeconds(1), Duration.ofSeconds(1), 10, 30, 1, 1);

    private static LineInbox filled(String written) {
        LineInbox inbox = new LineInbox(in(written), SMALL);
        inbox.run();
        return inbox;
    }

    private static InputStream in(String written) {
        return new ByteArrayInputStream(written.getBytes(StandardCharsets.UTF_8));
    }

    private static String taken(LineInbox inbox) throws Exception {
        return inbox.take(System.nanoTime())
                .map(line -> new String(line, StandardCharsets.UTF_8))
                .orElse("none");
    }

    private static void floods(LineInbox inbox, String detail) {
        assertThatThrownBy(() -> taken(inbox))
                .isInstanceOfSatisfying(
                        Misbehaviour.class,
                        e -> assertThat(e.outcome()).isEqualTo(new Failed(Failure.FLOODED, detail)));
    }

    @Test
    void lines_are_taken_in_their_order_without_their_ends() throws Exception {
        LineInbox inbox = filled("one\n\nthree\n");
        assertThat(inbox.holdsLine()).isTrue();
        assertThat(taken(inbox)).isEqualTo("one");
        assertThat(taken(inbox)).isEmpty();
        assertThat(taken(inbox)).isEqualTo("three");
        assertThat(inbox.holdsLine()).isFalse();
        assertThat(taken(inbox)).isEqualTo("none");
        assertThat(inbox.isClosed()).isTrue();
        assertThat(inbox.begunBytes()).isZero();
    }

    @Test
    void a_line_that_does_not_end_is_no_line() throws Exception {
        LineInbox inbox = filled("one\ntwo");
        assertThat(taken(inbox)).isEqualTo("one");
        assertThat(taken(inbox)).isEqualTo("none");
        assertThat(inbox.begunBytes()).isEqualTo(3);
    }

    @Test
    void a_line_may_be_as_long_as_the_limit_and_no_longer() throws Exception {
        assertThat(taken(filled("0123456789\n"))).isEqualTo("0123456789");
        LineInbox longer = filled("first\n01234567890");
        assertThat(taken(longer)).isEqualTo("first");
        floods(longer, "wrote a line of more than 10 bytes");
    }

    /** Three lines of nine bytes with their ends are thirty; what is taken makes room. */
    @Test
    void so_much_may_lie_there_untaken_and_no_more() throws Exception {
        LineInbox full = filled("123456789\n123456789\n123456789\n");
        for (int i = 0; i < 3; i++) {
            assertThat(taken(full)).isEqualTo("123456789");
        }
        assertThat(taken(full)).isEqualTo("none");
        LineInbox fuller = filled("123456789\n123456789\n123456789\n1");
        for (int i = 0; i < 3; i++) {
            assertThat(taken(fuller)).isEqualTo("123456789");
        }
        floods(fuller, "wrote more than 30 bytes that nobody asked for");
    }

    /** Comes in pieces, each when the one before was taken. */
    @Test
    void what_was_taken_no_longer_counts() throws Exception {
        LineInbox[] inbox = new LineInbox[1];
        InputStream pieces = new InputStream() {
            private int piece;

            @Override
            public int read() {
                throw new UnsupportedOperationException();
            }

            @Override
            public int read(byte[] chunk, int from, int length) throws IOException {
                try {
                    assertThat(taken(inbox[0])).isEqualTo(piece == 0 ? "none" : "12345678");
                } catch (Exception e) {
                    throw new IOException(e);
                }
                if (piece++ == 20) {
                    return -1;
                }
                System.arraycopy("12345678\n".getBytes(StandardCharsets.UTF_8), 0, chunk, from, 9);
                return 9;
            }
        };
        inbox[0] = new LineInbox(pieces, SMALL);
        inbox[0].run();
        assertThat(taken(inbox[0])).isEqualTo("none");
        assertThat(inbox[0].isClosed()).isTrue();
    }

    @Test
    void an_output_that_breaks_off_is_closed() throws Exception {
        InputStream broken = InputStream.nullInputStream();
        broken.close();
        LineInbox inbox = new LineInbox(broken, SMALL);
        inbox.run();
        assertThat(inbox.isClosed()).isTrue();
        assertThat(taken(inbox)).isEqualTo("none");
    }

    @Test
    void who_waits_for_a_line_gets_it_when_it_comes() throws Exception {
        LineInbox inbox = new LineInbox(in("late\n"), SMALL);
        Thread writer = new Thread(() -> {
            try {
                Thread.sleep(50);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            inbox.run();
        });
        writer.start();
        assertThat(inbox.isClosed()).isFalse();
        assertThat(inbox.take(System.nanoTime() + 10_000_000_000L)).isPresent();
        writer.join();
    }

    @Test
    void who_waits_for_nothing_waits_until_the_deadline() throws Exception {
        LineInbox inbox = new LineInbox(in(""), SMALL);
        long before = System.nanoTime();
        assertThat(inbox.take(before + 20_000_000)).isEqualTo(Optional.empty());
        assertThat(System.nanoTime() - before).isGreaterThanOrEqualTo(20_000_000);
        assertThat(inbox.isClosed()).isFalse();
    }

    private static String lastLine(String written) {
        ErrorTail tail = new ErrorTail(in(written));
        tail.run();
        return tail.lastLine();
    }

    @Test
    void the_last_words_are_the_last_line_that_says_anything() {
        assertThat(lastLine("first\n  second \n\n \n")).isEqualTo("second");
        assertThat(lastLine("")).isEmpty();
        assertThat(lastLine("no end")).isEqualTo("no end");
    }

    /** 2048 bytes are kept: of a line of more, its end. */
    @Test
    void of_very_many_words_the_end_is_kept() {
        assertThat(lastLine("x".repeat(5000) + "end")).isEqualTo("x".repeat(2045) + "end");
        assertThat(lastLine("a".repeat(3000) + "\n" + "b".repeat(2047))).isEqualTo("b".repeat(2047));
        assertThat(lastLine("c".repeat(2048))).isEqualTo("c".repeat(2048));
        assertThat(lastLine("d" + "e".repeat(2048))).isEqualTo("e".repeat(2048));
    }

    @Test
    void limits_are_of_at_least_one_and_leave_room_for_a_line() {
        Duration second = Duration.ofSeconds(1);
        assertThat(new Limits(second, second, 1, 1, 1, 1).lineBytes()).isEqualTo(1);
        for (int[] bad : new int[][] {{0, 1, 1, 1}, {2, 1, 1, 1}, {1, 1, 0, 1}, {1, 1, 1, 0}}) {
            assertThatThrownBy(() -> new Limits(second, second, bad[0], bad[1], bad[2], bad[3]))
                    .hasMessage("limits of at least 1 were expected, and room for one line");
        }
        for (Duration none : new Duration[] {Duration.ZERO, Duration.ofSeconds(-1)}) {
            assertThatThrownBy(() -> new Limits(none, second, 1, 1, 1, 1)).hasMessageStartingWith("a program needs");
            assertThatThrownBy(() -> new Limits(second, none, 1, 1, 1, 1)).hasMessageStartingWith("a program needs");
        }
        assertThat(Limits.usual().withTimes(second, Duration.ofSeconds(2)))
                .isEqualTo(new Limits(second, Duration.ofSeconds(2), 1 << 20, 1 << 20, 20, 10));
        assertThat(Limits.usual().start()).isEqualTo(Duration.ofSeconds(10));
    }

    @Test
    void what_is_told_of_a_misbehaviour_is_cut_at_three_hundred_characters() {
        assertThat(new Misbehaviour(Failure.RUBBISH, "y".repeat(300)).outcome().detail())
                .isEqualTo("y".repeat(300));
        assertThat(new Misbehaviour(Failure.RUBBISH, "y".repeat(301)).outcome().detail())
                .isEqualTo("y".repeat(300) + "...");
    }
}

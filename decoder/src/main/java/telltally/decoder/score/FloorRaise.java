package telltally.decoder.score;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import telltally.simulator.document.Json.JsonNumber;
import telltally.simulator.document.Json.JsonObject;
import telltally.simulator.document.JsonDocument;
import telltally.simulator.document.Place;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;

/**
 * Raises floors in the file of a seed set to what a decoder reached, and never lowers one. All else of the file stays
 * as it is, byte for byte.
 */
public final class FloorRaise {
    /** Shares are written to a thousandth, rounded down, so that the score that raised them reaches them. */
    private static final int PLACES = 3;

    private final Path file;

    public FloorRaise(Path file) {
        this.file = file;
    }

    /** A number in the file and what takes its place. */
    private record Edit(FloorKind kind, JsonNumber before, BigDecimal after) {
        @Override
        public String toString() {
            return kind.key() + " from " + before.number().toPlainString() + " to " + after.toPlainString();
        }
    }

    /**
     * Writes the file anew if any floor rises.
     *
     * @param decoderId under whose name the floors stand
     * @param byLine what it reached on exactly the cases of the set, on each of its lines
     * @return the floors that rose, a line each
     * @throws ProblemException if the file is no seed set that can be read, or has no floors under that name: the first
     *     ones are written by hand, as low as need be
     */
    public List<String> raise(String decoderId, List<Score> byLine) throws ProblemException {
        SeedSetReader.read(file);
        JsonObject floors = floors(decoderId);
        List<Edit> edits = new ArrayList<>();
        for (FloorKind kind : FloorKind.values()) {
            JsonNumber before =
                    (JsonNumber) Objects.requireNonNull(floors.members().get(kind.key()));
            worst(kind, byLine)
                    .filter(reached -> kind.asksLess(before.number().doubleValue(), reached.doubleValue()))
                    .ifPresent(reached -> edits.add(new Edit(kind, before, reached)));
        }
        write(edits);
        return edits.stream().map(each -> decoderId + ": " + each).toList();
    }

    private JsonObject floors(String decoderId) throws ProblemException {
        JsonObject set = (JsonObject) JsonDocument.parse(TextFile.read(file, TextFile.DOCUMENT_BYTES));
        JsonObject all = (JsonObject) Objects.requireNonNull(set.members().get("floors"));
        boolean unnamed = all.members().containsKey(FloorKind.LISTS_RIGHT.key());
        if (unnamed && decoderId.equals(DecoderFloors.PLAIN)) {
            return all;
        }
        if (!unnamed && all.members().get(decoderId) instanceof JsonObject own) {
            return own;
        }
        throw new ProblemException(new Problem(
                file.toString(),
                all.place(),
                "/floors",
                "holds none of " + decoderId + "; the first ones are to be written by hand, as low as need be"));
    }

    /** What holds for each line; empty where there was nothing to be right or wrong. */
    private static Optional<BigDecimal> worst(FloorKind kind, List<Score> byLine) {
        return byLine.stream()
                .flatMap(score -> reached(kind, score).stream())
                .reduce((one, other) -> kind.asksLess(one.doubleValue(), other.doubleValue()) ? one : other);
    }

    private static Optional<BigDecimal> reached(FloorKind kind, Score score) {
        return switch (kind) {
            case LISTS_RIGHT -> share(score.listsRight(), score.lists());
            case CODES_RIGHT -> share(score.codesRight(), score.codes());
            case INVENTED_CODES -> Optional.of(BigDecimal.valueOf(score.inventedCodes()));
        };
    }

    private static Optional<BigDecimal> share(int right, int all) {
        if (all == 0) {
            return Optional.empty();
        }
        BigDecimal share = BigDecimal.valueOf(right)
                .divide(BigDecimal.valueOf(all), PLACES, RoundingMode.DOWN)
                .stripTrailingZeros();
        return Optional.of(share.scale() < 1 ? share.setScale(1) : share);
    }

    /** From the last number to the first, so that those before keep their places. */
    private void write(List<Edit> edits) {
        if (edits.isEmpty()) {
            return;
        }
        try {
            StringBuilder text = new StringBuilder(Files.readString(file));
            edits.stream()
                    .sorted((one, other) ->
                            other.before().place().compareTo(one.before().place()))
                    .forEach(edit -> replace(text, edit));
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void replace(StringBuilder text, Edit edit) {
        int from = offset(text, edit.before().place());
        int to = from;
        while (to < text.length() && "+-.0123456789eE".indexOf(text.charAt(to)) >= 0) {
            to++;
        }
        text.replace(from, to, edit.after().toPlainString());
    }

    /** Lines end as the parser takes them to: with LF, CR or both. A byte order mark is no part of the first one. */
    private static int offset(CharSequence text, Place place) {
        int at = text.charAt(0) == '\uFEFF' ? 1 : 0;
        for (int line = 1; line < place.line(); at++) {
            boolean pair = text.charAt(at) == '\r' && text.charAt(at + 1) == '\n';
            if ((text.charAt(at) == '\n' || text.charAt(at) == '\r') && !pair) {
                line++;
            }
        }
        return at + place.column() - 1;
    }
}

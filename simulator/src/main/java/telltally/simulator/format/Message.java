package telltally.simulator.format;

import java.util.List;
import java.util.Optional;

/** What is to be sent in one recording. An empty list is sent as the format sends that there is nothing to report. */
public sealed interface Message {
    /** The engine-off test: faults present, the separator, faults stored. */
    record KeyOn(List<String> present, List<String> stored) implements Message {
        public KeyOn {
            present = List.copyOf(present);
            stored = List.copyOf(stored);
        }
    }

    /**
     * The engine-running test: cylinder flashes, a long gap, the running codes.
     *
     * @param prompt whether one flash in the gap asks for a short press of the throttle
     */
    record Running(int cylinders, boolean prompt, List<String> codes) implements Message {
        public Running {
            codes = List.copyOf(codes);
        }
    }

    /** The cylinder balance test: one group of flashes. */
    record Balance(int flashes) implements Message {}

    /** The list of a format that knows no segments. */
    record Codes(List<String> codes) implements Message {
        public Codes {
            codes = List.copyOf(codes);
        }
    }

    /** Why a format cannot send this; empty where it can. */
    default Optional<String> refusal(FlashFormat format) {
        boolean segmented = format.sessions().isPresent();
        if (this instanceof Codes list) {
            return segmented
                    ? Optional.of("the format " + format.id() + " sends its codes in segments")
                    : refusal(format, list.codes());
        }
        if (!segmented) {
            return Optional.of("the format " + format.id() + " knows no segments");
        }
        if (this instanceof KeyOn keyOn) {
            return refusal(format, keyOn.present()).or(() -> refusal(format, keyOn.stored()));
        }
        if (this instanceof Running running) {
            return running.cylinders() < 2 || running.cylinders() % 2 != 0
                    ? Optional.of("cylinder flashes are half the number of cylinders; " + running.cylinders()
                            + " has no whole half")
                    : refusal(format, running.codes());
        }
        int flashes = ((Balance) this).flashes();
        int most = format.sessions().orElseThrow().mostBalanceFlashes();
        return flashes < 1 || flashes > most
                ? Optional.of("a balance result is 1 to " + most + " flashes, not " + flashes)
                : Optional.empty();
    }

    private static Optional<String> refusal(FlashFormat format, List<String> codes) {
        if (codes.size() > format.repeats().mostCodes()) {
            return Optional.of(codes.size() + " codes; the format " + format.id() + " sends at most "
                    + format.repeats().mostCodes());
        }
        if (codes.stream().distinct().count() < codes.size()) {
            return Optional.of("a code stands twice in one list; a list has each code once");
        }
        return codes.stream()
                .flatMap(code -> format
                        .refusal(code)
                        .map(reason -> (code.isEmpty() ? "a code without digits" : code) + ": " + reason)
                        .stream())
                .findFirst();
    }
}

package telltally.trainer.drill;

import java.util.List;
import telltally.simulator.format.Segment;

/** What the learner is asked, and how it is answered. */
public sealed interface Question {
    /** The task in one sentence. */
    Said task();

    /** When codes are to be written. */
    enum When {
        /** While the lamp runs or afterwards, as the learner likes. */
        ANY_TIME,
        /** Each code before the next one has ended; that is what is marked. */
        AT_ONCE,
        /** Held in the head: nothing can be written before the end. */
        AFTERWARDS
    }

    /** Codes are written down, a column for each segment. */
    record Write(Said task, List<Segment> segments, When when) implements Question {
        public Write {
            segments = List.copyOf(segments);
        }
    }

    /** One among a few. */
    record Choose(Said task, List<Option> options) implements Question {
        public Choose {
            options = List.copyOf(options);
            if (options.stream().filter(Option::right).count() != 1) {
                throw new IllegalArgumentException("one option has to be right: " + options);
            }
        }

        /** The place of the right option, from 0. */
        public int right() {
            return options.stream().map(Option::right).toList().indexOf(true);
        }
    }

    /**
     * One thing to choose.
     *
     * @param text what it says; names that a code list gives are arguments
     * @param says what choosing it says about the learner; all of it right for the right option alone
     */
    record Option(Said text, List<Credit> says) {
        public Option {
            says = List.copyOf(says);
        }

        public boolean right() {
            return says.stream().allMatch(Credit::right);
        }
    }

    /** A number, such as how many codes there were. */
    record HowMany(Said task, int right) implements Question {}
}

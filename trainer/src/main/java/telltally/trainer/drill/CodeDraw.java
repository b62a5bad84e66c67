package telltally.trainer.drill;

import java.util.ArrayList;
import java.util.List;
import telltally.simulator.chance.Chance;
import telltally.simulator.format.FlashFormat;

/** Draws codes that a format can send. */
record CodeDraw(FlashFormat format, int places, int mostFlashes) {
    /** A code of counts from one to the most; the pass code and framing codes never come. */
    String code(Chance chance) {
        while (true) {
            StringBuilder code = new StringBuilder();
            for (int place = 0; place < places; place++) {
                code.append(digit(chance, 1, mostFlashes));
            }
            String drawn = code.toString();
            if (format.refusal(drawn).isEmpty()
                    && format.passCode().filter(drawn::equals).isEmpty()) {
                return drawn;
            }
        }
    }

    /** From one to the other, evenly; a higher limit never gives fewer flashes from the same chance. */
    static int digit(Chance chance, int fewest, int most) {
        return fewest + (int) (chance.nextUnit() * (most - fewest + 1));
    }

    /** Each code once. */
    List<String> codes(Chance chance, int count) {
        List<String> codes = new ArrayList<>();
        while (codes.size() < count) {
            String code = code(chance);
            if (!codes.contains(code)) {
                codes.add(code);
            }
        }
        return codes;
    }
}

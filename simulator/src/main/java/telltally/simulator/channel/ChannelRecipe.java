package telltally.simulator.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import telltally.simulator.chance.Chance;

/**
 * Impairments in order, whose strengths may differ from seed to seed. Every strength has a stream of its own, named by
 * kind as in an {@link ImpairmentChain}, so that putting another kind in between moves no draw of the others.
 */
public record ChannelRecipe(List<Step> steps) {
    /** Apart from the streams that the impairments themselves draw from: no kind has this name. */
    private static final String STRENGTHS = "strengths";

    public ChannelRecipe {
        steps = List.copyOf(steps);
    }

    /**
     * One impairment.
     *
     * @param settled the impairment with its strengths as they are drawn
     */
    public record Step(String kind, Function<StrengthDraw, Impairment> settled) {}

    /** The chain with all strengths settled. Give it the same chance afterwards, or streams below it. */
    public ImpairmentChain drawnFrom(Chance chance) {
        List<String> kinds = steps.stream().map(Step::kind).toList();
        List<Impairment> settled = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            Chance own = chance.stream(STRENGTHS).stream(ImpairmentChain.streamName(kinds, i));
            settled.add(steps.get(i).settled().apply(new StrengthDraw(own)));
        }
        return new ImpairmentChain(settled);
    }
}

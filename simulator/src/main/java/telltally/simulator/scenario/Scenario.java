package telltally.simulator.scenario;

import java.util.List;
import java.util.Optional;
import telltally.simulator.channel.ChannelRecipe;
import telltally.simulator.codelist.CodeList;
import telltally.simulator.format.FlashFormat;

/**
 * One lesson.
 *
 * @param briefing what the learner is told before the first flash, a text for each paragraph
 * @param task what the learner is asked to do, in one sentence
 * @param codeList what the codes mean; empty for pure counting
 * @param content what is sent
 * @param channel what spoils lamp and wire on the way to whoever watches; nothing where it has no steps
 * @param loops how often a looping list is sent
 */
public record Scenario(
        String id,
        String title,
        List<String> briefing,
        String task,
        FlashFormat format,
        Optional<CodeList> codeList,
        Content content,
        Display display,
        int loops,
        ChannelRecipe channel) {
    public Scenario {
        briefing = List.copyOf(briefing);
    }

    /** A lesson that is seen as it was sent. */
    public Scenario(
            String id,
            String title,
            List<String> briefing,
            String task,
            FlashFormat format,
            Optional<CodeList> codeList,
            Content content,
            Display display,
            int loops) {
        this(id, title, briefing, task, format, codeList, content, display, loops, new ChannelRecipe(List.of()));
    }
}

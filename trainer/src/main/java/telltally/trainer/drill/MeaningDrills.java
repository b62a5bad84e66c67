package telltally.trainer.drill;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import telltally.simulator.chance.Chance;
import telltally.simulator.codelist.CodeList;
import telltally.simulator.codelist.CodeListCatalog;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.trainer.drill.Question.Option;

/** What a code means, by the code lists that ship. */
record MeaningDrills(FormatCatalog formats, CodeListCatalog lists) {
    /** The lists in the order in which they come in, and how their codes are sent. */
    private static final List<Map.Entry<String, String>> LISTS = List.of(
            Map.entry("plank", "pair-even"),
            Map.entry("burner", "count-loop"),
            Map.entry("trestle", "triple-even"),
            Map.entry("ladder", "quad-lead"));

    private static final int LEVELS_A_LIST = 3;

    /** Every code that may be asked at a level, as {@code list code}. */
    List<String> items(Level level) {
        int known = Math.min(LISTS.size(), 1 + (level.value() - 1) / LEVELS_A_LIST);
        return LISTS.subList(0, known).stream()
                .flatMap(entry -> codes(entry.getKey()).stream().map(code -> entry.getKey() + " " + code))
                .toList();
    }

    Drill codeMeaning(Order order) {
        String item = order.item().isEmpty() ? order.oneOf("item", items(order.level())) : order.item();
        String listId = item.substring(0, item.indexOf(' '));
        String code = item.substring(item.indexOf(' ') + 1);
        Order named = new Order(order.skill(), order.level(), item, order.seed());
        FlashFormat format = format(named, listId);
        Question question = new Question.Choose(
                Said.of("drill.task-code-meaning", list(listId).title()), options(named, list(listId), code));
        return named.drill(format, named.list(format, List.of(code), 1), question);
    }

    private List<Option> options(Order order, CodeList list, String code) {
        List<String> others = new ArrayList<>(list.meanings().keySet());
        others.remove(code);
        Chance chance = order.chance("others");
        // The higher the level, the more alike the codes are among which to choose.
        int near = order.ease().count(others.size(), 5);
        others.sort(Comparator.comparingInt(other -> unlike(code, other)));
        List<String> choice = new ArrayList<>(List.of(code));
        int wanted = order.ease().count(3, 5);
        while (choice.size() < wanted) {
            choice.add(others.remove(chance.below(Math.min(others.size(), Math.max(1, near)))));
        }
        choice.sort(Comparator.comparing(each -> list.meaning(each).orElseThrow()));
        return choice.stream()
                .map(each -> new Option(
                        Said.of("drill.option-meaning", list.meaning(each).orElseThrow()),
                        List.of(order.credit(each.equals(code)))))
                .toList();
    }

    /** Fewer for codes that begin alike. */
    private static int unlike(String code, String other) {
        int alike = 0;
        while (alike < Math.min(code.length(), other.length()) && code.charAt(alike) == other.charAt(alike)) {
            alike++;
        }
        return code.length() - alike + Math.abs(code.length() - other.length());
    }

    private FlashFormat format(Order order, String listId) {
        String formatId = LISTS.stream()
                .filter(entry -> entry.getKey().equals(listId))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no codes are learnt from a list " + listId))
                .getValue();
        return new FormatVariant(formats.find(formatId).orElseThrow())
                .listAlone()
                .sent(1, 1)
                .eased(order.ease().clock(), 1)
                .format();
    }

    /** The pass code is a rule and has a skill of its own. */
    private List<String> codes(String listId) {
        return list(listId).meanings().keySet().stream()
                .filter(code -> !code.matches("1{2,}") || listId.equals("burner"))
                .toList();
    }

    private CodeList list(String id) {
        return lists.find(id).orElseThrow();
    }
}

package telltally.simulator.selftest;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import telltally.simulator.codelist.CodeList;
import telltally.simulator.format.Segment;
import telltally.simulator.vehicle.Conditions;
import telltally.simulator.vehicle.Phase;

/**
 * Which codes there are to tell: those for what the controller sees now, those it remembers, and, for whoever looks on,
 * those that come of how the tests are run. What is remembered is lost in two ways only, and both are named here.
 */
final class CodeMemory {
    private final CodeList codeList;
    private final int mostCodes;
    private final Senses senses;
    private final List<String> stored = new ArrayList<>();
    private final Map<Segment, Set<String>> fromConditions = new EnumMap<>(Segment.class);

    CodeMemory(BenchSetup setup, Diagnosis diagnosis, Senses senses) {
        this.codeList = setup.codeList();
        this.mostCodes = setup.format().repeats().mostCodes();
        this.senses = senses;
        if (!setup.conditions().battery().disconnectedSinceDrive()) {
            setup.faults().stream()
                    .filter(each -> each.presence().remembered())
                    .forEach(each -> rememberEarlierDrive(each, setup.conditions(), diagnosis));
        }
    }

    /** What an earlier drive left of one fault: as it was found, alone. */
    private void rememberEarlierDrive(FaultCase fault, Conditions conditions, Diagnosis diagnosis) {
        List<String> own =
                new ArrayList<>(diagnosis.conditions(List.of(fault.circuitFault()), conditions, Phase.ENGINE_OFF));
        own.removeAll(diagnosis.conditions(List.of(), conditions, Phase.ENGINE_OFF));
        store(own);
    }

    /** The codes of a segment for what can be seen this instant; those that the way of testing sets are noted. */
    List<String> look(Segment segment, Phase phase) {
        noteFromConditions(segment, codeList.codesFor(senses.conditionsIfSound(phase), segment));
        return codeList.codesFor(senses.conditions(phase), segment);
    }

    /** @param pressed whether the pedal was pressed in time, though no sensor showed it */
    List<String> unansweredPrompt(boolean pressed) {
        List<String> codes = codeList.codesFor(List.of(Bench.PROMPT_NOT_ANSWERED), Segment.RUNNING);
        if (!pressed) {
            noteFromConditions(Segment.RUNNING, codes);
        }
        return codes;
    }

    private void noteFromConditions(Segment segment, List<String> codes) {
        if (!codes.isEmpty()) {
            fromConditions
                    .computeIfAbsent(segment, each -> new LinkedHashSet<>())
                    .addAll(codes);
        }
    }

    /** In the order of the code list, no more than the format can send. */
    List<String> sendable(Collection<String> codes) {
        if (codes.isEmpty()) {
            return List.of();
        }
        return codeList.meanings().keySet().stream()
                .filter(codes::contains)
                .limit(mostCodes)
                .toList();
    }

    /** Remembers what these conditions set; the codes that were not there yet. */
    List<String> store(List<String> conditions) {
        List<String> fresh = new ArrayList<>(codeList.codesFor(conditions, Segment.STORED));
        fresh.removeAll(stored);
        stored.addAll(fresh);
        return fresh;
    }

    List<String> stored() {
        return List.copyOf(stored);
    }

    /** The test was interrupted while codes were being sent. */
    void eraseByInterruption() {
        stored.clear();
    }

    /** The battery was taken off. */
    void eraseByBattery() {
        stored.clear();
    }

    Map<Segment, List<String>> fromConditions() {
        Map<Segment, List<String>> lists = new EnumMap<>(Segment.class);
        fromConditions.forEach((segment, codes) -> lists.put(segment, List.copyOf(codes)));
        return lists;
    }
}

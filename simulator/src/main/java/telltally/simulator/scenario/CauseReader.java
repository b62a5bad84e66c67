package telltally.simulator.scenario;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import telltally.simulator.codelist.CodeList;
import telltally.simulator.codelist.CodeList.Rule;
import telltally.simulator.document.Fields;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.selftest.Bench;
import telltally.simulator.selftest.BenchSetup;
import telltally.simulator.selftest.FaultCase;
import telltally.simulator.selftest.OperatorAct;
import telltally.simulator.vehicle.Conditions;
import telltally.simulator.vehicle.Cylinders;
import telltally.simulator.vehicle.DetectableConditions;
import telltally.simulator.vehicle.Transmission;
import telltally.simulator.vehicle.UsualVehicle;
import telltally.simulator.vehicle.Vehicle;

/**
 * Reads a lesson whose codes follow from a vehicle, its faults and what is done to it. Where the format or the code list
 * is not known, because it was told of before, everything else is still checked.
 */
final class CauseReader {
    private final Fields file;
    private final Optional<FlashFormat> format;
    private final Optional<CodeList> codeList;

    CauseReader(Fields file, Optional<FlashFormat> format, Optional<CodeList> codeList) {
        this.file = file;
        this.format = format;
        this.codeList = codeList;
    }

    /** @return empty where a problem was found */
    Optional<Content.Caused> read(Display display, boolean prompt) {
        int before = file.problems().count();
        checkCodeList();
        if (prompt && format.isPresent() && format.get().sessions().isEmpty()) {
            file.problem("prompt", "has no meaning here; only a running test prompts");
        }
        Optional<Fields> described = file.object("vehicle");
        if (described.isEmpty()) {
            file.skip("conditions", "faults", "acts");
            return Optional.empty();
        }
        boolean lampWorks = described.get().flag("dash_lamp_works", true);
        Vehicle vehicle = VehicleFields.vehicle(described.get(), format);
        Conditions conditions = file.optionalObject("conditions")
                .map(each -> VehicleFields.conditions(each, vehicle.transmission()))
                .orElse(Conditions.warm());
        List<FaultCase> faults = FaultFields.faults(file.optionalObjects("faults"), vehicle);
        List<OperatorAct> acts = acts(vehicle);
        if (format.isEmpty() || codeList.isEmpty() || file.problems().count() > before) {
            return Optional.empty();
        }
        boolean visible = lampWorks || display == Display.TEST_LIGHT || display == Display.METER;
        return Optional.of(new Content.Caused(
                new BenchSetup(vehicle, conditions, faults, visible, format.get(), codeList.get(), prompt), acts));
    }

    private List<OperatorAct> acts(Vehicle vehicle) {
        int before = file.problems().count();
        List<OperatorAct> acts = ActFields.acts(file.objects("acts"), vehicle);
        if (acts.isEmpty() && file.problems().count() == before) {
            file.problem("acts", "is empty; expected what is done to the vehicle, in the order of time");
        }
        return acts;
    }

    private void checkCodeList() {
        if (!file.has("code_list")) {
            file.problem("code_list", "is missing; with a vehicle it says which condition sets which code");
        }
        codeList.ifPresent(list -> {
            if (list.rules().isEmpty()) {
                file.problem("code_list", "no code of " + list.id() + " says by what it is set");
            }
            checkConditions(list);
            format.ifPresent(sender -> checkCodes(list, sender));
        });
    }

    /** What no vehicle of ours can detect is a slip of the pen. */
    private void checkConditions(CodeList list) {
        Set<String> known = new LinkedHashSet<>(Set.of(Bench.PROMPT_NOT_ANSWERED));
        for (Transmission each : Transmission.values()) {
            DetectableConditions.of(UsualVehicle.of(Cylinders.FEWEST, each))
                    .forEach(condition -> known.add(condition.name()));
        }
        list.rules().stream()
                .map(Rule::condition)
                .filter(condition -> !known.contains(condition))
                .distinct()
                .forEach(condition -> file.problem(
                        "code_list", list.id() + " has the condition " + condition + ", which no vehicle can detect"));
    }

    private void checkCodes(CodeList list, FlashFormat sender) {
        list.rules().stream()
                .map(Rule::code)
                .distinct()
                .forEach(code -> sender.refusal(code)
                        .ifPresent(reason -> file.problem(
                                "code_list",
                                "the format " + sender.id() + " cannot send its code " + code + ": " + reason)));
    }
}

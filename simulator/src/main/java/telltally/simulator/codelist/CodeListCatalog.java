package telltally.simulator.codelist;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.ResourceFolder;
import telltally.simulator.document.TextFile;

/** The code lists that can be named by their id. */
public final class CodeListCatalog {
    private final Map<String, CodeList> lists;

    private CodeListCatalog(Map<String, CodeList> lists) {
        this.lists = Collections.unmodifiableMap(lists);
    }

    /** Those that ship with Telltally. */
    public static CodeListCatalog shipped() {
        List<CodeList> read = new ArrayList<>();
        for (TextFile file : new ResourceFolder("telltally/scenarios/codelists").read()) {
            try {
                read.add(CodeListReader.read(file));
            } catch (ProblemException e) {
                throw new IllegalStateException("a shipped code list is broken: " + e.getMessage(), e);
            }
        }
        return of(read);
    }

    /** Of lists with the same id the last one counts. */
    public static CodeListCatalog of(List<CodeList> lists) {
        Map<String, CodeList> byId = new LinkedHashMap<>();
        lists.forEach(list -> byId.put(list.id(), list));
        return new CodeListCatalog(byId);
    }

    public Optional<CodeList> find(String id) {
        return Optional.ofNullable(lists.get(id));
    }

    public List<String> ids() {
        return List.copyOf(lists.keySet());
    }
}

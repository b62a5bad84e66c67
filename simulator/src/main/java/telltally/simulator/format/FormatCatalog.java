package telltally.simulator.format;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.ResourceFolder;
import telltally.simulator.document.TextFile;

/** The flash formats that can be named by their id. */
public final class FormatCatalog {
    private final Map<String, FlashFormat> formats;

    private FormatCatalog(Map<String, FlashFormat> formats) {
        this.formats = Collections.unmodifiableMap(formats);
    }

    /** Those that ship with Telltally. */
    public static FormatCatalog shipped() {
        List<FlashFormat> read = new ArrayList<>();
        for (TextFile file : new ResourceFolder("telltally/scenarios/formats").read()) {
            try {
                read.add(FormatReader.read(file));
            } catch (ProblemException e) {
                throw new IllegalStateException("a shipped format is broken: " + e.getMessage(), e);
            }
        }
        return of(read);
    }

    /** Of formats with the same id the last one counts. */
    public static FormatCatalog of(List<FlashFormat> formats) {
        Map<String, FlashFormat> byId = new LinkedHashMap<>();
        formats.forEach(format -> byId.put(format.id(), format));
        return new FormatCatalog(byId);
    }

    public List<FlashFormat> all() {
        return List.copyOf(formats.values());
    }

    public Optional<FlashFormat> find(String id) {
        return Optional.ofNullable(formats.get(id));
    }

    public List<String> ids() {
        return List.copyOf(formats.keySet());
    }
}

package telltally.decoder.score;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;
import telltally.simulator.document.ResourceFolder;

/** Many seed sets at once: those of files and folders, and those that ship with the program. */
public final class SeedLibrary {
    private static final ResourceFolder SHIPPED = new ResourceFolder("telltally/seeds");

    private SeedLibrary() {}

    /** A seed set and the file that it stands in. */
    public record SeedFile(Path file, SeedSet set) {}

    /** Every set that ships, in the order of {@link SeedFiles#in}; they are there wherever the program is started. */
    public static List<SeedSet> shipped() {
        try {
            return SHIPPED.<List<SeedSet>, ProblemException>within(
                    folder -> read(List.of(folder)).stream().map(SeedFile::set).toList());
        } catch (ProblemException e) {
            throw new IllegalStateException("a seed set that ships cannot be read: " + e.getMessage(), e);
        }
    }

    /**
     * @param places files, and folders whose sets are read with those of the folders below
     * @throws ProblemException with the problems of all files; two sets of one id are a problem, and so is a folder
     *     without a set
     */
    public static List<SeedFile> read(List<Path> places) throws ProblemException {
        List<Problem> problems = new ArrayList<>();
        Map<String, SeedFile> sets = new LinkedHashMap<>();
        for (Path place : places) {
            try {
                for (Path file : files(place)) {
                    SeedFile read = new SeedFile(file, SeedSetReader.read(file));
                    SeedFile other = sets.putIfAbsent(read.set().id(), read);
                    if (other != null) {
                        problems.add(Problem.of(
                                file.toString(),
                                "holds the seed set "
                                        + Problem.quoted(read.set().id()) + ", and so does " + other.file()));
                    }
                }
            } catch (ProblemException e) {
                problems.addAll(e.problems());
            }
        }
        if (!problems.isEmpty()) {
            throw new ProblemException(problems);
        }
        return List.copyOf(sets.values());
    }

    private static List<Path> files(Path place) throws ProblemException {
        try {
            List<Path> files = SeedFiles.in(place);
            if (files.isEmpty()) {
                throw new ProblemException(Problem.of(place.toString(), "holds no seed set; expected files *.json"));
            }
            return files;
        } catch (IOException e) {
            throw new ProblemException(Problem.of(
                    place.toString(), "cannot be read: " + e.getClass().getSimpleName() + " " + e.getMessage()));
        }
    }
}

package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The different ones of many, numbered in the order in which they were first met. */
final class Distinct<T> {
    private final List<T> different = new ArrayList<>();
    private final List<T> view = Collections.unmodifiableList(different);

    /** Its number among the different ones, of which there are few: mostly the very same object comes again. */
    int numberOf(T one) {
        for (int i = different.size() - 1; i >= 0; i--) {
            if (different.get(i) == one) {
                return i;
            }
        }
        int at = different.indexOf(one);
        if (at < 0) {
            different.add(one);
            return different.size() - 1;
        }
        return at;
    }

    /** By number; a view. */
    List<T> all() {
        return view;
    }
}

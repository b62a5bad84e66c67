package telltally.simulator.document;

/** Where in a file something stands: line and column, both counted from 1, columns in characters. */
public record Place(int line, int column) implements Comparable<Place> {
    /** The beginning of a file. */
    public static final Place START = new Place(1, 1);

    @Override
    public int compareTo(Place other) {
        return line != other.line ? Integer.compare(line, other.line) : Integer.compare(column, other.column);
    }
}

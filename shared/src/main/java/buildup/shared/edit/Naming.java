package buildup.shared.edit;

/** What a document gives names to that other parts of it mention. */
public enum Naming {
    /** A piece: {@code back: frieze.face}, {@code fixed: frieze}. */
    PIECE("pieces", "piece"),
    /** A named length: {@code bottom: soffit.bottom - lip}. */
    SIZE("sizes", "size"),
    /** An eye in the room. */
    EYE("eyes", "eye"),
    /** A light. */
    LIGHT("lights", "light");

    private final String block;
    private final String word;

    Naming(String block, String word) {
        this.block = block;
        this.word = word;
    }

    /** The key at the top of the document under which the names are given. */
    public String block() {
        return block;
    }

    /** What messages call one of them. */
    public String word() {
        return word;
    }
}

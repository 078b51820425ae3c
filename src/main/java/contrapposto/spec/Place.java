package contrapposto.spec;

import contrapposto.notice.Span;

/**
 * Where the reader stands: the dotted path of keys, and the place that stands for it in the file.
 *
 * @param path empty at the root
 */
record Place(String path, Span span) {
    Place under(String key, Span at) {
        return new Place(path.isEmpty() ? key : path + "." + key, at);
    }

    /** {@code `client.height`}, or {@code the spec} at the root. */
    String called() {
        return path.isEmpty() ? "the spec" : "`" + path + "`";
    }
}

package contrapposto.cli;

import contrapposto.deliver.Manifest;
import java.util.ArrayList;
import java.util.List;

/** Counts what became of the specs of a run; keeps the first failures to list them at the end. */
final class Tally {
    private static final int MOST_LISTED = 50;

    private final List<String> listed = new ArrayList<>();
    private int done;
    private int withheld;
    private int failed;
    private int kept;
    private boolean written;

    void count(Manifest.Entry entry, boolean unchanged) {
        kept += unchanged ? 1 : 0;
        switch (entry.result()) {
            case DONE -> done++;
            case WITHHELD -> withheld++;
            case FAILED -> {
                failed++;
                if (listed.size() < MOST_LISTED) {
                    listed.add("  " + entry.problems().stream().findFirst().orElse(entry.spec()));
                }
            }
        }
    }

    /** The manifest stands in its place. */
    void manifestWritten() {
        written = true;
    }

    boolean written() {
        return written;
    }

    int withheld() {
        return withheld;
    }

    int failed() {
        return failed;
    }

    /** One line of counts, then each failure with its place. */
    List<String> summary() {
        var lines = new ArrayList<String>();
        lines.add(done + withheld + failed + " specs: " + done + " done" + (withheld > 0 ? ", " + withheld + " withheld" : "")
                + (failed > 0 ? ", " + failed + " failed" : "") + (kept > 0 ? "; " + kept + " unchanged and left as they are" : ""));
        lines.addAll(listed);
        if (failed > listed.size()) {
            lines.add("  and " + (failed - listed.size()) + " more: see manifest.json");
        }
        return lines;
    }
}
